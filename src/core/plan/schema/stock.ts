import { currencyDecimals } from "../../quantity/money.js";
import type { PartOffer, StockPart, WireOffer } from "../model/layout.js";
import type { WirePrice } from "../model/plan.js";
import { listOf, map, named, refine } from "./combine.js";
import { fields, optional, otherwise, required } from "./fields.js";
import { type Amount, amount, currency, moneyOf } from "./money.js";
import { aboveZeroM, conductorSize, metres } from "./quantities.js";
import { choice, flag, text, whole } from "./scalars.js";
import type { Shape } from "./shape.js";

const cores = otherwise("cores", whole(1, 20), 1, "Conductors in one cable.");
const colour = optional("colour", text, "Colour of a single conductor.");
/** A count below zero reads well, so that it can be named as the mistake it is. */
const onHand = whole(-1_000_000, 1_000_000);

export const stockWire = fields("wire on hand", {
  size: required("size", conductorSize, "Size."),
  cores,
  colour,
  lengthM: required("length", metres, "Length on hand."),
  kind: otherwise(
    "kind",
    choice(["offcut", "spool"]),
    "offcut" as const,
    "`offcut`: to be used up first. `spool`: better left whole.",
  ),
  count: otherwise("count", onHand, 1, "How many of that length."),
  fresh: optional("fresh", flag, "Just bought: its end is bright, and none of it is cut back first."),
});

/** Items by the names they are bought under, each with a count. */
const countedParts = (count: Shape<number>): Shape<readonly StockPart[]> =>
  map(named({ ...map(count, (read) => ({ count: read })), label: "a count" }), (list) =>
    list.map(({ name, count: read }) => ({ item: name, count: read })),
  );

export const stock = fields("what is on hand", {
  wire: otherwise("wire", listOf(stockWire), [], "Wire on hand, one line a spool or piece."),
  parts: otherwise("parts", countedParts(onHand), [], "Everything else on hand: `M12 gland: 4`."),
});

const timesBought = whole(1, 1_000_000);

export const boughtWire = fields("wire that was bought", {
  size: required("size", conductorSize, "Size."),
  cores,
  colour,
  lengthM: required("length", aboveZeroM, "Length bought, in one piece."),
  count: otherwise("count", timesBought, 1, "How many of that length."),
});

export const bought = fields("what was bought", {
  wire: otherwise("wire", listOf(boughtWire), [], "Wire that was bought, one line a length."),
  parts: otherwise(
    "parts",
    countedParts(timesBought),
    [],
    "Everything else that was bought, in pieces, by the names the parts list has: `M12 gland: 10`.",
  ),
});

export const priceKeys = fields("the price of wire", {
  size: required("size", conductorSize, "Size."),
  cores,
  colour,
  perMetre: optional("per metre", amount, "Price of a metre cut off."),
  perFoot: optional("per foot", amount, "Price of a foot, instead."),
  spoolM: optional("spool", aboveZeroM, "Sold by the spool of this length, instead."),
  price: optional("price", amount, "Price of the spool."),
  maxM: optional("longest", aboveZeroM, "Longest length cut off in one piece."),
});

type WrittenOffer = { readonly size: WireOffer["size"]; readonly cores: number; readonly colour?: string } & (
  | { readonly sold: "spool"; readonly lengthM: number; readonly price?: Amount }
  | { readonly sold: "by length"; readonly stepM: number; readonly price: Amount; readonly maxM?: number }
);

const metresPerFoot = 0.3048;

const wirePrice: Shape<WrittenOffer> = refine(priceKeys, (given, say): WrittenOffer => {
  const { size, cores, colour, perMetre, perFoot, spoolM, price, maxM } = given;
  const either = { kind: "keys", of: ["per metre", "per foot", "spool"] } as const;
  const [first, second] = [
    perMetre === undefined ? [] : ["per metre"],
    perFoot === undefined ? [] : ["per foot"],
    spoolM === undefined ? [] : ["spool"],
  ].flat();
  if (second !== undefined) say({ code: "both keys", found: second, expected: either }, second);
  if (first === undefined) say({ code: "neither key", expected: either });
  const wire = { size, cores, ...(colour === undefined ? {} : { colour }) };
  if (spoolM !== undefined)
    return { ...wire, sold: "spool", lengthM: spoolM, ...(price === undefined ? {} : { price }) };
  const byStep = {
    stepM: perMetre === undefined ? metresPerFoot : 1,
    price: perMetre ?? perFoot ?? { number: 0 },
  };
  return { ...wire, sold: "by length", ...byStep, ...(maxM === undefined ? {} : { maxM }) };
});

export const partPrice = fields("the price of a part", {
  item: required("item", text, "Name it is bought under, as the parts list has it."),
  pack: optional("pack", text, "What the pack is called."),
  count: otherwise("count", whole(1, 1_000_000), 1, "How many are in it."),
  price: optional("price", amount, "Price of the pack. Left out: sold so, price not known."),
});

export const priceSections = fields("prices", {
  currency: optional("currency", currency, "Currency of prices written as bare numbers."),
  wire: otherwise("wire", listOf(wirePrice), [], "Prices of wire. What has none is not priced."),
  parts: otherwise("parts", listOf(partPrice), [], "Prices of everything else, a line a pack."),
});

export interface Prices {
  readonly currency?: string;
  readonly wire: readonly WireOffer[];
  readonly parts: readonly PartOffer[];
}

export const prices: Shape<Prices> = map(priceSections, ({ currency: usual, wire, parts }): Prices => {
  const money = (written: Amount) => moneyOf(written, usual);
  return {
    ...(usual === undefined ? {} : { currency: usual }),
    wire: wire.map((offer): WireOffer => {
      if (offer.sold === "by length") return { ...offer, price: money(offer.price) };
      const { price, ...rest } = offer;
      return price === undefined ? rest : { ...rest, price: money(price) };
    }),
    parts: parts.map(({ item, pack, count, price }): PartOffer => {
      const sold = { item, pack: pack ?? (count === 1 ? item : `${item} × ${count}`), count };
      return price === undefined ? sold : { ...sold, price: money(price) };
    }),
  };
});

/** What a metre costs, for choosing sizes: the cheapest offer of each wire, all in the currency that comes first. */
export function pricesPerMetre(offers: readonly WireOffer[]): WirePrice[] {
  const [first] = offers.flatMap(({ price }) => price ?? []);
  const least = new Map<string, WirePrice>();
  for (const { size, cores, price, ...sold } of offers) {
    if (price === undefined || price.currency !== first?.currency) continue;
    const major = price.minor / 10 ** currencyDecimals(price.currency);
    const perM = major / (sold.sold === "spool" ? sold.lengthM : sold.stepM);
    const key = `${size.key} ${cores}`;
    if (perM < (least.get(key)?.perM ?? Number.POSITIVE_INFINITY)) least.set(key, { size, cores, perM });
  }
  return [...least.values()];
}
