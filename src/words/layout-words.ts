import type { DrillStep } from "../core/box/drill-order.js";
import type { BoxProblem } from "../core/box/layout.js";
import type { BoughtThing } from "../core/parts/bought-lines.js";
import type { CutLength, CutProblem } from "../core/parts/cuts/types.js";
import type { PartLine } from "../core/parts/parts-list.js";
import type { CutFigures } from "../core/parts/plan-cuts.js";
import type { WireLine } from "../core/parts/plan-parts.js";
import type { Shows } from "../core/plan/model/plan.js";
import { type Money, noCurrency, writeMoney } from "../core/quantity/money.js";
import type { LegFigures } from "../core/route/plan-legs.js";
import type { EndFigures } from "../core/terminations/plan-terminations.js";
import type { SlackPart } from "../core/way/slack.js";
import { type LayoutWords, layoutInEnglish } from "./layout/english.js";
import { listed } from "./listed.js";
import { decimals, lengthWords, sizeWords } from "./numbers.js";

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
function spacingWords(lengthMm: number, shows: Shows): string {
  const stepMm = shows.lengths === "inches" ? 25.4 : 5;
  return cutWords(Math.max(1, Math.floor(lengthMm / stepMm + 1e-6)) * stepMm, shows);
}

/** How a leg is held between its ends. */
export function supportWords(
  { supports }: LegFigures,
  shows: Shows,
  { supports: words }: LayoutWords = layoutInEnglish,
): string {
  if (supports === undefined) return words.enclosed;
  const { atM, apartM } = supports;
  return atM.length === 0 ? words.ends : words.every(atM.length, spacingWords(apartM * 1000, shows));
}

/** What is bought: whole feet or metres where it comes to that. */
function soldWords(lengthMm: number, shows: Shows): string {
  if (shows.lengths === "inches") return cutWords(lengthMm, shows);
  return `${Number((lengthMm / 1000).toFixed(2))}\u00a0m`;
}

/** `300 mm to work beside it, 30 mm to make the end again`. */
export const slackWords = (
  parts: readonly SlackPart[],
  shows: Shows,
  { slack }: LayoutWords = layoutInEnglish,
): string =>
  parts.map(({ why, lengthM }) => `${partLengthWords(lengthM * 1000, shows)} ${slack[why]}`).join(", ");

/** The same for a table: `10 in to draw out + 1 1/4 in spare`. */
export const shortSlackWords = (
  parts: readonly SlackPart[],
  shows: Shows,
  { shortSlack }: LayoutWords = layoutInEnglish,
): string =>
  parts.map(({ why, lengthM }) => `${partLengthWords(lengthM * 1000, shows)} ${shortSlack[why]}`).join(" + ");

/** Why a box does not do, as part of a sentence. */
export function boxProblemWords(
  problem: BoxProblem,
  { box: words, joining }: LayoutWords = layoutInEnglish,
): string {
  switch (problem.problem) {
    case "no-gland-fits":
      return words.noGland(problem.cable, mmWords(problem.diameterMm));
    case "cable-not-round":
      return words.notRound(problem.cable);
    case "wall-too-thick":
      return words.wall(mmWords(problem.wallMm), problem.size);
    case "too-many-entries":
      return words.tooMany(problem.room);
    case "entry-too-large":
      return words.tooLarge(listed(problem.without, joining));
    case "too-tall":
      return words.tooTall(problem.content);
    case "no-room-for-contents":
      return words.noRoom(problem.content);
    case "no-room-to-bend":
      return words.noBend(problem.face);
    case "no-hole-for-cable":
      return words.noHole(mmWords(problem.holeMm), problem.cable);
    default:
      return problem satisfies never;
  }
}

/** One step of drilling as one says it. */
export function drillWords(
  { tool, diameterMm, face, entries, support }: DrillStep,
  { drill: words }: LayoutWords = layoutInEnglish,
): string {
  const count = entries.length;
  const held = support.length > 0 ? `; ${support.map((one) => words.held[one]).join(", ")}` : "";
  switch (tool) {
    case "punch":
      return words.punch(count, face, held);
    case "deburring tool":
      return words.deburr(count, face);
    default:
      return words.drill(count, mmWords(diameterMm ?? 0), face, tool, held);
  }
}

/** What a length is cut from. */
export function cutSourceWords(
  { source, lengthMm, copy, stock }: CutLength,
  shows: Shows,
  { from: words }: LayoutWords = layoutInEnglish,
): string {
  const length = soldWords(lengthMm, shows);
  if (source === "offcut")
    return words.offcut(length, /^stock \d+$/.test(stock) && copy > 1 ? copy : undefined);
  return words[source](length, copy);
}

/** Why pieces of wire cannot be had, and what would help. */
export function cutProblemWords(
  problem: CutProblem,
  shows: Shows,
  { cut: words }: LayoutWords = layoutInEnglish,
): string {
  switch (problem.problem) {
    case "longer-than-any-length":
      return words.tooLong(
        problem.piece,
        cutWords(problem.lengthMm, shows),
        cutWords(problem.longestMm, shows),
      );
    case "not-enough-stock":
    case "pieces-do-not-fit-stock":
      return words.notEnough(
        roundLengthWords(problem.neededMm, shows),
        roundLengthWords(problem.onHandMm, shows),
      );
    case "negative-stock":
      return words.negative(problem.stock);
    case "missing-price":
      return words.noPrice(problem.stock);
    default:
      return problem satisfies never;
  }
}

/**
 * The packs to ask for: `2 × bag of 10`, or how many where it is sold singly or not on any list.
 * @param saidOnce That most are on no list is said over the whole of it, and not here.
 */
export function packWords(
  { item, packs, toBuy }: PartLine,
  { buy: words }: LayoutWords = layoutInEnglish,
  saidOnce = false,
): string {
  if (packs.length === 0 && toBuy === 0) return "–";
  if (packs.length === 0) return saidOnce ? words.pieces(toBuy) : words.unlisted(toBuy);
  return packs
    .map(({ pack, times }) => (pack === item ? words.pieces(times) : `${times} × ${pack}`))
    .join(", ");
}

/** How much of a thing was bought: pieces, or a length of wire. */
export function boughtAmountWords({ kind, bought }: BoughtThing, shows: Shows, amount = bought): string {
  return kind === "conductor" ? roundLengthWords(amount, shows) : String(amount);
}

/** Where what was bought is not just what the list asks for. */
export function boughtWords(
  one: BoughtThing | undefined,
  shows: Shows,
  { bought: words }: LayoutWords = layoutInEnglish,
): string | undefined {
  if (one === undefined) return undefined;
  const amount = (of: number) => boughtAmountWords(one, shows, of);
  if (one.more > 0) return words.more(amount(one.bought), amount(one.more));
  return one.over > 0 ? words.over(amount(one.bought), amount(one.over)) : undefined;
}

/** How sure the cut list is. */
export function proofWords(
  { plan, prices }: CutFigures,
  { cut: words }: LayoutWords = layoutInEnglish,
): string {
  if (plan === undefined) return words.none;
  if (plan.proof === "proven") return prices === "priced" ? words.cheapest : words.leastWire;
  return words.found;
}

/** What to ask for in the shop. */
export function wireBuyWords(
  { buy }: WireLine,
  shows: Shows,
  { buy: words }: LayoutWords = layoutInEnglish,
): string {
  if (buy.length === 0) return words.nothing;
  return buy
    .map(({ sold, lengthMm, times }) => {
      const length = soldWords(lengthMm, shows);
      return sold === "spool" ? words.spools(times, length) : words.cutOff(length);
    })
    .join(", ");
}

/** Wire of a kind in the owner's words; the id stays beside it. */
export const wireWords = (
  { size, cores, colour, kind }: CutFigures,
  shows: Shows,
  words: LayoutWords = layoutInEnglish,
): string => {
  if (colour !== undefined) return `${sizeWords(size, shows)}, ${words.colour(colour)}`;
  return cores > 1 ? `${sizeWords(size, shows)}, ${words.cores(cores)}` : words.wire(kind);
};

/** Terminal, sleeve and how they are made, in a few words. */
export function terminalWords(end: EndFigures, words: LayoutWords = layoutInEnglish): string {
  const { kind, barrel, stud, tab } = end;
  const { end: say } = words;
  const parts = [
    words.joint(kind),
    ...(barrel === undefined
      ? []
      : [barrel.kind === "lug" ? say.lug(barrel.sizeKey) : colourWords(end, barrel.colour, words)]),
    ...(stud === undefined ? [] : [stud.name]),
    ...(tab === undefined ? [] : [say.tab(tab)]),
    ...(end.unchecked.includes("stud") ? [say.noStud] : []),
    ...(end.unchecked.includes("tab") ? [say.noTab] : []),
  ];
  return parts.join(", ");
}

/** The colour of its barrel; of a step-down butt both, as it is bought. */
function colourWords({ problems }: EndFigures, own: string, words: LayoutWords): string {
  const both = problems.find((one) => one.problem === "needs-step-down");
  if (both === undefined) return words.colour(own);
  const [one = "", other = ""] = [...both.colours].sort().map(words.colour);
  return words.end.steps(one, other);
}

export function sleeveWords({ sleeve }: EndFigures, { end }: LayoutWords = layoutInEnglish): string {
  if (sleeve === undefined) return "";
  return end.sleeve(sleeve.lined, sleeve.suppliedMm, sleeve.recoveredMm, sleeve.lengthMm);
}
