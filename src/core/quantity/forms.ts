import { good, type QuantityResult } from "./fault.js";
import { bad } from "./kinds.js";
import { readQuantity, withPoints } from "./read.js";
import { plainSigns } from "./signs.js";
import { type Dimension, kinds, unitWritten } from "./units.js";

/** What gear takes: one of the three, and the voltage the figure was given at. */
export type Draw =
  | { readonly kind: "power"; readonly powerW: number; readonly atV?: number }
  | { readonly kind: "current"; readonly currentA: number; readonly atV?: number }
  | { readonly kind: "resistance"; readonly resistanceOhm: number };

/** Reads what gear takes: `0.9 W`, `400 mA`, `2.8 A at 12 V`, `4 Ω`. */
export function readDraw(text: string): QuantityResult<Draw> {
  const [amount = "", at, ...rest] = plainSigns(text.slice(0, 160)).split(/\s+(?:at|@)\s+/i);
  if (rest.length > 0) return bad("no number", text, "draw");
  const pointed = withPoints(amount);
  if (pointed !== undefined) return bad("comma", text, "draw", { nearest: pointed });
  const dimension = dimensionOf(amount);
  if (dimension !== "power" && dimension !== "current" && dimension !== "resistance")
    return dimension === undefined
      ? bad(/^[\d./ ]+$/.test(amount) ? "no unit" : "unknown unit", text, "draw")
      : bad("wrong kind", text, "draw", { foundKind: dimension });
  const read = readQuantity(amount, dimension);
  if (!read.ok) return { ok: false, fault: { ...read.fault, found: text } };
  const { value } = read.value;
  if (dimension === "resistance") {
    if (at !== undefined) return bad("no number", text, "draw", { nearest: amount });
    return good({ kind: "resistance", resistanceOhm: value });
  }
  const given = at === undefined ? undefined : readQuantity(at, "voltage");
  if (given !== undefined && !given.ok) return { ok: false, fault: { ...given.fault, found: text } };
  const atV = given === undefined ? {} : { atV: given.value.value };
  return good(
    dimension === "power"
      ? { kind: "power", powerW: value, ...atV }
      : { kind: "current", currentA: value, ...atV },
  );
}

export interface VoltageRange {
  readonly lowV: number;
  readonly highV: number;
}

/** Reads `9 V to 16 V`, `9 to 16 V`, `9 – 16 V`. The low end comes first. */
export function readVoltageRange(text: string): QuantityResult<VoltageRange> {
  const kind = "voltage range";
  const ends = plainSigns(text.slice(0, 160)).split(/\s+to\s+|\s*[–…]\s*|\s*\.\.\.?\s*/i);
  const [low = "", high] = ends;
  if (high === undefined || ends.length > 2) {
    const dimension = dimensionOf(low);
    if (dimension !== undefined && dimension !== "voltage")
      return bad("wrong kind", text, kind, { foundKind: dimension });
    return bad("no number", text, kind);
  }
  const highRead = readQuantity(high, "voltage");
  if (!highRead.ok)
    return { ok: false, fault: { ...highRead.fault, expected: kind, found: text, example: "9 V to 16 V" } };
  const lowRead = readQuantity(/^[\d.]+$/.test(low) ? `${low} V` : low, "voltage");
  if (!lowRead.ok)
    return { ok: false, fault: { ...lowRead.fault, expected: kind, found: text, example: "9 V to 16 V" } };
  const range = { lowV: lowRead.value.value, highV: highRead.value.value };
  return range.lowV <= range.highV ? good(range) : bad("order", text, kind, { nearest: `${high} to ${low}` });
}

/** Reads how often something runs: `2 min each hour`, `10 s every 5 min`. @returns the share of the time, 0…1. */
export function readDuty(text: string): QuantityResult<number> {
  const [run = "", period, ...rest] = plainSigns(text.slice(0, 160)).split(
    /\s+(?:each|every|per|in each)\s+/i,
  );
  if (period === undefined || rest.length > 0) return bad("no number", text, "duty");
  const runs = readQuantity(run, "time");
  if (!runs.ok) return { ok: false, fault: { ...runs.fault, found: text } };
  const every = readQuantity(/^\d/.test(period) ? period : `1 ${period}`, "time");
  if (!every.ok) return { ok: false, fault: { ...every.fault, found: text } };
  if (!(every.value.value > 0) || !(runs.value.value >= 0)) return bad("no number", text, "duty");
  if (runs.value.value > every.value.value) return bad("order", text, "duty");
  return good(runs.value.value / every.value.value);
}

/** Reads a time of day, `04:30` or `4:30`. @returns hours after midnight. */
export function readClockTime(text: string): QuantityResult<number> {
  const match = /^(\d{1,2}):(\d{2})$/.exec(text.trim().slice(0, 16));
  if (match === null) return bad("no number", text, "clock time");
  const minutes = Number(match[1]) * 60 + Number(match[2]);
  if (Number(match[2]) > 59 || minutes >= 24 * 60) return bad("absurd", text, "clock time");
  return good(minutes / 60);
}

/** Reads an age, `2 years`, `18 months`. @returns years. */
export function readAge(text: string): QuantityResult<number> {
  const read = readQuantity(text, "time");
  if (read.ok) return good(read.value.value / hoursPerYear);
  return { ok: false, fault: { ...read.fault, expected: "age", example: "2 years" } };
}
const hoursPerYear = 8766;

function dimensionOf(text: string): Dimension | undefined {
  const sign = /[^-+\d\s./].*$/.exec(text)?.[0].trim();
  const found = sign === undefined ? undefined : unitWritten(sign);
  return found === undefined || !(found.dimension in kinds) ? undefined : found.dimension;
}
