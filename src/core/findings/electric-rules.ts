import type { Rule } from "./rule.js";
import { absorptionVoltage } from "./rules/absorption-voltage.js";
import { ampacity } from "./rules/ampacity.js";
import { bareLivePosts } from "./rules/bare-live-posts.js";
import { batteryCurrent } from "./rules/battery-current.js";
import { batteryLoose } from "./rules/battery-loose.js";
import { batteryNearFuel } from "./rules/battery-near-fuel.js";
import { batteryTerminalSpring } from "./rules/battery-terminal-spring.js";
import { batteryVent } from "./rules/battery-vent.js";
import { bilgePumpByHand } from "./rules/bilge-pump-by-hand.js";
import { blowerMissing } from "./rules/blower-missing.js";
import { chafe } from "./rules/chafe.js";
import { chargerMissing } from "./rules/charger-missing.js";
import { chargerTooBig } from "./rules/charger-too-big.js";
import { chargerUnprotected } from "./rules/charger-unprotected.js";
import { coldCharging } from "./rules/cold-charging.js";
import { collapse } from "./rules/collapse.js";
import { conductorColour } from "./rules/conductor-colour.js";
import { converterInput } from "./rules/converter-input.js";
import { converterLoop } from "./rules/converter-loop.js";
import { converterOverloaded } from "./rules/converter-overloaded.js";
import { deepDischarge } from "./rules/deep-discharge.js";
import { deviceInWet } from "./rules/device-in-wet.js";
import { engineSpaceAmpacity } from "./rules/engine-space-ampacity.js";
import { floatPumpSwitched } from "./rules/float-pump-switched.js";
import { floatPumpWay } from "./rules/float-pump-way.js";
import { hullReturn } from "./rules/hull-return.js";
import { ignitionProtection } from "./rules/ignition-protection.js";
import { jointInBilge } from "./rules/joint-in-bilge.js";
import { jointOverloaded } from "./rules/joint-overloaded.js";
import { jointUnsealedWet } from "./rules/joint-unsealed-wet.js";
import { leastSize } from "./rules/least-size.js";
import { livePumpBehindMaster } from "./rules/live-pump-behind-master.js";
import { mainOverloaded } from "./rules/main-overloaded.js";
import { masterMissing } from "./rules/master-missing.js";
import { metalHull } from "./rules/metal-hull.js";
import { motorAndElectronics } from "./rules/motor-and-electronics.js";
import { navigationLightsHeight } from "./rules/navigation-lights-height.js";
import { navigationLightsSet } from "./rules/navigation-lights-set.js";
import { navigationLightsWay } from "./rules/navigation-lights-way.js";
import { nominalVoltage } from "./rules/nominal-voltage.js";
import { notFed } from "./rules/not-fed.js";
import { outOfSheath } from "./rules/out-of-sheath.js";
import { outingBrownOut } from "./rules/outing-brown-out.js";
import { outingCutOff } from "./rules/outing-cut-off.js";
import { outingReserve } from "./rules/outing-reserve.js";
import { overVoltage } from "./rules/over-voltage.js";
import { parallelChemistry } from "./rules/parallel-chemistry.js";
import { parallelUnlike } from "./rules/parallel-unlike.js";
import { parallelVoltage } from "./rules/parallel-voltage.js";
import { protectionBeforeMain } from "./rules/protection-before-main.js";
import { protectionCarriesLoad } from "./rules/protection-carries-load.js";
import { protectionClearsFarShort } from "./rules/protection-clears-far-short.js";
import { protectionConflict } from "./rules/protection-conflict.js";
import { protectionGearLimit } from "./rules/protection-gear-limit.js";
import { protectionInterrupts } from "./rules/protection-interrupts.js";
import { protectionMissingAtBattery } from "./rules/protection-missing-at-battery.js";
import { protectionMissingOnRun } from "./rules/protection-missing-on-run.js";
import { protectionMissingOnWay } from "./rules/protection-missing-on-way.js";
import { protectionNearSource } from "./rules/protection-near-source.js";
import { protectionProtectsWeakest } from "./rules/protection-protects-weakest.js";
import { protectionRidesStart } from "./rules/protection-rides-start.js";
import { protectionWithstandsShort } from "./rules/protection-withstands-short.js";
import { pushOnTab } from "./rules/push-on-tab.js";
import { readingOutside } from "./rules/reading-outside.js";
import { readingRange } from "./rules/reading-range.js";
import { readingUnplaced } from "./rules/reading-unplaced.js";
import { readingsDiffer } from "./rules/readings-differ.js";
import { runCarriesNothing } from "./rules/run-carries-nothing.js";
import { runLength } from "./rules/run-length.js";
import { sharedReturn } from "./rules/shared-return.js";
import { sizeUnmet } from "./rules/size-unmet.js";
import { slowCharging } from "./rules/slow-charging.js";
import { solderOnlyJoint } from "./rules/solder-only-joint.js";
import { solidConductor } from "./rules/solid-conductor.js";
import { switchOverloaded } from "./rules/switch-overloaded.js";
import { tapJoint } from "./rules/tap-joint.js";
import { terminalsPerStud } from "./rules/terminals-per-stud.js";
import { twistedJoint } from "./rules/twisted-joint.js";
import { twoCircuits } from "./rules/two-circuits.js";
import { underVoltage } from "./rules/under-voltage.js";
import { untinnedWet } from "./rules/untinned-wet.js";
import { voltageDrop } from "./rules/voltage-drop.js";
import { wayEmpty } from "./rules/way-empty.js";
import { wayUnclear } from "./rules/way-unclear.js";

/** Rules that look at the electrics and at nothing else: their findings follow a thing while it is moved. */
export const electricRules = [
  // supply
  converterInput,
  converterLoop,
  converterOverloaded,
  notFed,
  outingBrownOut,
  outingCutOff,
  outingReserve,
  runCarriesNothing,
  twoCircuits,
  wayUnclear,
  // voltage
  collapse,
  nominalVoltage,
  overVoltage,
  underVoltage,
  voltageDrop,
  // conductors
  ampacity,
  chafe,
  conductorColour,
  engineSpaceAmpacity,
  hullReturn,
  leastSize,
  outOfSheath,
  runLength,
  sharedReturn,
  sizeUnmet,
  solidConductor,
  untinnedWet,
  // protection
  deviceInWet,
  mainOverloaded,
  protectionBeforeMain,
  protectionCarriesLoad,
  protectionClearsFarShort,
  protectionConflict,
  protectionGearLimit,
  protectionInterrupts,
  protectionMissingAtBattery,
  protectionMissingOnRun,
  protectionMissingOnWay,
  protectionNearSource,
  protectionProtectsWeakest,
  protectionRidesStart,
  protectionWithstandsShort,
  switchOverloaded,
  // joints
  bareLivePosts,
  batteryTerminalSpring,
  jointInBilge,
  jointOverloaded,
  jointUnsealedWet,
  pushOnTab,
  solderOnlyJoint,
  tapJoint,
  terminalsPerStud,
  twistedJoint,
  // batteries
  batteryCurrent,
  batteryLoose,
  batteryNearFuel,
  batteryVent,
  deepDischarge,
  motorAndElectronics,
  parallelChemistry,
  parallelUnlike,
  parallelVoltage,
  // charging
  absorptionVoltage,
  chargerMissing,
  chargerTooBig,
  chargerUnprotected,
  coldCharging,
  slowCharging,
  // layout
  bilgePumpByHand,
  blowerMissing,
  floatPumpSwitched,
  floatPumpWay,
  ignitionProtection,
  livePumpBehindMaster,
  masterMissing,
  metalHull,
  navigationLightsWay,
  navigationLightsSet,
  navigationLightsHeight,
  wayEmpty,
  // readings
  readingOutside,
  readingRange,
  readingsDiffer,
  readingUnplaced,
] as const satisfies readonly Rule[];
