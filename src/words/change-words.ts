import type { Shows } from "../core/plan/model/plan.js";
import type { FigureChange } from "../core/working/compare.js";
import type { PartChange, ThingChange } from "../core/working/plan-changes.js";
import type { ChangeLanguage } from "./change-language.js";
import { differenceSentence } from "./difference-words.js";
import { levelWords } from "./labels.js";
import { counted, decimals, hours, lengthWords, marked, noFigure, percent } from "./numbers.js";
import { findingsInEnglish } from "./rules.js";
import { english } from "./steps/english.js";

/** A change of plan in English. */
export const changesInEnglish: ChangeLanguage = {
  figures: {
    "gear drop": "worst drop",
    "gear voltage": "voltage",
    "gear current": "current",
    "branch drop": "drop",
    "branch current": "current",
    "run size": "conductor",
    "run ampacity": "allowed current",
    rating: "fuse or breaker",
    condition: "condition",
    "battery voltage": "voltage",
    "battery current": "current",
    "hours to reserve": "hours to reserve",
    "charge left": "charge left",
    "charge used": "charge used",
    "usable capacity": "usable capacity",
    "charging time": "charging time",
    "sizes total": "all conductors",
  },
  onOuting: (figure, outing) => `${figure} on ${outing}`,
  never: "never",
  sections: {
    batteries: "battery",
    chargers: "charger",
    converters: "converter",
    panels: "panel",
    boxes: "box",
    "box catalogue": "box to buy",
    gear: "gear",
    runs: "run",
    waypoints: "waypoint",
    legs: "leg",
    references: "reference point",
    faces: "face",
    corners: "corner",
    outings: "outing",
    projects: "project",
  },
  things: { added: "added", removed: "removed" },
  notWritten: "not written",
  levels: levelWords,
  ofFindings: { come: "new", gone: "gone" },
  ofSteps: { come: "new", gone: "gone" },
  moreSteps: {
    come: (count) => `and ${counted(count, "more step new", "more steps new")}`,
    gone: (count) => `and ${counted(count, "more step gone", "more steps gone")}`,
  },
  cut: (run, before, after) => `${run}: to cut ${before} → ${after}`,
  moreCuts: (count) => `and ${counted(count, "more cable", "more cables")} cut to another length`,
  workLeft: (before, after) => `${before} of work left → ${after}`,
  difference: differenceSentence,
  findings: findingsInEnglish,
  steps: english,
};

/** `hours to reserve on dawn tide`. */
export function figureName({ figure }: FigureChange, { figures, onOuting }: ChangeLanguage): string {
  const name = figures[figure.of];
  return "outing" in figure ? onOuting(name, figure.outing) : name;
}

/** A value before or after, with its unit; – where the thing is not there. */
export function figureValue(
  value: number | string | undefined,
  unit: string | undefined,
  { never }: ChangeLanguage,
): string {
  if (value === undefined) return noFigure;
  if (typeof value === "string") return value;
  if (unit === "h") return value === Number.POSITIVE_INFINITY ? never : hours(value);
  if (unit === "%") return percent(value / 100);
  return unit === "A"
    ? marked(value, "A")
    : `${decimals(value, 2)}${unit === undefined ? "" : `\u00a0${unit}`}`;
}

/** What of the plan is another, one line each: `gear floor lamp: draws 0.5 W → 0.8 W`. */
export function thingLines(
  { section, name, change, fields }: ThingChange,
  { sections, things, notWritten }: ChangeLanguage,
): string[] {
  const named: Readonly<Partial<Record<string, string>>> = sections;
  const what = name === undefined ? section : `${named[section] ?? section} ${name}`;
  if (change !== "changed") return [`${what}: ${things[change]}`];
  return fields.map(({ key, before, after }) => {
    const label = key === "" ? what : `${what}: ${key}`;
    return `${label} ${before ?? notWritten} → ${after ?? notWritten}`;
  });
}

/** A change of a part line as amounts. */
export function partAmounts(part: PartChange, shows: Shows): readonly [needed: string, toBuy: string] {
  const amount = (count: number) => (part.unit === "m" ? lengthWords(count, shows) : String(count));
  return [
    `${amount(part.neededBefore)} → ${amount(part.neededAfter)}`,
    `${amount(part.toBuyBefore)} → ${amount(part.toBuyAfter)}`,
  ];
}
