import { currencyDecimals, type Money, noCurrency, readMoney } from "../../quantity/money.js";
import { brokenLimit } from "./scalars.js";
import { type Shape, scalarText, tell } from "./shape.js";

/** An amount as written: with its currency, or a bare number in the currency the prices name. */
export type Amount = { readonly money: Money } | { readonly number: number };

const mostMajor = 1e6;

/** `12.50 EUR`, `EUR 12.50`, or a number. */
export const amount: Shape<Amount> = {
  label: "price",
  json: (definitions) =>
    definitions.use("price", () => ({
      anyOf: [
        { type: "number", minimum: 0, maximum: mostMajor },
        {
          type: "string",
          pattern: "^([A-Z]{3} )?\\d{1,9}([.,]\\d+)?( [A-Z]{3})?$",
          examples: ["12.50 EUR"],
        },
      ],
    })),
  read: (spot) => {
    const { node } = spot;
    const written = scalarText(spot, "price");
    if (written === undefined) return undefined;
    const value = node.kind === "scalar" && typeof node.value === "number" ? node.value : Number.NaN;
    if (!Number.isNaN(value)) {
      const broken = brokenLimit(value, { min: 0, max: mostMajor }, String);
      return broken === undefined
        ? { number: value }
        : tell(spot, { code: "out of limits", expected: broken });
    }
    const money = readMoney(written);
    return "problem" in money
      ? tell(spot, { code: "wrong form", expected: { kind: "form", form: "price" } })
      : { money };
  },
};

/** Three capital letters. */
export const currency: Shape<string> = {
  label: "currency",
  json: () => ({ type: "string", pattern: "^[A-Z]{3}$", examples: ["EUR"] }),
  read: (spot) => {
    const written = scalarText(spot, "text");
    if (written === undefined) return undefined;
    return /^[A-Z]{3}$/.test(written)
      ? written
      : tell(spot, { code: "wrong form", expected: { kind: "form", form: "currency" } });
  },
};

/** Whole minor units of the currency the amount is in; a bare number is rounded to them. */
export function moneyOf(written: Amount, usual: string | undefined): Money {
  if ("money" in written) return written.money;
  const code = usual ?? noCurrency;
  return { currency: code, minor: Math.round(written.number * 10 ** currencyDecimals(code)) };
}
