import type { BoughtWire } from "../plan/model/layout.js";
import type { Plan } from "../plan/model/plan.js";
import {
  type BoughtFigures,
  type BoughtWireThing,
  boughtItem,
  newLengthsMm,
  partsBought,
} from "./bought-lines.js";
import type { PartsList } from "./parts-list.js";
import { type CutFigures, planCuts } from "./plan-cuts.js";

/** What was bought against what is to buy: the list may have changed since. */
export function boughtFigures(plan: Plan, cuts: readonly CutFigures[], list: PartsList): BoughtFigures {
  return { wire: wireBought(plan, cuts), parts: partsBought(plan, list) };
}

function wireBought(plan: Plan, cuts: readonly CutFigures[]): BoughtWireThing[] {
  const items = new Map<string, BoughtWire[]>();
  for (const line of plan.boughtWire) {
    const item = boughtItem(line, cuts);
    items.set(item, [...(items.get(item) ?? []), line]);
  }
  return [...items].map(([item, lines]) => {
    const cut = cuts.find(({ kind }) => kind === item);
    const asked = cut === undefined ? [] : newLengthsMm(cut);
    // no more of them than are asked for: a count may be of any size
    const had = lines.flatMap(({ lengthM, count }) =>
      Array.from({ length: Math.min(count, asked.length) }, () => lengthM * 1000),
    );
    const moreLengthsMm = coverAll(had, asked) ? [] : stillToBuyMm(plan, cuts, item, lines);
    const bought = sum(lines.map(({ lengthM, count }) => lengthM * 1000 * count));
    const more = sum(moreLengthsMm);
    return {
      kind: "conductor",
      item,
      bought,
      wanted: asked.length > 0,
      more,
      over: more > 0 ? 0 : Math.max(0, bought - sum(asked)),
      moreLengthsMm,
    };
  });
}

const sum = (lengths: readonly number[]): number => lengths.reduce((all, one) => all + one, 0);

/** A length goes for one that is a millimetre shorter: it may have been written in feet. */
const writtenMm = 1;

/** Is there a length of its own, long enough, for each that is asked for? */
function coverAll(had: readonly number[], asked: readonly number[]): boolean {
  const longest = had.toSorted((a, b) => b - a);
  return asked
    .toSorted((a, b) => b - a)
    .every((lengthMm, index) => (longest[index] ?? 0) >= lengthMm - writtenMm);
}

/** What the cut list would still buy of a kind if what was bought of it lay on the shelf. */
function stillToBuyMm(
  plan: Plan,
  cuts: readonly CutFigures[],
  item: string,
  lines: readonly BoughtWire[],
): number[] {
  const stockWire = [
    ...plan.stockWire,
    ...lines.map((line) => ({ ...line, kind: "spool" as const, fresh: true })),
  ];
  const cut = planCuts({ ...plan, stockWire }, cuts).kinds.find(({ kind }) => kind === item);
  return cut === undefined ? [] : newLengthsMm(cut);
}
