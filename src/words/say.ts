import type { Finding } from "../core/findings/finding.js";
import type { Shows } from "../core/plan/model/plan.js";
import type { FindingWords } from "./finding-words.js";
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

/** How a rule's sentence writes what its finding holds, in the owner's units. */
export interface Say {
  readonly figure: string;
  readonly limit: string;
  readonly at: string;
  /** The other things, `a, b and c`; empty where there are none. */
  readonly others: string;
  /** All things together, the first included. */
  readonly all: string;
  /** Are there several? */
  readonly many: boolean;
  /** When: `with the battery low, the copper hot and everything on`. */
  readonly when: string;
  readonly term: (name: string) => string;
  /** A step of the working by its symbol, with its unit. */
  readonly step: (symbol: string) => string;
}

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

const mostNamed = 6;

/** How a language joins names. */
export interface Joining {
  /** The word before the last name. */
  readonly and: (last: string) => string;
  readonly more: (count: number) => string;
}

export const joinedInEnglish: Joining = { and: () => "and", more: (count) => `${count} more` };

/** `a`, `a and b`, `a, b and c`; long lists end in `and 12 more`. Names that hold commas are kept apart by semicolons. */
export function listed(names: readonly string[], { and, more }: Joining = joinedInEnglish): string {
  if (names.length <= 1) return names[0] ?? "";
  const named = names.length > mostNamed ? names.slice(0, mostNamed - 1) : names.slice(0, -1);
  const rest = names.length - named.length;
  const last = rest > 1 ? more(rest) : (names.at(-1) ?? "");
  const between = names.some((name) => name.includes(", ")) ? "; " : ", ";
  return `${named.join(between)} ${and(last)} ${last}`;
}
