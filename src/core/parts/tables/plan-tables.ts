import type { CompletePlan } from "../../plan/completed.js";
import type { StockPart, StockWire } from "../../plan/model/layout.js";
import type { Plan } from "../../plan/model/plan.js";
import { readConductorSize } from "../../quantity/conductor-size.js";
import { writeQuantity } from "../../quantity/write.js";
import type { PackPrice } from "../parts-list.js";
import type { PartsFigures } from "../plan-parts.js";
import type { LoadColumn } from "./load-table.js";
import type { StockRow } from "./stock-table.js";

/** What a stock table says is there, as a plan has it. */
export function stockOfRows(rows: readonly StockRow[]): Pick<Plan, "stockWire" | "stockParts"> {
  const stockWire: StockWire[] = [];
  const stockParts: StockPart[] = [];
  for (const row of rows) {
    const size = "size" in row ? readConductorSize(row.size) : undefined;
    if ("size" in row && size?.ok === true) {
      const { cores, colour, lengthM, count, kind } = row;
      const coloured = colour === undefined ? {} : { colour };
      stockWire.push({ size: size.value, cores, ...coloured, lengthM, count, kind });
    } else stockParts.push({ item: row.item, count: row.count });
  }
  return { stockWire, stockParts };
}

/** A plan's stock as rows of a table. `nameOf` tells wire by its size and cores, which is what it is matched by. */
export function stockRows(
  { stockWire, stockParts }: Pick<Plan, "stockWire" | "stockParts">,
  nameOf: (wire: StockWire) => string,
): StockRow[] {
  return [
    ...stockWire.map((wire) => {
      const { size, cores, colour, lengthM, count, kind } = wire;
      const coloured = colour === undefined ? {} : { colour };
      return { item: nameOf(wire), count, size: size.key, cores, ...coloured, lengthM, kind };
    }),
    ...stockParts,
  ];
}

/** Every part with the prices there are, those of boxes from the catalogue, and a line to fill in for each that has none. */
export function priceRows({ partOffers, catalogue }: Plan, { list }: PartsFigures): PackPrice[] {
  const named = new Set(partOffers.map(({ item }) => item));
  const open = list.lines.filter(({ item }) => !named.has(item));
  return [
    ...partOffers,
    ...open.map(({ item }): PackPrice => {
      const price = catalogue.find(({ name }) => name === item)?.price;
      return { item, pack: item, count: 1, ...(price === undefined ? {} : { price }) };
    }),
  ];
}

/** The gear as a load list, in the plan's own words. */
export function loadRows({ source, gear }: CompletePlan): Partial<Record<LoadColumn, string>>[] {
  const firstOf = new Map(gear.toReversed().map((piece) => [piece.group, piece]));
  return source.gear.map(({ name, count, draw, startA, weightKg }) => {
    const piece = firstOf.get(name);
    return {
      name,
      count: String(count),
      draws: drawText(draw),
      ...(piece === undefined
        ? {}
        : {
            role: piece.role,
            "behaves as": piece.behaviour,
            works: `${writeQuantity(piece.minV, "V")} to ${writeQuantity(piece.maxV, "V")}`,
            drop: writeQuantity(piece.maxDropShare, "%"),
            surroundings: piece.surroundings,
          }),
      ...(startA === undefined ? {} : { starts: writeQuantity(startA, "A") }),
      ...(weightKg === undefined ? {} : { weight: writeQuantity(weightKg, "kg") }),
    };
  });
}

function drawText(draw: Plan["gear"][number]["draw"]): string {
  if (draw.kind === "resistance") return writeQuantity(draw.resistanceOhm, "Ω");
  const at = draw.atV === undefined ? "" : ` at ${writeQuantity(draw.atV, "V")}`;
  return `${draw.kind === "power" ? writeQuantity(draw.powerW, "W") : writeQuantity(draw.currentA, "A")}${at}`;
}
