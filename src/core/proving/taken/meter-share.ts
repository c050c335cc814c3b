import { readingLimits } from "../../reference/meters.js";
import type { Bench } from "../bench-network.js";
import { noChange } from "../change.js";
import { type Reading, ReadingModel } from "../reading-model.js";
import { spreadOf } from "../spread.js";
import { isUsable, type JudgedReading } from "./judge.js";

/**
 * By what share every voltage between the poles is off, where they all are, alike, and more than a sound boat accounts for: a meter that errs
 * does that, and so does the battery. Undefined where fewer than two were read, or they are not off alike.
 */
export function meterShare(bench: Bench, judged: readonly JudgedReading[]): number | undefined {
  const volts = judged.flatMap((one) =>
    one.reading?.probe.kind === "voltage" && isUsable(one) ? [one.reading] : [],
  );
  if (volts.length === 0) return undefined;
  const shares = sharesOf(bench, volts);
  const [least, most] = [Math.min(...shares), Math.max(...shares)];
  const middle = (least + most) / 2;
  const { alikeShare, offShare } = readingLimits;
  return shares.length < 2 || most - least > alikeShare || Math.abs(middle) < offShare ? undefined : middle;
}

/** Of each full voltage, how far it is off what the planned boat shows, whatever was read of its battery. */
function sharesOf(bench: Bench, readings: readonly Reading[]): number[] {
  const { shown } = new ReadingModel(bench, spreadOf(bench), readings, []).shown(noChange);
  return readings.flatMap(({ value }, i) => {
    const v = shown[i] ?? 0;
    return Math.abs(v) < readingLimits.fullFromV ? [] : [value / v - 1];
  });
}
