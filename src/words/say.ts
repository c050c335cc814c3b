import type { Finding } from "../core/findings/finding.js";
import type { Shows } from "../core/plan/model/plan.js";
import type { FindingWords } from "./finding-words.js";
import { listed } from "./listed.js";
import {
  amps,
  decimals,
  hours,
  lengthWords,
  noFigure,
  tellingPlaces,
  threeDigits,
  volts,
} from "./numbers.js";
import { pathWords } from "./path-words.js";
import type { Say } from "./rule-words.js";

export function sayOf(finding: Finding, shows: Shows, words: FindingWords): Say {
  const { at, with: others = [], unit, figure, limit, terms = {}, working = [] } = finding;
  const place = at === "plan" ? words.plan : pathWords(at, words.path);
  const beside = others.map((one) => pathWords(one, words.path));
  const inWords = (value: number | undefined, inUnit: string | undefined) =>
    quantityIn(value, inUnit, shows, words);
  const step = (symbol: string) => {
    const found = working.find((one) => one.symbol === symbol);
    if (found === undefined) return noFigure;
    return typeof found.value === "string" ? found.value : inWords(found.value, found.unit);
  };
  return {
    figure: apart(figure, limit, unit, shows) ?? inWords(figure, unit),
    limit: inWords(limit, unit),
    at: place,
    others: listed(beside, words.joining),
    all: listed([place, ...beside], words.joining),
    many: others.length > 0,
    when: terms.corner === undefined ? "" : words.corner(terms.corner),
    term: (name) => terms[name] ?? noFigure,
    step,
  };
}

/** A figure that its usual digits would show as its limit, with as many as tell the two apart: 3.04 % where 3.0 % is the most. */
function apart(
  figure: number | undefined,
  limit: number | undefined,
  unit: string | undefined,
  shows: Shows,
): string | undefined {
  if (figure === undefined || limit === undefined || figure === limit || unit === undefined) return undefined;
  if (wholeWords.has(unit) || quantity(figure, unit, shows) !== quantity(limit, unit, shows))
    return undefined;
  if (unit === "m")
    return `${decimals(figure * 1000, tellingPlaces(figure * 1000, limit * 1000, 0))}\u00a0mm`;
  return `${decimals(figure, tellingPlaces(figure, limit, 1))}\u00a0${unit}`;
}

/** Units that are told in words of their own, and no finer. */
const wholeWords: ReadonlySet<string> = new Set(["h", "s", "days", "years"]);

/** The same, with a unit that is a word in the reader's language. */
export const quantityIn = (
  value: number | undefined,
  unit: string | undefined,
  shows: Shows,
  { units }: Pick<FindingWords, "units">,
): string =>
  unit === "years" || unit === "days"
    ? quantity(value, unit, shows).replace(unit, units[unit])
    : quantity(value, unit, shows);

/** A value in a finding's unit as the owner reads it. */
export function quantity(value: number | undefined, unit: string | undefined, shows: Shows): string {
  if (value === undefined || !Number.isFinite(value)) return noFigure;
  switch (unit) {
    case "V":
      return volts(value);
    case "A":
      return amps(value);
    case "m":
      return lengthWords(value, shows);
    case "s":
      return value < 0.1 ? `${threeDigits(value * 1000)}\u00a0ms` : `${threeDigits(value)}\u00a0s`;
    case "h":
      return hours(value);
    case "%":
      return `${decimals(value, 1)}\u00a0%`;
    case "°C":
    case "years":
    case undefined:
      return `${String(Number(value.toPrecision(3))).replace("-", "−")}${unit === undefined ? "" : `\u00a0${unit}`}`;
    default:
      return `${threeDigits(value)}\u00a0${unit}`;
  }
}
