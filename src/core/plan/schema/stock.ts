import type { WirePrice } from "../model/plan.js";
import { listOf, refine } from "./combine.js";
import { fields, optional, otherwise, required } from "./fields.js";
import { conductorSize, metres } from "./quantities.js";
import { number, whole } from "./scalars.js";
import type { Shape } from "./shape.js";

const cores = otherwise("cores", whole(1, 20), 1, "Conductors in one cable.");

export const stockWire = fields("wire on hand", {
  size: required("size", conductorSize, "Size."),
  cores,
  lengthM: required("length", metres, "Length on hand."),
});

export const stock = fields("what is on hand", {
  wire: otherwise("wire", listOf(stockWire), [], "Wire on hand, one line a spool or piece."),
});

const price = number({ min: 0, max: 1e6 });

export const priceKeys = fields("the price of wire", {
  size: required("size", conductorSize, "Size."),
  cores,
  perM: optional("per metre", price, "Price of a metre, in your own currency."),
  perFoot: optional("per foot", price, "Price of a foot, instead."),
});

const metresPerFoot = 0.3048;

export const wirePrice: Shape<WirePrice> = refine(priceKeys, ({ perM, perFoot, ...rest }, say): WirePrice => {
  const either = { kind: "keys", of: ["per metre", "per foot"] } as const;
  if (perM !== undefined && perFoot !== undefined)
    say({ code: "both keys", found: "per foot", expected: either }, "per foot");
  if (perM === undefined && perFoot === undefined) say({ code: "neither key", expected: either });
  return { ...rest, perM: perM ?? (perFoot ?? 0) / metresPerFoot };
});

export const prices = fields("prices", {
  wire: otherwise("wire", listOf(wirePrice), [], "Prices of wire. What has none is not priced."),
});
