import type { EntryFault } from "../../../core/box/check-entries.js";
import type { FaceName } from "../../../core/plan/model/layout.js";

const faces: Readonly<Record<FaceName, string>> = {
  down: "lower face",
  left: "left face",
  right: "right face",
  up: "upper face",
  near: "near face",
  far: "far face",
};
const faults: Readonly<Record<EntryFault["fault"], string>> = {
  "off-the-face": "lies off the face",
  "closed-face": "is on a face that is not to be drilled",
  "near-corner": "is too near the corner",
  "near-base": "is too near the base",
  "near-lid": "is too near the lid",
  "on-boss": "meets a corner post",
  "thin-web": "leaves too little wall",
  "nuts-touch": "touches the next nut",
  "no-spanner-room": "leaves no room for a spanner",
  "upward-face": "is on an upper face, where water stands",
};

/** Boxes and cased panels, face by face. */
export const boxes = {
  working: "Working out the boxes …",
  failed: "The boxes could not be worked out.",
  none: "There is no box in the plan, and no panel whose casing is told. Measure the inside of the panel, or add a box, and its faces stand here with every hole.",
  toLists: "To the lists of panels and boxes",
  insideOf: (name: string) => `Inside of ${name}`,
  insideMeasures: { across: "Across", up: "Up", deep: "Deep, base to lid" },
  notMeasured: "not measured yet",
  addBox: "Another box",
  boxExample: "fore box",
  add: "Add",
  boxThenRuns: "A box comes into use when a run goes to it and others leave it: say so in the runs.",
  faces,
  faults,
  from: {
    own: "your box, laid out here",
    drilled: "drilled as the plan says",
    catalogue: "chosen from what you would buy",
    none: "There is no box in the plan, and no panel whose casing is told. Measure the inside of the panel, or add a box, and its faces stand here with every hole.",
  },
  tellInside: "Tell its inside (across, up, deep) to have it laid out, or list boxes you would buy.",
  inside: "inside",
  wall: "wall",
  unmeasured: "Not measured, so not checked",
  measures: { inside: "inside", boss: "corner posts", "lid lip": "lid's lip" },
  doesNotDo: "It does not do",
  noFault: "Nothing binds: every hole keeps its distances.",
  binds: "What binds",
  with: (other: string) => `with ${other}`,
  has: (has: string, needs: string) => `${has}, needs ${needs}`,
  crack: "the wall may crack there",
  hint: ({ near, far }: { near: string; far: string }) =>
    `Drag a hole, or choose it and move it with the arrow keys by ${near}, with Shift by ${far}. The ring is what its nut covers; the dotted line is where its middle may lie.`,
  nudges: { millimetres: { near: "1 mm", far: "5 mm" }, inches: { near: "1/32 in", far: "1/8 in" } },
  catalogueHint:
    "The box is the cheapest of those you would buy that does. Move a hole, and the plan keeps to this one.",
  entry: (name: string, hole: string, along: string, up: string) =>
    `${name}: hole ${hole}, ${along} along, ${up} up`,
  table: "Holes",
  hole: "Hole",
  along: "Along",
  up: "Up",
  face: "Face",
  entries: "Entry",
  placeAgain: "Let them be placed again",
  scale: (scale: string) => `scale ${scale}`,
  lid: "lid",
  base: "base",
  drilling: "Order of drilling",
  contents: "Inside",
};
