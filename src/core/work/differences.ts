import type { CompletePlan } from "../plan/completed.js";
import type { Place } from "../plan/model/placing.js";
import type {
  AsBuilt,
  BuiltEntry,
  BuiltHole,
  BuiltJoint,
  BuiltLength,
  BuiltRating,
} from "../plan/model/work.js";
import { setOutLimits } from "../reference/work-times.js";
import { type PlannedHole, plannedHoles } from "./planned-holes.js";
import type { EntryHole, OffBy, WorkFacts, WorkInput } from "./work-input.js";

/** Where what was built and the plan part. Nothing here undoes a record. */
export type Difference =
  | {
      readonly kind: "hole moved";
      readonly built: BuiltHole;
      readonly alongM: number;
      readonly offM: number;
      readonly byM: number;
    }
  /** Built and planned place are counted from different points, or the plan does not tell its place. */
  | { readonly kind: "hole not compared"; readonly built: BuiltHole }
  | { readonly kind: "hole on another face"; readonly built: BuiltHole; readonly wanted: PlannedHole }
  | { readonly kind: "hole size"; readonly built: BuiltHole; readonly wantedM: number; readonly byM: number }
  | { readonly kind: "hole not wanted"; readonly built: BuiltHole }
  | {
      readonly kind: "entry moved";
      readonly built: BuiltEntry;
      readonly wanted: EntryHole;
      readonly byM: number;
    }
  | {
      readonly kind: "entry size";
      readonly built: BuiltEntry;
      readonly wantedM: number;
      readonly byM: number;
    }
  | { readonly kind: "entry not wanted"; readonly built: BuiltEntry }
  | { readonly kind: "length"; readonly built: BuiltLength; readonly wantedM: number; readonly byM: number }
  | { readonly kind: "conductor size"; readonly built: BuiltLength; readonly wanted: string }
  | { readonly kind: "run not wanted"; readonly built: BuiltLength }
  | { readonly kind: "joint kind"; readonly built: BuiltJoint; readonly wanted: string }
  | { readonly kind: "joint not wanted"; readonly built: BuiltJoint }
  | { readonly kind: "rating"; readonly built: BuiltRating; readonly wantedA: number }
  | { readonly kind: "device not wanted"; readonly built: BuiltRating };

/** Every difference between what was built and what the plan wants now, in the order recorded. The last record of a thing counts. */
export function differencesOf(input: WorkInput, facts: WorkFacts = {}): readonly Difference[] {
  const built = standing(input.plan.source.work.asBuilt);
  const holes = new Map(plannedHoles(input.plan).map((hole) => [hole.hole, hole]));
  return [
    ...built.holes.flatMap((hole) => holeDifferences(hole, holes.get(hole.hole), facts)),
    ...built.entries.flatMap((entry) => entryDifferences(entry, input.plan, facts)),
    ...built.lengths.flatMap((length) => lengthDifferences(input, length)),
    ...built.joints.flatMap((joint) => jointDifferences(input.plan, joint)),
    ...built.ratings.flatMap((rating) => ratingDifferences(input, rating)),
  ];
}

/** What stands in the boat now: of several records of one thing the last. Spare entries of a box all stand. */
export function standing(built: AsBuilt): AsBuilt {
  const last = <T>(list: readonly T[], keyOf: (thing: T) => string): T[] => [
    ...new Map(list.map((thing) => [keyOf(thing), thing])).values(),
  ];
  return {
    lengths: last(built.lengths, ({ run }) => run),
    holes: last(built.holes, ({ hole }) => hole),
    entries: last(built.entries, ({ box, run, on, atM }) =>
      JSON.stringify(isSpareEntry(run) ? [box, on, atM] : [box, run]),
    ),
    joints: last(built.joints, ({ at, end }) => JSON.stringify([at, end])),
    ratings: last(built.ratings, ({ device }) => device),
  };
}

/** An entry that is kept for later: `spare`, `spare 2`. */
export const isSpareEntry = (run: string): boolean => /^spare( \d+)?$/.test(run);

function holeDifferences(
  built: BuiltHole,
  wanted: PlannedHole | undefined,
  { holes, offBy }: WorkFacts,
): Difference[] {
  if (wanted === undefined) return [{ kind: "hole not wanted", built }];
  if (wanted.on !== built.on || wanted.side !== built.side)
    return [{ kind: "hole on another face", built, wanted }];
  const cutMm = holes?.get(built.hole)?.cutMm;
  const sizeM = cutMm === undefined ? wanted.sizeM : cutMm / 1000;
  const size: Difference[] =
    sizeM === undefined || Math.abs(sizeM - built.sizeM) <= setOutLimits.sameHoleM
      ? []
      : [{ kind: "hole size", built, wantedM: sizeM, byM: sizeM - built.sizeM }];
  const off = offBy?.(built) ?? plainly(wanted, built);
  if (off === undefined) return [{ kind: "hole not compared", built }, ...size];
  return off.byM > setOutLimits.samePlaceM ? [{ kind: "hole moved", built, ...off }, ...size] : size;
}

/** Without the form of the boat: only where both are counted from one point along one edge. */
function plainly({ at }: PlannedHole, built: BuiltHole): OffBy | undefined {
  if (at === undefined || !countedAlike(at, built.at)) return undefined;
  const [alongM, offM] = [at.alongM - built.at.alongM, at.offM - built.at.offM];
  return { alongM, offM, byM: Math.hypot(alongM, offM) };
}

/** Both counted from one point along one edge: lengths of the two may be set against each other. */
function countedAlike(a: Place, b: Place): boolean {
  return a.from === b.from && a.edge?.off === b.edge?.off && a.edge?.line === b.edge?.line;
}

function entryDifferences(
  built: BuiltEntry,
  { runs, boxes, panels }: CompletePlan,
  { entries }: WorkFacts,
): Difference[] {
  // the plan names the holes of this box one by one: they are those that exist
  if ([...boxes, ...panels].some(({ name, holes }) => name === built.box && holes !== undefined)) return [];
  const isSpare = isSpareEntry(built.run);
  const [name = ""] = built.run.split(" / ");
  const run = runs.find((one) => one.name === name);
  if (!isSpare && run?.from.place !== built.box && run?.to.place !== built.box)
    return [{ kind: "entry not wanted", built }];
  const wanted = isSpare ? undefined : entries?.get(built.box)?.find(({ run }) => run === built.run);
  if (wanted === undefined) return [];
  const wantedM = wanted.holeMm / 1000;
  const size: Difference[] =
    Math.abs(wantedM - built.holeM) <= setOutLimits.sameHoleM
      ? []
      : [{ kind: "entry size", built, wantedM, byM: wantedM - built.holeM }];
  if (wanted.on === undefined || wanted.atM === undefined) return size;
  const byM =
    wanted.on === built.on
      ? Math.hypot(wanted.atM[0] - built.atM[0], wanted.atM[1] - built.atM[1])
      : Number.POSITIVE_INFINITY;
  return byM > setOutLimits.samePlaceM ? [{ kind: "entry moved", built, wanted, byM }, ...size] : size;
}

function lengthDifferences({ plan, sizes }: WorkInput, built: BuiltLength): Difference[] {
  const run = plan.runs.find(({ name }) => name === built.run);
  if (!run) return [{ kind: "run not wanted", built }];
  const byM = run.lengthM - built.lengthM;
  const wanted = sizes.choices.find((choice) => choice.run === run.name || choice.run === run.group)?.size
    .key;
  return [
    ...(Math.abs(byM) > setOutLimits.sameLengthM
      ? [{ kind: "length" as const, built, wantedM: run.lengthM, byM }]
      : []),
    ...(built.size !== undefined && wanted !== undefined && wanted !== built.size.key
      ? [{ kind: "conductor size" as const, built, wanted }]
      : []),
  ];
}

function jointDifferences(plan: CompletePlan, built: BuiltJoint): Difference[] {
  const run = plan.runs.find(({ name }) => name === built.at);
  const piece = plan.gear.find(({ name }) => name === built.at);
  const wanted = run ? (built.end === "start" ? run.jointAtStart : run.jointAtEnd) : piece?.joint;
  if (wanted === undefined) return [{ kind: "joint not wanted", built }];
  return wanted === built.kind ? [] : [{ kind: "joint kind", built, wanted }];
}

function ratingDifferences({ protection }: WorkInput, built: BuiltRating): Difference[] {
  const device = protection.find(({ id }) => id === built.device);
  if (!device) return [{ kind: "device not wanted", built }];
  return device.ratingA === built.ratingA ? [] : [{ kind: "rating", built, wantedA: device.ratingA }];
}
