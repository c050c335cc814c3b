import type { ConductorSize } from "../core/plan/model/common.js";
import type { Shows } from "../core/plan/model/plan.js";
import { writeFeetInches, writeHours } from "../core/quantity/write.js";

/** Keeps a number and its unit on one line. */
const tie = "\u00a0";
/** Stands where there is no figure. */
export const noFigure = "–";

/** A number with so many decimals, a true minus sign, and – where it is none. */
export function decimals(value: number | undefined, places: number): string {
  if (value === undefined || !Number.isFinite(value)) return noFigure;
  const written = value.toFixed(places);
  return Number(written) === 0 ? written.replace("-", "") : written.replace("-", "−");
}

/** About three digits: 0.25, 2.41, 24.1, 241. */
export function threeDigits(value: number | undefined): string {
  if (value === undefined || !Number.isFinite(value)) return noFigure;
  const size = Math.abs(value);
  return decimals(value, size < 9.995 ? 2 : size < 99.95 ? 1 : 0);
}

const withUnit = (written: string, unit: string) =>
  written === noFigure ? written : `${written}${tie}${unit}`;

export const volts = (value: number | undefined) => withUnit(decimals(value, 2), "V");
export const amps = (value: number | undefined) => withUnit(threeDigits(value), "A");
export const watts = (value: number | undefined) => withUnit(threeDigits(value), "W");
export const percent = (share: number | undefined, places = 1) =>
  withUnit(decimals(share === undefined ? undefined : share * 100, places), "%");

/** Decimals, at least so many, that tell a figure from its limit; as many as asked for where the two are one. */
export function tellingPlaces(figure: number, limit: number, least: number): number {
  const enough = [0, 1, 2, 3].find(
    (more) => decimals(figure, least + more) !== decimals(limit, least + more),
  );
  return least + (enough ?? 0);
}

/** A share beside its limit: 3.04 % where 3 % is the most, else 3.0 %. */
export const percentAgainst = (share: number, limitShare: number) =>
  percent(share, tellingPlaces(share * 100, limitShare * 100, 1));

/** A share as somebody has set it: 3 %, 2.5 %. */
export const shareSet = (share: number | undefined) =>
  share === undefined || !Number.isFinite(share) ? noFigure : marked(Number((share * 100).toFixed(2)), "%");

/** A rating or a capacity as it is marked: 5 A, 7.5 A, 30 Ah. */
export function marked(value: number, unit: string): string {
  return Number.isFinite(value) ? `${Number(value.toPrecision(4))}${tie}${unit}` : noFigure;
}

/** Hours to the minute, `4 h 10 min`. */
export const hours = (value: number | undefined) =>
  value === undefined || !Number.isFinite(value) ? noFigure : writeHours(value).replaceAll(" ", tie);

/** Hours that are only known roughly, never too many: down to 10 min, from 10 h up to the hour. */
export function roughHours(value: number | undefined): string {
  if (value === undefined || !Number.isFinite(value)) return noFigure;
  const perHour = value < 10 ? 6 : 1;
  return hours(Math.floor(value * perHour + 1e-9) / perHour);
}

/** A length as the owner's tape shows it: to 1/16 in, or to 1 mm (metres from 10 m up). */
export function lengthWords(lengthM: number, shows: Shows): string {
  if (!Number.isFinite(lengthM)) return noFigure;
  if (shows.lengths === "inches") return writeFeetInches(lengthM, 16).replaceAll(" ", tie).replace("-", "−");
  return lengthM >= 10 ? `${decimals(lengthM, 2)}${tie}m` : `${decimals(lengthM * 1000, 0)}${tie}mm`;
}

/** A height known no finer than the weights are placed, as of the metacentre: to the inch, or to 1 cm. */
export const metacentreWords = (heightM: number, shows: Shows): string =>
  shows.lengths === "inches" && Number.isFinite(heightM)
    ? writeFeetInches(heightM, 1).replaceAll(" ", tie).replace("-", "−")
    : withUnit(decimals(heightM, 2), "m");

/** A size of the boat itself: feet and inches, or metres. */
export const boatLengthWords = (lengthM: number, shows: Shows): string =>
  shows.lengths === "inches" ? lengthWords(lengthM, shows) : `${decimals(lengthM, 2)}${tie}m`;

/** A conductor's size by its trade name, with its area where the owner reads the other series. */
export function sizeWords(size: ConductorSize, shows: Shows): string {
  const name = size.key.replaceAll(" ", tie);
  return shows.conductors === "metric" && size.series === "awg"
    ? `${name} (${threeDigits(size.areaMm2)}${tie}mm²)`
    : name;
}

/** 13.75 h after midnight is `13:45`. */
export function clock(hoursAfterMidnight: number): string {
  const minutes = ((Math.round(hoursAfterMidnight * 60) % 1440) + 1440) % 1440;
  return `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
}

/** `1st`, `2nd`, `3rd`, `11th`. */
export function ordinal(count: number): string {
  const teen = count % 100 > 10 && count % 100 < 14;
  return `${count}${teen ? "th" : (["th", "st", "nd", "rd"][count % 10] ?? "th")}`;
}

/** `1 fuse`, `3 fuses`; nouns that take more than an s give their plural. */
export const counted = (count: number, one: string, many = `${one}s`) =>
  `${count}${tie}${count === 1 ? one : many}`;
