import { nearestOf } from "../../quantity/nearest.js";
import { limits } from "../source/limits.js";
import type { Form } from "../source/problem.js";
import { type Shape, scalarText, tell, wrongForm } from "./shape.js";

/** Free text on one or more lines. */
export const text: Shape<string> = {
  label: "text",
  json: () => ({ type: ["string", "number", "boolean"], maxLength: limits.maxTextLength }),
  read: (spot) => {
    const written = scalarText(spot, "text");
    if (written === undefined) return undefined;
    if (written.length <= limits.maxTextLength) return written;
    return tell(spot, {
      code: "out of limits",
      expected: { kind: "at most", limit: `${limits.maxTextLength} letters` },
    });
  },
};

/** One of a few words. */
export function choice<const W extends string>(words: readonly W[]): Shape<W> {
  return {
    label: words.map((word) => `\`${word}\``).join(", "),
    json: () => ({ enum: words }),
    read: (spot) => {
      const written = scalarText(spot, "text", { kind: "choice", of: words });
      if (written === undefined) return undefined;
      const meant = words.find((word) => word === written);
      if (meant !== undefined) return meant;
      const nearest = nearestOf(written, words);
      return tell(spot, {
        code: "not one of",
        expected: { kind: "choice", of: words },
        ...(nearest === undefined ? {} : { nearest }),
      });
    },
  };
}

const yes = /^(yes|on|y|true)$/i;
const no = /^(no|off|n|false)$/i;

/** `true` or `false`; other words for them are refused with the right one, since YAML 1.2 reads them as text. */
export const flag: Shape<boolean> = {
  label: "`true`, `false`",
  json: () => ({ type: "boolean" }),
  read: (spot) => {
    const written = scalarText(spot, "true or false");
    if (written === undefined) return undefined;
    if (spot.node.kind === "scalar" && typeof spot.node.value === "boolean") return spot.node.value;
    const nearest = yes.test(written) ? "true" : no.test(written) ? "false" : undefined;
    return tell(spot, {
      code: "wrong form",
      expected: { kind: "form", form: "true or false" },
      ...(nearest === undefined ? {} : { nearest }),
    });
  },
};

export interface NumberLimits {
  readonly min?: number;
  readonly above?: number;
  readonly max?: number;
}

/** A plain number without a unit: a count, an exponent, a price. */
export function number(within: NumberLimits, form: "number" | "whole number" = "number"): Shape<number> {
  return {
    label: form,
    json: () => ({
      type: form === "whole number" ? "integer" : "number",
      ...(within.min === undefined ? {} : { minimum: within.min }),
      ...(within.above === undefined ? {} : { exclusiveMinimum: within.above }),
      ...(within.max === undefined ? {} : { maximum: within.max }),
    }),
    read: (spot) => {
      if (scalarText(spot, form) === undefined) return undefined;
      const value = spot.node.kind === "scalar" ? spot.node.value : null;
      const plain = typeof value === "bigint" ? Number(value) : value;
      if (typeof plain !== "number" || !Number.isFinite(plain)) return numberNeeded(spot, form);
      if (form === "whole number" && !Number.isSafeInteger(plain)) return numberNeeded(spot, form);
      const broken = brokenLimit(plain, within, String);
      return broken === undefined ? plain : tell(spot, { code: "out of limits", expected: broken });
    },
  };
}

export function whole(min: number, max: number): Shape<number> {
  return number({ min, max }, "whole number");
}

function numberNeeded(spot: Parameters<typeof tell>[0], form: Form): undefined {
  if (spot.node.kind !== "scalar") return wrongForm(spot, form);
  const nearest = /^[-+]?\d+(\.\d+)?/.exec(spot.node.text)?.[0];
  return tell(spot, {
    code: "number needed",
    expected: { kind: "form", form },
    ...(nearest === undefined || nearest === spot.node.text ? {} : { nearest }),
  });
}

/** The limit a value breaks, as an expectation; NaN breaks any. */
export function brokenLimit(
  value: number,
  within: NumberLimits,
  write: (limit: number) => string,
): { kind: "at least" | "above" | "at most"; limit: string } | undefined {
  if (within.min !== undefined && !(value >= within.min))
    return { kind: "at least", limit: write(within.min) };
  if (within.above !== undefined && !(value > within.above))
    return { kind: "above", limit: write(within.above) };
  if (within.max !== undefined && !(value <= within.max))
    return { kind: "at most", limit: write(within.max) };
  return undefined;
}
