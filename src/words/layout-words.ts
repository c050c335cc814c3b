import type { DrillStep } from "../core/box/drill-order.js";
import type { BoxProblem } from "../core/box/layout.js";
import type { CutLength, CutProblem } from "../core/parts/cuts/types.js";
import type { PartKind, PartLine } from "../core/parts/parts-list.js";
import type { CutFigures } from "../core/parts/plan-cuts.js";
import type { WireLine } from "../core/parts/plan-parts.js";
import type { Shows } from "../core/plan/model/plan.js";
import { type Money, noCurrency, writeMoney } from "../core/quantity/money.js";
import type { SlackPart } from "../core/route/cut-length.js";
import type { LegFigures } from "../core/route/plan-legs.js";
import type { EndFigures } from "../core/terminations/plan-terminations.js";
import { counted, decimals, lengthWords, sizeWords } from "./numbers.js";
import { listed } from "./say.js";
import { faceWords } from "./template-words.js";

/** A measure of a box or a hole: millimetres, whatever the owner's tape, since drills and glands are made so. */
export const mmWords = (mm: number): string => `${Number(decimals(mm, 1))}\u00a0mm`;

/** A length on something small, as one's caliper shows it: to a tenth of a millimetre, or to a hundredth of an inch. */
export const caliperWords = (mm: number, { lengths }: Pick<Shows, "lengths">): string =>
  lengths === "inches" ? `${Number(decimals(mm / 25.4, 2))}\u00a0in` : mmWords(mm);

/** A hole: by the drill it is made with, and beside it in inches for whoever reads those. */
export const holeWords = (mm: number, shows: Pick<Shows, "lengths">): string =>
  shows.lengths === "inches" ? `${mmWords(mm)} (${caliperWords(mm, shows)})` : mmWords(mm);

/** `12.50 EUR`; the number alone where no currency is named. */
export function moneyWords(money: Money): string {
  const written = writeMoney(money);
  return (money.currency === noCurrency ? (written.split(" ")[0] ?? written) : written).replace(
    " ",
    "\u00a0",
  );
}

/** Whole millimetres of wire on the owner's tape. */
export const cutWords = (lengthMm: number, shows: Shows): string => lengthWords(lengthMm / 1000, shows);

/** Lengths no tape is laid to (slack, what is needed in all): up to the next inch, or the next 5 mm; metres from 10 m up. */
export function roundLengthWords(lengthMm: number, shows: Shows): string {
  const stepMm = shows.lengths === "inches" ? 25.4 : 5;
  return cutWords(Math.ceil(lengthMm / stepMm - 1e-6) * stepMm, shows);
}

/** One of several lengths that the reader adds up: up to 1/8 in, or 5 mm, so that their sum leads to the length that is cut. */
const partLengthWords = (lengthMm: number, shows: Shows): string => {
  const stepMm = shows.lengths === "inches" ? 25.4 / 8 : 5;
  return cutWords(Math.ceil(lengthMm / stepMm - 1e-6) * stepMm, shows);
};

/** A distance not to be exceeded, as between clips: down to the inch, or to 5 mm. */
export function spacingWords(lengthMm: number, shows: Shows): string {
  const stepMm = shows.lengths === "inches" ? 25.4 : 5;
  return cutWords(Math.max(1, Math.floor(lengthMm / stepMm + 1e-6)) * stepMm, shows);
}

/** How a leg is held between its ends. */
export function supportWords({ supports }: LegFigures, shows: Shows): string {
  if (supports === undefined) return "enclosed all along";
  const { atM, apartM } = supports;
  return atM.length === 0
    ? "at its ends"
    : `${counted(atM.length, "clip")}, every ${spacingWords(apartM * 1000, shows)}`;
}

/** What is bought: whole feet or metres where it comes to that. */
function soldWords(lengthMm: number, shows: Shows): string {
  if (shows.lengths === "inches") return cutWords(lengthMm, shows);
  return `${Number((lengthMm / 1000).toFixed(2))}\u00a0m`;
}

const slackReasons: Readonly<Record<SlackPart["why"], string>> = {
  owner: "yours",
  "draw out": "to draw it out",
  "work beside": "to work beside it",
  "off its hole": "off its hole",
  "at panel": "at the panel",
  "at battery": "at the battery",
  "make again": "to make the end again",
};

/** `300 mm to work beside it, 30 mm to make the end again`. */
export const slackWords = (parts: readonly SlackPart[], shows: Shows): string =>
  parts
    .map(({ why, lengthM }) => `${partLengthWords(lengthM * 1000, shows)} ${slackReasons[why]}`)
    .join(", ");

const shortReasons: Readonly<Record<SlackPart["why"], string>> = {
  owner: "yours",
  "draw out": "to draw out",
  "work beside": "to work",
  "off its hole": "off its hole",
  "at panel": "in panel",
  "at battery": "at the post",
  "make again": "spare",
};

/** The same for a table: `10 in to draw out + 1 1/4 in spare`. */
export const shortSlackWords = (parts: readonly SlackPart[], shows: Shows): string =>
  parts
    .map(({ why, lengthM }) => `${partLengthWords(lengthM * 1000, shows)} ${shortReasons[why]}`)
    .join(" + ");

/** Why a box does not do, as part of a sentence. */
export function boxProblemWords(problem: BoxProblem): string {
  switch (problem.problem) {
    case "no-gland-fits":
      return `no gland of the series holds ${problem.cable} (${mmWords(problem.diameterMm)})`;
    case "cable-not-round":
      return `${problem.cable} is flat, and a round seal leaks beside it`;
    case "wall-too-thick":
      return `its wall of ${mmWords(problem.wallMm)} is too thick for the thread of ${problem.size}`;
    case "too-many-entries":
      return `room for ${problem.room} entries only`;
    case "entry-too-large":
      return `no face is large enough for ${listed(problem.without)}`;
    case "too-tall":
      return `${problem.content} does not go under its lid`;
    case "no-room-for-contents":
      return `no room for ${problem.content}`;
    case "no-room-to-bend":
      return `no room for conductors to bend behind the ${faceWords[problem.face]}`;
    case "no-hole-for-cable":
      return `no hole of ${mmWords(problem.holeMm)} for ${problem.cable}`;
    default:
      return problem satisfies never;
  }
}

/** One step of drilling as one says it. */
export function drillWords({ tool, diameterMm, face, entries, support }: DrillStep): string {
  const many = entries.length > 1 ? `${entries.length} holes` : "1 hole";
  const held = support.length > 0 ? `; ${support.join(", ")}` : "";
  const where = `on the ${faceWords[face]}`;
  switch (tool) {
    case "punch":
      return `Punch ${entries.length > 1 ? `${entries.length} centres` : "the centre"} ${where}${held}`;
    case "deburring tool":
      return `Deburr ${many} ${where}, both sides`;
    default:
      return `Drill ${many} of ${mmWords(diameterMm ?? 0)} ${where} with a ${tool}${held}`;
  }
}

/** What a length is cut from. */
export function cutSourceWords({ source, lengthMm, copy, stock }: CutLength, shows: Shows): string {
  const length = soldWords(lengthMm, shows);
  switch (source) {
    case "offcut":
      return `offcut of ${length}${/^stock \d+$/.test(stock) && copy > 1 ? `, no. ${copy}` : ""}`;
    case "spool":
      return `spool of ${length} on hand`;
    case "new":
      return `new spool of ${length}, no. ${copy}`;
    case "by length":
      return `${length} cut off in the shop`;
    default:
      return source satisfies never;
  }
}

/** Why pieces of wire cannot be had, and what would help. */
export function cutProblemWords(problem: CutProblem, shows: Shows): string {
  switch (problem.problem) {
    case "longer-than-any-length":
      return `${problem.piece} is ${cutWords(problem.lengthMm, shows)}; the longest to be had is ${cutWords(problem.longestMm, shows)}. Buy a longer spool, or join it in a box on the way.`;
    case "not-enough-stock":
    case "pieces-do-not-fit-stock":
      return `${roundLengthWords(problem.neededMm, shows)} is needed; the ${roundLengthWords(problem.onHandMm, shows)} on hand does not do, and none is sold.`;
    case "negative-stock":
      return `${problem.stock} has a count below zero.`;
    case "missing-price":
      return `${problem.stock} has no price.`;
    default:
      return problem satisfies never;
  }
}

/** The packs to ask for: `2 × bag of 10`, or how many where it is sold singly or not on any list. */
export function packWords({ item, packs, toBuy }: PartLine): string {
  if (packs.length === 0) return toBuy === 0 ? "–" : `${toBuy}, not on any price list`;
  return packs
    .map(({ pack, times }) => (pack === item ? counted(times, "piece") : `${times} × ${pack}`))
    .join(", ");
}

/** How sure the cut list is. */
export function proofWords({ plan, prices }: CutFigures): string {
  if (plan === undefined) return "not to be had in these lengths";
  if (plan.proof === "proven")
    return prices === "priced" ? "proven: nothing costs less" : "proven: nothing takes less wire";
  return "the best found; a better one could exist";
}

/** What to ask for in the shop. */
export function wireBuyWords({ buy }: WireLine, shows: Shows): string {
  if (buy.length === 0) return "nothing to buy";
  return buy
    .map(({ sold, lengthMm, times }) => {
      const length = soldWords(lengthMm, shows);
      return sold === "spool" ? `${times} × spool of ${length}` : `${length} cut off`;
    })
    .join(", ");
}

/** Wire of a kind in the owner's words; the id stays beside it. */
export const wireWords = ({ size, cores, colour, kind }: CutFigures, shows: Shows): string => {
  if (colour !== undefined) return `${sizeWords(size, shows)}, ${colour}`;
  return cores > 1 ? `${sizeWords(size, shows)}, ${cores}\u00a0cores` : kind;
};

/** Headings of the shopping list. */
export const partKindWords: Readonly<Record<PartKind, string>> = {
  conductor: "Wire",
  terminal: "Terminals",
  joint: "Joints",
  sleeve: "Sleeve",
  gland: "Glands and plugs",
  fuse: "Fuses and breakers",
  "fuse holder": "Fuse holders",
  box: "Boxes",
  switch: "Switches",
  bus: "Buses and strips",
  tie: "Clips and ties",
  sealant: "Sealant",
  tape: "Tape",
  label: "Labels",
  gear: "Gear",
  other: "Other",
};

/** Terminal, sleeve and how they are made, in a few words. */
export function terminalWords(end: EndFigures): string {
  const { kind, barrel, stud, tab } = end;
  const parts = [
    kind,
    ...(barrel === undefined
      ? []
      : [barrel.kind === "lug" ? `lug ${barrel.sizeKey}` : colourWords(end, barrel.colour)]),
    ...(stud === undefined ? [] : [stud.name]),
    ...(tab === undefined ? [] : [`tab ${tab}\u00a0mm`]),
    ...(end.unchecked.includes("stud") ? ["stud not told"] : []),
    ...(end.unchecked.includes("tab") ? ["tab not told"] : []),
  ];
  return parts.join(", ");
}

/** The colour of its barrel; of a step-down butt both, as it is bought. */
function colourWords({ problems }: EndFigures, own: string): string {
  const both = problems.find((one) => one.problem === "needs-step-down");
  return both === undefined ? own : [...both.colours].sort().join(" to ");
}

export function sleeveWords({ sleeve }: EndFigures): string {
  if (sleeve === undefined) return "";
  return `${sleeve.lined ? "lined " : ""}${sleeve.suppliedMm} to ${sleeve.recoveredMm}\u00a0mm, ${sleeve.lengthMm}\u00a0mm long`;
}
