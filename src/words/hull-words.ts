import { edgeSide, edgeWay } from "../core/hull/faces/edge-names.js";
import type { Face } from "../core/hull/faces/face.js";
import type { HoleFigures, SideMark } from "../core/hull/figures.js";
import type { NextMeasurement } from "../core/hull/form/next-measurement.js";
import { containerFor } from "../core/hull/holes/sealing.js";
import type { HoleTool } from "../core/hull/holes/tool.js";
import type { Reason } from "../core/hull/marks/choose.js";
import type { Mark } from "../core/hull/marks/mark.js";
import type { Verdict } from "../core/hull/marks/verdict.js";
import type { Reference } from "../core/plan/model/hull.js";
import type { Shows } from "../core/plan/model/plan.js";
import { writeInches } from "../core/quantity/write.js";
import { decimals, lengthWords, noFigure } from "./numbers.js";

const tie = "\u00a0";

/** A reading as the owner's tape shows it: `37 1/2 in` to its graduation, or millimetres. */
export function readingWords(valueM: number, graduationM: number, shows: Shows): string {
  if (!Number.isFinite(valueM)) return noFigure;
  const parts = 0.0254 / graduationM;
  const onInches = [1, 2, 4, 8, 16, 32, 64].find((one) => Math.abs(parts - one) < 1e-6);
  if (onInches !== undefined) return writeInches(valueM, onInches).replaceAll(" ", tie);
  if (shows.lengths === "inches" && graduationM > 0.0254) return lengthWords(valueM, shows);
  const places = graduationM < 9.99e-4 ? 1 : 0;
  return `${decimals(valueM * 1000, places)}${tie}mm`;
}

/** Small lengths that are no readings (a spread, a shift): to 1/32 in, or tenths of a millimetre. */
export function smallWords(valueM: number | undefined, shows: Shows): string {
  if (valueM === undefined || !Number.isFinite(valueM)) return noFigure;
  if (shows.lengths !== "inches") return `${decimals(valueM * 1000, 1)}${tie}mm`;
  const least = 0.0254 / 32;
  return Math.abs(valueM) < least / 2
    ? `under ${writeInches(least, 32)}`.replaceAll(" ", tie)
    : writeInches(valueM, 32).replaceAll(" ", tie);
}

/** How far weights are moved to show what that does, and its words [m]. */
export const moveStepM = (shows: Shows): number => (shows.lengths === "inches" ? 4 * 0.0254 : 0.1);

/** A bore, by what drills are called: whole or tenths of millimetres. */
export const boreWords = (mm: number): string => `${Number(decimals(mm, 1))}${tie}mm`;

export const degreeWords = (degrees: number | undefined, places = 0): string =>
  degrees === undefined || !Number.isFinite(degrees) ? noFigure : `${decimals(degrees, places)}°`;

const nextReasons: Readonly<Record<NextMeasurement["reason"], string>> = {
  missing: "no figure at this station",
  gap: "nothing measured near it",
  end: "not measured to its end",
  check: "all else is sure enough; this one guards against a slip",
};

/** What to measure next. */
export function nextWords(next: NextMeasurement, shows: Shows): string {
  const what =
    next.coordinate === "breadth"
      ? `breadth over both ${next.line}s`
      : `${next.coordinate} of the ${next.line}`;
  return `${what} at station ${surveyWords(next.atM, shows)}`;
}

/** Why that, and how unsure it is now. */
export function nextReasonWords({ reason, uncertaintyM }: NextMeasurement, shows: Shows): string {
  const unsure = reason === "check" ? "" : `; unsure by ${surveyWords(uncertaintyM, shows)}`;
  return `${nextReasons[reason]}${unsure}`;
}

/** A length of the survey as it is written down: inches without feet, or millimetres. */
export const surveyWords = (valueM: number, shows: Shows): string =>
  shows.lengths === "inches"
    ? writeInches(valueM, 16).replaceAll(" ", tie)
    : `${decimals(valueM * 1000, 0)}${tie}mm`;

/** Why two reference points were taken or left. */
export function reasonWords({ reason, with: [a, b], crossingDeg, majorM }: Reason, shows: Shows): string {
  const about = `${a} and ${b}, crossing at ${degreeWords(crossingDeg)}, leave ${smallWords(majorM, shows)}`;
  switch (reason) {
    case "least uncertain":
      return `taken: ${about}, the least of all pairs`;
    case "next best":
      return `next best: ${about}`;
    case "only pair":
      return `taken: ${about}; no other pair crosses well`;
    case "refused: flat crossing":
      return `refused: ${a} and ${b} cross too flat, at ${degreeWords(crossingDeg)}`;
  }
}

/** Where a reference point is, as the plan gives it. `flat`: names of the flat faces. */
export function referenceWords({ place }: Reference, flat: ReadonlySet<string>, shows: Shows): string {
  const length = (valueM: number) => lengthWords(valueM, shows);
  if (place.kind === "at") return `${place.atM.map(length).join(", ")} forward, to port, up`;
  if (place.kind === "station") return `on the ${place.line}, at station ${length(place.stationM)}`;
  if (place.kind === "along") return `on the ${place.line}, ${length(place.alongM)} from its aft end`;
  const { alongM, offM, edge, from } = place.place;
  const start = from === undefined ? "" : ` from ${from}`;
  if (flat.has(place.face)) return `${length(alongM)} to the right${start}, ${length(offM)} up`;
  return edge === undefined
    ? `${length(alongM)} along${start}, ${length(offM)} below the upper edge`
    : `${length(alongM)} along${start}, ${length(offM)} ${edge.off} the ${edge.line}`;
}

/** How the mark is set out, in one line. */
export function methodWords(mark: Mark, face?: Face): string {
  if (mark.method === "two tapes") return "two tapes";
  if (mark.method === "none") return "cannot be set out";
  return `along ${edgeWords(mark.edge, face)}, then square`;
}

/** What an edge is called: of a strip by its place, of a flat face by where it lies as one looks at it. */
export function edgeWords(name = "", face?: Face): string {
  const side = edgeSide(name, face);
  return side === undefined ? name || "the edge" : `the ${side} edge`;
}

/** Which way a length along an edge is to be laid off. */
export function wayWords(name: string, alongM: number, face: Face): string {
  const way = edgeWay(name, alongM, face);
  if (way === undefined) return "";
  return way === "left" || way === "right" ? `to the ${way}` : way;
}

/** `forward`, `aft` along a strip, `right`, `left` on a flat face; `up`, `down`. */
export function moveWords({ moveAlongM, moveUpM }: Verdict, strip: boolean, shows: Shows): string {
  const along = moveAlongM > 0 ? (strip ? "forward" : "right") : strip ? "aft" : "left";
  const parts = [
    ...(Math.abs(moveAlongM) > 2.5e-4 ? [`${smallWords(Math.abs(moveAlongM), shows)} ${along}`] : []),
    ...(Math.abs(moveUpM) > 2.5e-4
      ? [`${smallWords(Math.abs(moveUpM), shows)} ${moveUpM > 0 ? "up" : "down"}`]
      : []),
  ];
  return parts.length > 0 ? `move ${parts.join(" and ")}` : "leave it";
}

const verdicts: Readonly<Record<Verdict["verdict"], string>> = {
  good: "good",
  misplaced: "misplaced",
  "boat not symmetrical": "follows the boat, which is not symmetrical",
  "reading in doubt": "a reading is in doubt: take it again",
  "not known": "not measured",
};
export const verdictWords = (verdict: Verdict["verdict"]): string => verdicts[verdict];

/** How a mark of the second side goes with its twin; empty on the first. */
export function twinWords({ twin }: SideMark, shows: Shows): string {
  if (twin === undefined) return "";
  if (twin.shared) return `same numbers as ${twin.of}`;
  return `own numbers: ${twin.of}'s would land ${smallWords(twin.shiftM, shows)} off`;
}

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

/** Pilot, tool and speed, and what to mind. */
export function toolWords(hole: HoleFigures): string {
  const { tool, cut } = hole;
  if (hole.there) return "there already";
  if (tool === undefined || cut === undefined) return "not known";
  const speed = tool.rpm === undefined ? "" : `, about ${tool.rpm}${tie}rpm`;
  const pilot = tool.pilotMm < cut.holeMm ? `pilot ${boreWords(tool.pilotMm)}, then ` : "";
  return `${pilot}${tool.tool} ${boreWords(cut.holeMm)}${speed}`;
}

export const mindWords = (tool: HoleTool | undefined): string =>
  (tool?.mind ?? []).map((one) => minds[one]).join("; ");

/** What seals it, and how long that takes. */
export function sealWords({ plan, sealing }: HoleFigures): string {
  if (plan.water === "drain") return "drain";
  if (plan.water === "open") return "open";
  if (plan.water === undefined) return "not said";
  if (plan.seal === "gasket") return "sealed by its gasket";
  if (sealing === undefined) return "sealed";
  return `sealant, ${decimals(sealing.ml, 1)}${tie}ml; cured through in ${decimals(sealing.cureHours / 24, 1)}${tie}days`;
}

/** Sealant for all holes, and what to buy for it; empty where none is needed. */
export function sealantWords(holes: readonly HoleFigures[]): string {
  const ml = holes.reduce((sum, { sealing }) => sum + (sealing?.ml ?? 0), 0);
  if (ml <= 0) return "";
  const { count, name, withWasteMl } = containerFor(ml);
  return `Sealant in all: about ${Math.ceil(withWasteMl)}${tie}ml, waste counted: ${count} × ${name}.`;
}

/** What is behind it, nearest thing first. */
export function behindWords(hole: HoleFigures, shows: Shows): string {
  const { zone, roomM, words } = hole.behind;
  return [
    ...(words === undefined ? [] : [words]),
    ...(zone === undefined ? [] : [`${zone.name}: ${lengthWords(zone.distanceM, shows)} away`]),
    ...(roomM === undefined ? [] : [`room ${lengthWords(roomM, shows)}`]),
    ...(hole.reach?.through[0] === undefined ? [] : [`reached through ${hole.reach.through[0].opening}`]),
  ].join("; ");
}

/** Height over still water. */
export function heightWords({ afloat }: HoleFigures, shows: Shows): string {
  if (afloat === undefined) return "not known";
  return afloat.heightM > 0
    ? lengthWords(afloat.heightM, shows)
    : `${lengthWords(-afloat.heightM, shows)} under`;
}

/** Heel that puts it under, and to which side. */
export function heelWords({ afloat }: HoleFigures): string {
  if (afloat === undefined) return "not known";
  if (afloat.heightM <= 0) return "under";
  const heel = afloat.heelUnderDeg;
  return heel === undefined
    ? "dry to 60°"
    : `${degreeWords(Math.abs(heel))} to ${heel > 0 ? "starboard" : "port"}`;
}

/** Trim that puts it under. */
export function trimWords({ afloat }: HoleFigures): string {
  if (afloat === undefined) return "not known";
  if (afloat.heightM <= 0) return "under";
  const trim = afloat.trimUnderDeg;
  return trim === undefined
    ? "dry to 15°"
    : `${degreeWords(Math.abs(trim))} by the ${trim > 0 ? "bow" : "stern"}`;
}
