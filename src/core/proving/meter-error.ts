import type { MeterError } from "../plan/model/work.js";
import { type MeterRange, pocketMeter, readingLimits } from "../reference/meters.js";
import type { ProbeKind } from "./probe.js";

/** Beyond this an ohmmeter shows nothing [Ω]. */
export const mostOhm = 1e8;
/** How surely a marking is read, as a share: next to it every other rating is far away. */
const markingShare = 0.01;

/**
 * The scale readings of a kind are compared on. Ohms: z = ln(1 + R / 1 Ω), since what is broken reads anything; markings: ln A, as ratings
 * are graded.
 */
export function toScale(kind: ProbeKind, value: number): number {
  if (kind === "ohm") return Math.log1p(Math.min(mostOhm, Math.max(0, value)));
  return kind === "marking" ? Math.log(value) : value;
}

/** Back to V, A or Ω. */
export function fromScale(kind: ProbeKind, value: number): number {
  if (kind === "ohm") return Math.expm1(value);
  return kind === "marking" ? Math.exp(value) : value;
}

/** How far V, A or Ω go for one on the scale, at a value. */
export function unitsPerScale(kind: ProbeKind, value: number): number {
  if (kind === "ohm") return 1 + Math.abs(value);
  return kind === "marking" ? Math.abs(value) : 1;
}

/** The finest range of a plain meter that holds a value; undefined: none does. */
export function rangeFor(kind: MeterRange["function"], value: number): MeterRange | undefined {
  return pocketMeter.ranges.find((range) => range.function === kind && Math.abs(value) <= range.max);
}

/** Standard deviation of what is read, in its own unit [V, A or Ω]. Without a stated error that of a plain pocket meter. */
export const sigmaOf = (kind: ProbeKind, value: number, meter?: MeterError): number =>
  sigmaOnScale(kind, value, meter) * unitsPerScale(kind, value);

/** The same on the scale readings are compared on; ohms with the meter's own leads in it. */
export function sigmaOnScale(kind: ProbeKind, value: number, meter?: MeterError): number {
  if (kind === "marking") return markingShare;
  if (kind !== "ohm") return meterSigma(kind, value, meter);
  const { leadOhm } = pocketMeter;
  const shown = Math.min(Math.abs(value), mostOhm);
  const leads = readingLimits.sigmaPerLimit * (leadOhm.most - leadOhm.usual);
  return Math.hypot(meterSigma("ohm", shown, meter), leads) / (1 + shown) + 0.01;
}

function meterSigma(kind: Exclude<ProbeKind, "marking">, value: number, meter?: MeterError): number {
  const shown = Math.min(Math.abs(value), mostOhm);
  const { sigmaPerLimit } = readingLimits;
  if (meter) return Math.max(1e-9, sigmaPerLimit * (meter.share * shown + meter.fixed));
  const range = rangeFor(kind, shown);
  return sigmaPerLimit * (range ? range.errorShare * shown + range.digits * range.digit : 0.02 * shown);
}
