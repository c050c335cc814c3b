import { readConductorSize } from "../../quantity/conductor-size.js";
import type { QuantityKind, QuantityResult } from "../../quantity/fault.js";
import { readAge, readClockTime, readDraw, readDuty, readVoltageRange } from "../../quantity/forms.js";
import { exampleOf } from "../../quantity/kinds.js";
import { readHours, readMoment, readShown } from "../../quantity/moments.js";
import { readQuantity } from "../../quantity/read.js";
import type { Dimension } from "../../quantity/units.js";
import { baseSign, writeQuantity } from "../../quantity/write.js";
import { map, refine } from "./combine.js";
import { patternOf } from "./patterns.js";
import { brokenLimit, type NumberLimits } from "./scalars.js";
import { type Shape, type Spot, scalarText, tell } from "./shape.js";

/** A quantity of one kind, read into its base unit. Limits are in the base unit too. */
export function quantity(dimension: Dimension, within: NumberLimits): Shape<number> {
  const signed = !((within.min ?? within.above ?? -1) >= 0);
  return {
    label: dimension,
    json: (definitions) =>
      definitions.use(signed ? `${dimension}, signed` : dimension, () => ({
        type: "string",
        pattern: patternOf(dimension, signed),
        examples: [exampleOf(dimension)],
      })),
    read: (spot) => {
      const value = written(spot, dimension, (text) => readQuantity(text, dimension))?.value;
      return value === undefined ? undefined : inside(spot, value, dimension, within);
    },
  };
}

function inside(spot: Spot, value: number, dimension: Dimension, within: NumberLimits): number | undefined {
  const broken = brokenLimit(value, within, (limit) => writeQuantity(limit, baseSign(dimension)));
  return broken === undefined ? value : tell(spot, { code: "out of limits", expected: broken });
}

/** Another written form, by its own reader. */
function form<T>(kind: QuantityKind, read: (text: string) => QuantityResult<T>): Shape<T> {
  return {
    label: kind,
    json: (definitions) =>
      definitions.use(kind, () => ({
        type: "string",
        pattern: patternOf(kind, false),
        examples: [exampleOf(kind)],
      })),
    read: (spot) => written(spot, kind, read),
  };
}

function written<T>(
  spot: Spot,
  kind: QuantityKind,
  read: (text: string) => QuantityResult<T>,
): T | undefined {
  const expected = { kind: "quantity", of: kind, example: exampleOf(kind) } as const;
  const text = scalarText(spot, "value", expected);
  if (text === undefined) return undefined;
  const result = read(text);
  if (result.ok) return result.value;
  const { code, foundKind, nearest } = result.fault;
  return tell(spot, {
    code: "quantity",
    fault: code,
    expected,
    ...(foundKind === undefined ? {} : { foundKind }),
    ...(nearest === undefined ? {} : { nearest }),
  });
}

export const conductorSize = form("conductor size", readConductorSize);
export const clockTime = form("clock time", readClockTime);
export const moment: Shape<string> = map(form("date", readMoment), ({ text }) => text);
export const hoursOfDay = form("hours of a day", readHours);
export const shown = form("reading", readShown);
export const duty = form("duty", readDuty);
export const age: Shape<number> = form("age", (text) => {
  const read = readAge(text);
  return read.ok && !(read.value >= 0 && read.value <= 100) ? readAge("") : read;
});
export const voltageRange = refine(form("voltage range", readVoltageRange), (range, say) => {
  if (range.lowV >= 0) return range;
  say({ code: "out of limits", expected: { kind: "at least", limit: "0 V" } });
  return undefined;
});
export const draw = form("draw", readDraw);

const maxV = 100; // far above any boat this tool is for; more is a slip or no low voltage any longer
export const volts = quantity("voltage", { above: 0, max: maxV });
export const amps = quantity("current", { above: 0, max: 100_000 });
export const watts = quantity("power", { above: 0, max: 1_000_000 });
export const metres = quantity("length", { min: 0, max: 1000 });
export const aboveZeroM = quantity("length", { above: 0, max: 1000 });
export const positiveMetres = quantity("length", { above: 0, max: 1000 });
/** A coordinate: aft of station 0, to starboard, under the base line. */
export const signedMetres = quantity("length", { min: -1000, max: 1000 });
export const kilograms = quantity("mass", { min: 0, max: 100_000 });
export const share = quantity("share", { min: 0, max: 1 });
export const positiveShare = quantity("share", { above: 0, max: 1 });
export const celsius = quantity("temperature", { min: -90, max: 300 });
export const hours = quantity("time", { min: 0, max: 10_000 });
export const positiveHours = quantity("time", { above: 0, max: 10_000 });
