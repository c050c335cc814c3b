import type { EdgeSide, EdgeWay } from "../../core/hull/faces/edge-names.js";
import type { NextMeasurement } from "../../core/hull/form/next-measurement.js";
import type { HoleTool } from "../../core/hull/holes/tool.js";
import type { Verdict } from "../../core/hull/marks/verdict.js";
import type { Material } from "../../core/reference/drilling.js";
import { english as steps } from "../steps/english.js";

const nextReasons: Readonly<Record<NextMeasurement["reason"], string>> = {
  missing: "no figure at this station",
  gap: "nothing measured near it",
  end: "not measured to its end",
  check: "all else is sure enough; this one guards against a slip",
};
const verdicts: Readonly<Record<Verdict["verdict"], string>> = {
  good: "good",
  misplaced: "misplaced",
  "boat not symmetrical": "follows the boat, which is not symmetrical",
  "reading in doubt": "a reading is in doubt: take it again",
  "not known": "not measured",
};
const minds: Readonly<Record<HoleTool["mind"][number], string>> = {
  "back with wood": "back the sheet with wood",
  "peck and clear chips": "go in steps and clear the chips",
  "no cutting oil": "no cutting oil: it cracks the sheet",
  "round the rim": "round the rim",
  "keep off moulded corners": "keep off moulded corners",
  "seal the end grain": "seal the end grain",
  "isolate from the fitting": "isolate the metals from each other",
  "dust of glass": "mask and goggles: glass dust",
  "stop the step with tape": "mark the step with tape, or it runs on",
};
const tools: Readonly<Record<HoleTool["tool"], string>> = {
  "twist drill": "twist drill",
  "step drill": "step drill",
  "hole saw": "hole saw",
};
const ways: Readonly<Record<EdgeWay, string>> = steps.sizes.ways;

/** What is said of the hull, its marks and its holes, in English. */
export const hullInEnglish = {
  next: {
    breadth: (line: string): string => `breadth over both ${line}s`,
    coordinate: (coordinate: string, line: string): string => `${coordinate} of the ${line}`,
    at: (what: string, station: string): string => `${what} at station ${station}`,
    reasons: nextReasons,
    unsure: (by: string): string => `; unsure by ${by}`,
  },
  under: (length: string): string => `under ${length}`,
  reference: {
    at: (lengths: string): string => `${lengths} forward, to port, up`,
    station: (line: string, length: string): string => `on the ${line}, at station ${length}`,
    along: (line: string, length: string): string => `on the ${line}, ${length} from its aft end`,
    from: (name: string): string => ` from ${name}`,
    flat: (along: string, start: string, off: string): string => `${along} to the right${start}, ${off} up`,
    belowEdge: (along: string, start: string, off: string): string =>
      `${along} along${start}, ${off} below the upper edge`,
    offLine: (along: string, start: string, off: string, side: string, line: string): string =>
      `${along} along${start}, ${off} ${side} the ${line}`,
  },
  edge: (side: EdgeSide): string => `the ${side} edge`,
  theEdge: steps.sizes.edges.unnamed,
  ways,
  move: {
    along: (length: string, forward: boolean, strip: boolean): string =>
      `${length} ${forward ? (strip ? "forward" : "right") : strip ? "aft" : "left"}`,
    up: (length: string, up: boolean): string => `${length} ${up ? "up" : "down"}`,
    both: (parts: readonly string[]): string => `move ${parts.join(" and ")}`,
    leave: "leave it",
  },
  verdicts,
  twin: {
    same: (of: string): string => `same numbers as ${of}`,
    own: (of: string, off: string): string => `own numbers: ${of}'s would land ${off} off`,
  },
  minds,
  tool: {
    there: "there already",
    unknown: "not known",
    speed: (rpm: number): string => `, about ${rpm}\u00a0rpm`,
    pilot: (size: string): string => `pilot ${size}, then `,
    names: tools,
  },
  seal: {
    drain: "drain",
    open: "open",
    notSaid: "not said",
    gasket: "sealed by its gasket",
    sealed: "sealed",
    sealant: (ml: string, days: string): string =>
      `sealant, ${ml}\u00a0ml; cured through in ${days}\u00a0days`,
    all: (ml: number, count: number, name: string): string =>
      `Sealant in all: about ${ml}\u00a0ml, waste counted: ${count} × ${name}.`,
    container: (name: string): string => name,
  },
  behind: {
    zone: (name: string, length: string): string => `${name}: ${length} away`,
    room: (length: string): string => `room ${length}`,
    reached: (opening: string): string => `reached through ${opening}`,
  },
  afloat: {
    unknown: "not known",
    under: "under",
    below: (length: string): string => `${length} under`,
    dry: (degrees: number): string => `dry to ${degrees}°`,
    heel: (degrees: string, starboard: boolean): string =>
      `${degrees} to ${starboard ? "starboard" : "port"}`,
    trim: (degrees: string, bow: boolean): string => `${degrees} by the ${bow ? "bow" : "stern"}`,
  },
  material: (material: Material): string => material,
};

export type HullWords = typeof hullInEnglish;
