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
import { type HullWords, hullInEnglish } from "./hull/english.js";
import { decimals, lengthWords, noFigure } from "./numbers.js";
import type { TerminalWords } from "./terminal/english.js";

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
export function smallWords(
  valueM: number | undefined,
  shows: Shows,
  { under }: HullWords = hullInEnglish,
): string {
  if (valueM === undefined || !Number.isFinite(valueM)) return noFigure;
  if (shows.lengths !== "inches") return `${decimals(valueM * 1000, 1)}${tie}mm`;
  const least = 0.0254 / 32;
  return Math.abs(valueM) < least / 2
    ? under(writeInches(least, 32)).replaceAll(" ", tie)
    : writeInches(valueM, 32).replaceAll(" ", tie);
}

/** How far weights are moved to show what that does, and its words [m]. */
export const moveStepM = (shows: Shows): number => (shows.lengths === "inches" ? 4 * 0.0254 : 0.1);

/** A bore, by what drills are called: whole or tenths of millimetres. */
export const boreWords = (mm: number): string => `${Number(decimals(mm, 1))}${tie}mm`;

/** The size a tool is asked for: a hole of a round number of 32nds of an inch is cut by a tool that is sold so, `15.9 mm (5/8 in)`. */
export function toolSizeWords(mm: number): string {
  const parts = (mm / 25.4) * 32;
  const inch = Math.abs(parts - Math.round(parts)) < 1e-6 && Math.abs(mm * 2 - Math.round(mm * 2)) > 1e-6;
  return inch ? `${boreWords(mm)} (${writeInches(mm / 1000, 32).replaceAll(" ", tie)})` : boreWords(mm);
}

export const degreeWords = (degrees: number | undefined, places = 0): string =>
  degrees === undefined || !Number.isFinite(degrees) ? noFigure : `${decimals(degrees, places)}°`;

/** What to measure next. */
export function nextWords(
  next: NextMeasurement,
  shows: Shows,
  { next: words }: HullWords = hullInEnglish,
): string {
  const what =
    next.coordinate === "breadth" ? words.breadth(next.line) : words.coordinate(next.coordinate, next.line);
  return words.at(what, surveyWords(next.atM, shows));
}

/** Why that, and how unsure it is now. */
export function nextReasonWords(
  { reason, uncertaintyM }: NextMeasurement,
  shows: Shows,
  { next: words }: HullWords = hullInEnglish,
): string {
  const unsure = reason === "check" ? "" : words.unsure(surveyWords(uncertaintyM, shows));
  return `${words.reasons[reason]}${unsure}`;
}

/** A length of the survey as it is written down: inches without feet, or millimetres. */
export const surveyWords = (valueM: number, shows: Shows): string =>
  shows.lengths === "inches"
    ? writeInches(valueM, 16).replaceAll(" ", tie)
    : `${decimals(valueM * 1000, 0)}${tie}mm`;

/** Why two reference points were taken or left. */
export function reasonWords(
  { reason, with: [a, b], crossingDeg, majorM }: Reason,
  shows: Shows,
  words: HullWords,
  { pair, reasons: say }: TerminalWords["hull"]["marks"],
): string {
  const crossing = degreeWords(crossingDeg);
  const about = pair(a, b, crossing, smallWords(majorM, shows, words));
  switch (reason) {
    case "least uncertain":
      return say.least(about);
    case "next best":
      return say.next(about);
    case "only pair":
      return say.only(about);
    case "refused: flat crossing":
      return say.flat(a, b, crossing);
  }
}

/** Where a reference point is, as the plan gives it. `flat`: names of the flat faces. */
export function referenceWords(
  { place }: Reference,
  flat: ReadonlySet<string>,
  shows: Shows,
  { reference: words }: HullWords = hullInEnglish,
): string {
  const length = (valueM: number) => lengthWords(valueM, shows);
  if (place.kind === "at") return words.at(place.atM.map(length).join(", "));
  if (place.kind === "station") return words.station(place.line, length(place.stationM));
  if (place.kind === "along") return words.along(place.line, length(place.alongM));
  const { alongM, offM, edge, from } = place.place;
  const start = from === undefined ? "" : words.from(from);
  if (flat.has(place.face)) return words.flat(length(alongM), start, length(offM));
  return edge === undefined
    ? words.belowEdge(length(alongM), start, length(offM))
    : words.offLine(length(alongM), start, length(offM), edge.off, edge.line);
}

/** How the mark is set out, in one line. */
export function methodWords(
  { method, edge }: Mark,
  face: Face,
  words: HullWords,
  { methods: say }: TerminalWords["hull"]["marks"],
): string {
  if (method === "two tapes") return say.twoTapes;
  return method === "none" ? say.none : say.square(edgeWords(edge, face, words));
}

/** What an edge is called: of a strip by its place, of a flat face by where it lies as one looks at it. */
export function edgeWords(name = "", face?: Face, words: HullWords = hullInEnglish): string {
  const side = edgeSide(name, face);
  return side === undefined ? name || words.theEdge : words.edge(side);
}

/** Which way a length along an edge is to be laid off. */
export function wayWords(
  name: string,
  alongM: number,
  face: Face,
  { ways }: HullWords = hullInEnglish,
): string {
  const way = edgeWay(name, alongM, face);
  return way === undefined ? "" : ways[way];
}

/** `forward`, `aft` along a strip, `right`, `left` on a flat face; `up`, `down`. */
export function moveWords(
  { moveAlongM, moveUpM }: Verdict,
  strip: boolean,
  shows: Shows,
  words: HullWords = hullInEnglish,
): string {
  const { move } = words;
  const small = (lengthM: number) => smallWords(Math.abs(lengthM), shows, words);
  const parts = [
    ...(Math.abs(moveAlongM) > 2.5e-4 ? [move.along(small(moveAlongM), moveAlongM > 0, strip)] : []),
    ...(Math.abs(moveUpM) > 2.5e-4 ? [move.up(small(moveUpM), moveUpM > 0)] : []),
  ];
  return parts.length > 0 ? move.both(parts) : move.leave;
}

export const verdictWords = (verdict: Verdict["verdict"], { verdicts }: HullWords = hullInEnglish): string =>
  verdicts[verdict];

/** How a mark of the second side goes with its twin; empty on the first. */
export function twinWords({ twin }: SideMark, shows: Shows, words: HullWords = hullInEnglish): string {
  if (twin === undefined) return "";
  return twin.shared
    ? words.twin.same(twin.of)
    : words.twin.own(twin.of, smallWords(twin.shiftM, shows, words));
}

/** Pilot, tool and speed, and what to mind. */
export function toolWords(hole: HoleFigures, { tool: words }: HullWords = hullInEnglish): string {
  const { tool, cut } = hole;
  if (hole.there) return words.there;
  if (tool === undefined || cut === undefined) return words.unknown;
  const speed = tool.rpm === undefined ? "" : words.speed(tool.rpm);
  const pilot = tool.pilotMm < cut.holeMm ? words.pilot(boreWords(tool.pilotMm)) : "";
  return `${pilot}${words.names[tool.tool]} ${toolSizeWords(cut.holeMm)}${speed}`;
}

export const mindWords = (tool: HoleTool | undefined, { minds }: HullWords = hullInEnglish): string =>
  (tool?.mind ?? []).map((one) => minds[one]).join("; ");

/** What seals it, and how long that takes. */
export function sealWords(
  { plan, sealing }: HoleFigures,
  { seal: words }: HullWords = hullInEnglish,
): string {
  if (plan.water === "drain") return words.drain;
  if (plan.water === "open") return words.open;
  if (plan.water === undefined) return words.notSaid;
  if (plan.seal === "gasket") return words.gasket;
  if (sealing === undefined) return words.sealed;
  return words.sealant(decimals(sealing.ml, 1), decimals(sealing.cureHours / 24, 1));
}

/** Sealant for all holes, and what to buy for it; empty where none is needed. */
export function sealantWords(
  holes: readonly HoleFigures[],
  { seal: words }: HullWords = hullInEnglish,
): string {
  const ml = holes.reduce((sum, { sealing }) => sum + (sealing?.ml ?? 0), 0);
  if (ml <= 0) return "";
  const { count, name, withWasteMl } = containerFor(ml);
  return words.all(Math.ceil(withWasteMl), count, words.container(name));
}

/** What is behind it, nearest thing first. */
export function behindWords(
  hole: HoleFigures,
  shows: Shows,
  { behind: say }: HullWords = hullInEnglish,
): string {
  const { zone, roomM, words } = hole.behind;
  return [
    ...(words === undefined ? [] : [words]),
    ...(zone === undefined ? [] : [say.zone(zone.name, lengthWords(zone.distanceM, shows))]),
    ...(roomM === undefined ? [] : [say.room(lengthWords(roomM, shows))]),
    ...(hole.reach?.through[0] === undefined ? [] : [say.reached(hole.reach.through[0].opening)]),
  ].join("; ");
}

/** Height over still water. */
export function heightWords(
  { afloat }: HoleFigures,
  shows: Shows,
  { afloat: words }: HullWords = hullInEnglish,
): string {
  if (afloat === undefined) return words.unknown;
  return afloat.heightM > 0
    ? lengthWords(afloat.heightM, shows)
    : words.below(lengthWords(-afloat.heightM, shows));
}

/** Heel that puts it under, and to which side. */
export function heelWords({ afloat }: HoleFigures, { afloat: words }: HullWords = hullInEnglish): string {
  if (afloat === undefined) return words.unknown;
  if (afloat.heightM <= 0) return words.under;
  const heel = afloat.heelUnderDeg;
  return heel === undefined ? words.dry(60) : words.heel(degreeWords(Math.abs(heel)), heel > 0);
}

/** Trim that puts it under. */
export function trimWords({ afloat }: HoleFigures, { afloat: words }: HullWords = hullInEnglish): string {
  if (afloat === undefined) return words.unknown;
  if (afloat.heightM <= 0) return words.under;
  const trim = afloat.trimUnderDeg;
  return trim === undefined ? words.dry(15) : words.trim(degreeWords(Math.abs(trim)), trim > 0);
}
