import type { MeterError } from "../plan/model/work.js";
import { type MeterRange, pocketMeter, readingLimits } from "../reference/meters.js";
import { mostOhm } from "./state-group.js";

/** The finest range of a plain meter that holds a value; undefined: none does. */
export function rangeFor(kind: MeterRange["function"], value: number): MeterRange | undefined {
  return pocketMeter.ranges.find((range) => range.function === kind && Math.abs(value) <= range.max);
}

/** Standard deviation of what a meter shows, in the reading's unit. Without a stated error that of a plain pocket meter. */
export function meterSigma(kind: "voltage" | "current" | "ohm", value: number, meter?: MeterError): number {
  const shown = Math.min(Math.abs(value), mostOhm);
  const { sigmaPerLimit } = readingLimits;
  if (meter) return Math.max(1e-9, sigmaPerLimit * (meter.share * shown + meter.fixed));
  const range = rangeFor(kind, shown);
  return sigmaPerLimit * (range ? range.errorShare * shown + range.digits * range.digit : 0.02 * shown);
}

/** The same for ohms on the scale ln(1 + R / 1 Ω), with the meter's own leads in it. */
export function ohmSigma(value: number, meter?: MeterError): number {
  const { leadOhm } = pocketMeter;
  const shown = Math.min(Math.abs(value), mostOhm);
  const leads = readingLimits.sigmaPerLimit * (leadOhm.most - leadOhm.usual);
  return Math.hypot(meterSigma("ohm", shown, meter), leads) / (1 + shown) + 0.01;
}
