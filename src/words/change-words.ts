import type { Shows } from "../core/plan/model/plan.js";
import type { FigureChange } from "../core/working/compare.js";
import type { FigureRef } from "../core/working/figure-ref.js";
import type { PartChange, ThingChange } from "../core/working/plan-changes.js";
import { decimals, hours, lengthWords, marked, noFigure, percent } from "./numbers.js";

const figureNames: Readonly<Record<FigureRef["of"], string>> = {
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
};

/** `hours to reserve on dawn tide`. */
export function figureName({ figure }: FigureChange): string {
  const name = figureNames[figure.of];
  return "outing" in figure ? `${name} on ${figure.outing}` : name;
}

/** A value before or after, with its unit; – where the thing is not there. */
export function figureValue(value: number | string | undefined, unit: string | undefined): string {
  if (value === undefined) return noFigure;
  if (typeof value === "string") return value;
  if (unit === "h") return value === Number.POSITIVE_INFINITY ? "never" : hours(value);
  if (unit === "%") return percent(value / 100);
  return unit === "A"
    ? marked(value, "A")
    : `${decimals(value, 2)}${unit === undefined ? "" : `\u00a0${unit}`}`;
}

const sectionWords: Readonly<Record<string, string>> = {
  batteries: "battery",
  chargers: "charger",
  converters: "converter",
  panels: "panel",
  boxes: "box",
  "box catalogue": "box to buy",
  runs: "run",
  waypoints: "waypoint",
  legs: "leg",
  references: "reference point",
  faces: "face",
  corners: "corner",
  outings: "outing",
  projects: "project",
};

/** What of the plan is another, one line each: `gear floor lamp: draws 0.5 W → 0.8 W`. */
export function thingLines({ section, name, change, fields }: ThingChange): string[] {
  const what = name === undefined ? section : `${sectionWords[section] ?? section} ${name}`;
  if (change !== "changed") return [`${what}: ${change}`];
  return fields.map(({ key, before, after }) => {
    const label = key === "" ? what : `${what}: ${key}`;
    return `${label} ${before ?? "not written"} → ${after ?? "not written"}`;
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
