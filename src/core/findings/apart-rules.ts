import type { Rule } from "./rule.js";
import { barrelFit } from "./rules/barrel-fit.js";
import { bendRadiusRule } from "./rules/bend-radius.js";
import { boxContents } from "./rules/box-contents.js";
import { boxOpening } from "./rules/box-opening.js";
import { boxUnmeasured } from "./rules/box-unmeasured.js";
import { boxWater } from "./rules/box-water.js";
import { builtConductor } from "./rules/built-conductor.js";
import { builtFuse } from "./rules/built-fuse.js";
import { builtHole } from "./rules/built-hole.js";
import { builtJoint } from "./rules/built-joint.js";
import { builtLength } from "./rules/built-length.js";
import { clearanceFuel } from "./rules/clearance-fuel.js";
import { clearanceHeat } from "./rules/clearance-heat.js";
import { compassNearRule } from "./rules/compass-near.js";
import { edgeBare } from "./rules/edge-bare.js";
import { entriesFit } from "./rules/entries-fit.js";
import { fixtureSize } from "./rules/fixture-size.js";
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
import { legSupportsRule } from "./rules/leg-supports.js";
import { markMirror } from "./rules/mark-mirror.js";
import { markMisplaced } from "./rules/mark-misplaced.js";
import { markPoorCrossing } from "./rules/mark-poor-crossing.js";
import { markReadingDoubt } from "./rules/mark-reading-doubt.js";
import { markUnreachable } from "./rules/mark-unreachable.js";
import { markWithoutCheck } from "./rules/mark-without-check.js";
import { marksNotMeasured } from "./rules/marks-not-measured.js";
import { negativeStock } from "./rules/negative-stock.js";
import { notOnTheForm } from "./rules/not-on-the-form.js";
import { nutRoom } from "./rules/nut-room.js";
import { openingRoom } from "./rules/opening-room.js";
import { ownHole } from "./rules/own-hole.js";
import { priceMissing } from "./rules/price-missing.js";
import { pullPasses } from "./rules/pull-passes.js";
import { recordOfNothing } from "./rules/record-of-nothing.js";
import { rowFit } from "./rules/row-fit.js";
import { sealantBond } from "./rules/sealant-bond.js";
import { sidesDiffer } from "./rules/sides-differ.js";
import { slackShort } from "./rules/slack-short.js";
import { spoolLength } from "./rules/spool-length.js";
import { standsUpright } from "./rules/stands-upright.js";
import { stepDown } from "./rules/step-down.js";
import { stepDrillSheet } from "./rules/step-drill-sheet.js";
import { stepOutOfOrder } from "./rules/step-out-of-order.js";
import { strainRelief } from "./rules/strain-relief.js";
import { studFit } from "./rules/stud-fit.js";
import { tabFit } from "./rules/tab-fit.js";
import { tapLimits } from "./rules/tap-limits.js";
import { twoCurrencies } from "./rules/two-currencies.js";
import { upwardEntry } from "./rules/upward-entry.js";
import { wayMissing } from "./rules/way-missing.js";

/** Rules that look at more than the electrics: at the hull, at boxes, ends and parts, at what is on record. While a thing is moved their findings are held. */
export const apartRules = [
  // joints
  barrelFit,
  stepDown,
  strainRelief,
  studFit,
  tabFit,
  tapLimits,
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
] as const satisfies readonly Rule[];
