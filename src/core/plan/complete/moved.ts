import type { Assumption, CompleteGear, CompletePlan, CompleteRun } from "../completed.js";
import type { PlanPoint } from "../model/form.js";
import type { Plan } from "../model/plan.js";
import { singleRuns } from "./expand.js";
import { piecesStand } from "./gear.js";
import { lengthsIn, Notes } from "./notes.js";
import { measured } from "./runs.js";
import { waysOf } from "./ways.js";

/**
 * A plan completed before, with things standing elsewhere: only the ways along the legs are measured anew. What it gives is what
 * `completePlan` would give.
 * @returns undefined where more has changed than where things stand, or a run would be led past other legs: then it must be completed anew.
 */
export function completeMoved(before: CompletePlan, plan: Plan): CompletePlan | undefined {
  if (!differInPlacesOnly(before.source, plan)) return undefined;
  const singles = singleRuns(plan, new Notes());
  const ways = waysOf(plan, singles);
  const lengths = new Map<string, string>();
  const lengthWords = lengthsIn(plan.shows);
  const runs: CompleteRun[] = [];
  for (const [index, { name, run, lengthM }] of singles.entries()) {
    const complete = before.runs[index];
    if (!complete) return undefined;
    const way = ways.get(name);
    const was = before.ways.get(name);
    if (way === was) {
      runs.push(complete);
      continue;
    }
    if (!way?.ok || !was?.ok || !sameLegs(way.route.legs, was.route.legs)) return undefined;
    const wayM = lengthM ?? way.route.lengthM;
    if (lengthM === undefined) lengths.set(name, lengthWords(wayM));
    runs.push(wayM === complete.lengthM ? complete : { ...complete, ...measured(run, wayM, complete.ends) });
  }
  return {
    ...before,
    source: plan,
    batteries: standing(before.batteries, plan.batteries),
    chargers: standing(before.chargers, plan.chargers),
    converters: standing(before.converters, plan.converters),
    panels: standing(before.panels, plan.panels),
    boxes: standing(before.boxes, plan.boxes),
    gear: gearStanding(before, plan),
    runs,
    ways,
    assumptions: before.assumptions.map((one): Assumption => {
      const value = one.reason === "length-along-legs" ? lengths.get(one.at) : undefined;
      return value === undefined || value === one.value ? one : { ...one, value };
    }),
  };
}

/** Lists of what can stand somewhere, with the field that says where. */
const placeFields = {
  batteries: "standsAtM",
  chargers: "standsAtM",
  converters: "standsAtM",
  panels: "standsAtM",
  boxes: "standsAtM",
  gear: "standsAtM",
  waypoints: "atM",
} as const satisfies Partial<Record<keyof Plan, string>>;

function differInPlacesOnly(before: Plan, now: Plan): boolean {
  return sameBut(before, now, (field) => {
    if (!isPlaced(field)) return false;
    const [from, to] = [before[field], now[field]];
    return (
      from.length === to.length &&
      from.every((one, index) => {
        const other = to[index];
        // what no longer stands anywhere is completed anew
        return (
          other !== undefined && sameBut(one, other, (key) => key === placeFields[field] && key in other)
        );
      })
    );
  });
}

function isPlaced(field: string): field is keyof typeof placeFields {
  return field in placeFields;
}

/** Do two things agree in every field but those that may differ? */
function sameBut<T extends object>(a: T, b: T, mayDiffer: (field: string) => boolean): boolean {
  if (a === b) return true;
  const holds = (field: string) => a[field as keyof T] === b[field as keyof T] || mayDiffer(field);
  return Object.keys(a).every(holds) && Object.keys(b).every((field) => field in a || mayDiffer(field));
}

function sameLegs(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((leg, index) => leg === b[index]);
}

interface Standing {
  readonly standsAtM?: PlanPoint;
}

function standing<T extends Standing>(before: readonly T[], written: readonly Standing[]): readonly T[] {
  return before.map((one, index) => standingAt(one, written[index]?.standsAtM));
}

function standingAt<T extends Standing>(one: T, standsAtM: PlanPoint | undefined): T {
  return standsAtM === undefined || standsAtM === one.standsAtM ? one : { ...one, standsAtM };
}

function gearStanding(before: CompletePlan, plan: Plan): readonly CompleteGear[] {
  const stands = plan.gear.flatMap(({ count, standsAtM }) => piecesStand(count, standsAtM));
  return before.gear.map((piece, index) => standingAt(piece, stands[index]));
}
