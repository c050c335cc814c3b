import type { BoughtWire } from "../plan/model/layout.js";
import type { Plan } from "../plan/model/plan.js";
import type { PartKind, PartLine } from "./parts-list.js";
import type { CutFigures } from "./plan-cuts.js";

/** One thing that was bought, held against the list. Pieces; of wire millimetres. */
export interface BoughtThing {
  readonly kind: PartKind;
  readonly item: string;
  readonly bought: number;
  /** Does the list ask for any of it to be bought? */
  readonly wanted: boolean;
  /** Still to buy besides. */
  readonly more: number;
  /** Beyond what the list asks for, its packs counted whole. */
  readonly over: number;
}

export interface BoughtWireThing extends BoughtThing {
  /** The lengths of which `more` is made. */
  readonly moreLengthsMm: readonly number[];
}

export interface BoughtFigures {
  readonly wire: readonly BoughtWireThing[];
  readonly parts: readonly BoughtThing[];
}

/** Pieces in the packs that the list says to buy; what no price list has is bought by the piece. */
export function piecesBought({ toBuy, packs, leftOver, needed, spares, fromStock }: PartLine): number {
  return toBuy === 0 ? 0 : packs.length === 0 ? toBuy : leftOver + needed + spares - fromStock;
}

/** Parts that were bought against those to buy. */
export function partsBought(
  { boughtParts }: Pick<Plan, "boughtParts">,
  { lines }: { readonly lines: readonly PartLine[] },
): BoughtThing[] {
  const byItem = new Map(lines.map((line) => [line.item, line]));
  return boughtParts.map(({ item, count }): BoughtThing => {
    const line = byItem.get(item);
    const toBuy = line?.toBuy ?? 0;
    return {
      kind: line?.kind ?? "other",
      item,
      bought: count,
      wanted: toBuy > 0,
      more: Math.max(0, toBuy - count),
      over: Math.max(0, count - (line === undefined ? 0 : piecesBought(line))),
    };
  });
}

/** The kind of wire of the list that a length was bought for; of what the list has not, what it would be called. */
export function boughtItem({ size, cores, colour }: BoughtWire, cuts: readonly CutFigures[]): string {
  const same = cuts.find(
    (kind) => kind.size.key === size.key && kind.cores === cores && kind.colour === colour,
  );
  if (same) return same.kind;
  if (colour !== undefined) return `${size.key}, ${colour}`;
  return cores === 1 ? `${size.key}, single` : `${size.key}, ${cores} cores`;
}

/** Lengths of a kind of wire that the list says to buy. */
export function newLengthsMm({ plan }: CutFigures): number[] {
  return (plan?.lengths ?? []).flatMap(({ source, lengthMm }) =>
    source === "new" || source === "by length" ? [lengthMm] : [],
  );
}
