import type { Rule } from "./rule.js";
import { absorptionVoltage } from "./rules/absorption-voltage.js";
import { ampacity } from "./rules/ampacity.js";
import { bareLivePosts } from "./rules/bare-live-posts.js";
import { barrelFit } from "./rules/barrel-fit.js";
import { batteryCurrent } from "./rules/battery-current.js";
import { batteryLoose } from "./rules/battery-loose.js";
import { batteryNearFuel } from "./rules/battery-near-fuel.js";
import { batteryTerminalSpring } from "./rules/battery-terminal-spring.js";
import { batteryVent } from "./rules/battery-vent.js";
import { bendRadiusRule } from "./rules/bend-radius.js";
import { bilgePumpByHand } from "./rules/bilge-pump-by-hand.js";
import { blowerMissing } from "./rules/blower-missing.js";
import { boxContents } from "./rules/box-contents.js";
import { boxOpening } from "./rules/box-opening.js";
import { boxUnmeasured } from "./rules/box-unmeasured.js";
import { boxWater } from "./rules/box-water.js";
import { builtConductor } from "./rules/built-conductor.js";
import { builtFuse } from "./rules/built-fuse.js";
import { builtHole } from "./rules/built-hole.js";
import { builtJoint } from "./rules/built-joint.js";
import { builtLength } from "./rules/built-length.js";
import { chafe } from "./rules/chafe.js";
import { chargerMissing } from "./rules/charger-missing.js";
import { chargerTooBig } from "./rules/charger-too-big.js";
import { chargerUnprotected } from "./rules/charger-unprotected.js";
import { clearanceFuel } from "./rules/clearance-fuel.js";
import { clearanceHeat } from "./rules/clearance-heat.js";
import { coldCharging } from "./rules/cold-charging.js";
import { collapse } from "./rules/collapse.js";
import { compassNearRule } from "./rules/compass-near.js";
import { conductorColour } from "./rules/conductor-colour.js";
import { converterInput } from "./rules/converter-input.js";
import { converterLoop } from "./rules/converter-loop.js";
import { converterOverloaded } from "./rules/converter-overloaded.js";
import { deepDischarge } from "./rules/deep-discharge.js";
import { deviceInWet } from "./rules/device-in-wet.js";
import { edgeBare } from "./rules/edge-bare.js";
import { engineSpaceAmpacity } from "./rules/engine-space-ampacity.js";
import { entriesFit } from "./rules/entries-fit.js";
import { fixtureSize } from "./rules/fixture-size.js";
import { floatPumpSwitched } from "./rules/float-pump-switched.js";
import { floatPumpWay } from "./rules/float-pump-way.js";
import { floatUnknown } from "./rules/float-unknown.js";
import { floats } from "./rules/floats.js";
import { formContradiction } from "./rules/form-contradiction.js";
import { formLinesCross } from "./rules/form-lines-cross.js";
import { formNotJudged } from "./rules/form-not-judged.js";
import { formOpenSurface } from "./rules/form-open-surface.js";
import { formStations } from "./rules/form-stations.js";
import { formTable } from "./rules/form-table.js";
import { formUnfair } from "./rules/form-unfair.js";
import { freeboardLow } from "./rules/freeboard-low.js";
import { glandFit } from "./rules/gland-fit.js";
import { holeBacking } from "./rules/hole-backing.js";
import { holeDepth } from "./rules/hole-depth.js";
import { holeEdge } from "./rules/hole-edge.js";
import { holeLow } from "./rules/hole-low.js";
import { holeOffFace } from "./rules/hole-off-face.js";
import { holePlace } from "./rules/hole-place.js";
import { holeReach } from "./rules/hole-reach.js";
import { holeSpacing } from "./rules/hole-spacing.js";
import { holeUnderWater } from "./rules/hole-under-water.js";
import { holeUnknown } from "./rules/hole-unknown.js";
import { holeWeb } from "./rules/hole-web.js";
import { holeZone } from "./rules/hole-zone.js";
import { hullReturn } from "./rules/hull-return.js";
import { ignitionProtection } from "./rules/ignition-protection.js";
import { jointInBilge } from "./rules/joint-in-bilge.js";
import { jointOverloaded } from "./rules/joint-overloaded.js";
import { jointUnsealedWet } from "./rules/joint-unsealed-wet.js";
import { leastSize } from "./rules/least-size.js";
import { legSupportsRule } from "./rules/leg-supports.js";
import { livePumpBehindMaster } from "./rules/live-pump-behind-master.js";
import { mainOverloaded } from "./rules/main-overloaded.js";
import { markMirror } from "./rules/mark-mirror.js";
import { markMisplaced } from "./rules/mark-misplaced.js";
import { markPoorCrossing } from "./rules/mark-poor-crossing.js";
import { markReadingDoubt } from "./rules/mark-reading-doubt.js";
import { markUnreachable } from "./rules/mark-unreachable.js";
import { markWithoutCheck } from "./rules/mark-without-check.js";
import { marksNotMeasured } from "./rules/marks-not-measured.js";
import { masterMissing } from "./rules/master-missing.js";
import { metalHull } from "./rules/metal-hull.js";
import { motorAndElectronics } from "./rules/motor-and-electronics.js";
import { navigationLightsWay } from "./rules/navigation-lights-way.js";
import { negativeStock } from "./rules/negative-stock.js";
import { nominalVoltage } from "./rules/nominal-voltage.js";
import { notFed } from "./rules/not-fed.js";
import { notOnTheForm } from "./rules/not-on-the-form.js";
import { nutRoom } from "./rules/nut-room.js";
import { openingRoom } from "./rules/opening-room.js";
import { outOfSheath } from "./rules/out-of-sheath.js";
import { outingBrownOut } from "./rules/outing-brown-out.js";
import { outingCutOff } from "./rules/outing-cut-off.js";
import { outingReserve } from "./rules/outing-reserve.js";
import { overVoltage } from "./rules/over-voltage.js";
import { ownHole } from "./rules/own-hole.js";
import { parallelChemistry } from "./rules/parallel-chemistry.js";
import { parallelUnlike } from "./rules/parallel-unlike.js";
import { parallelVoltage } from "./rules/parallel-voltage.js";
import { priceMissing } from "./rules/price-missing.js";
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
import { pullPasses } from "./rules/pull-passes.js";
import { pushOnTab } from "./rules/push-on-tab.js";
import { readingOutside } from "./rules/reading-outside.js";
import { readingRange } from "./rules/reading-range.js";
import { readingUnplaced } from "./rules/reading-unplaced.js";
import { readingsDiffer } from "./rules/readings-differ.js";
import { recordOfNothing } from "./rules/record-of-nothing.js";
import { rowFit } from "./rules/row-fit.js";
import { runCarriesNothing } from "./rules/run-carries-nothing.js";
import { runLength } from "./rules/run-length.js";
import { sealantBond } from "./rules/sealant-bond.js";
import { sharedReturn } from "./rules/shared-return.js";
import { sidesDiffer } from "./rules/sides-differ.js";
import { sizeUnmet } from "./rules/size-unmet.js";
import { slackShort } from "./rules/slack-short.js";
import { slowCharging } from "./rules/slow-charging.js";
import { solderOnlyJoint } from "./rules/solder-only-joint.js";
import { solidConductor } from "./rules/solid-conductor.js";
import { spoolLength } from "./rules/spool-length.js";
import { standsUpright } from "./rules/stands-upright.js";
import { stepDown } from "./rules/step-down.js";
import { stepDrillSheet } from "./rules/step-drill-sheet.js";
import { stepOutOfOrder } from "./rules/step-out-of-order.js";
import { strainRelief } from "./rules/strain-relief.js";
import { studFit } from "./rules/stud-fit.js";
import { switchOverloaded } from "./rules/switch-overloaded.js";
import { tabFit } from "./rules/tab-fit.js";
import { tapJoint } from "./rules/tap-joint.js";
import { tapLimits } from "./rules/tap-limits.js";
import { terminalsPerStud } from "./rules/terminals-per-stud.js";
import { twistedJoint } from "./rules/twisted-joint.js";
import { twoCircuits } from "./rules/two-circuits.js";
import { twoCurrencies } from "./rules/two-currencies.js";
import { underVoltage } from "./rules/under-voltage.js";
import { untinnedWet } from "./rules/untinned-wet.js";
import { upwardEntry } from "./rules/upward-entry.js";
import { voltageDrop } from "./rules/voltage-drop.js";
import { wayEmpty } from "./rules/way-empty.js";
import { wayMissing } from "./rules/way-missing.js";
import { wayUnclear } from "./rules/way-unclear.js";

/** Every rule, chapter by chapter; findings of one level come in this order. */
export const rules = [
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
  barrelFit,
  batteryTerminalSpring,
  jointInBilge,
  jointOverloaded,
  jointUnsealedWet,
  pushOnTab,
  solderOnlyJoint,
  stepDown,
  strainRelief,
  studFit,
  tabFit,
  tapJoint,
  tapLimits,
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
  wayEmpty,
  // boxes
  boxContents,
  boxOpening,
  boxUnmeasured,
  boxWater,
  entriesFit,
  glandFit,
  holePlace,
  holeWeb,
  nutRoom,
  ownHole,
  upwardEntry,
  // ways
  bendRadiusRule,
  clearanceFuel,
  clearanceHeat,
  compassNearRule,
  edgeBare,
  legSupportsRule,
  openingRoom,
  slackShort,
  wayMissing,
  // parts
  negativeStock,
  priceMissing,
  spoolLength,
  twoCurrencies,
  // form
  formContradiction,
  formLinesCross,
  formNotJudged,
  formOpenSurface,
  formStations,
  formTable,
  formUnfair,
  notOnTheForm,
  // marks
  markMirror,
  markMisplaced,
  markPoorCrossing,
  markReadingDoubt,
  markUnreachable,
  markWithoutCheck,
  marksNotMeasured,
  sidesDiffer,
  // holes
  fixtureSize,
  holeBacking,
  holeDepth,
  holeEdge,
  holeOffFace,
  holeReach,
  holeSpacing,
  holeUnknown,
  holeZone,
  pullPasses,
  rowFit,
  sealantBond,
  stepDrillSheet,
  // float
  floatUnknown,
  floats,
  freeboardLow,
  holeLow,
  holeUnderWater,
  standsUpright,
  // work
  builtConductor,
  builtFuse,
  builtHole,
  builtJoint,
  builtLength,
  recordOfNothing,
  stepOutOfOrder,
  // readings
  readingOutside,
  readingRange,
  readingsDiffer,
  readingUnplaced,
] as const satisfies readonly Rule[];

export type RuleId = (typeof rules)[number]["id"];

const byId: ReadonlyMap<string, Rule> = new Map(rules.map((rule) => [rule.id, rule]));

/** The rule of an id; undefined if there is none. */
export function ruleOf(id: string): Rule | undefined {
  return byId.get(id);
}
