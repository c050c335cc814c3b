import type { CompletePlan } from "../plan/completed.js";
import type { DoneStep } from "../plan/model/work.js";
import { workMinutes } from "../reference/work-times.js";
import { groupedBy } from "./grouped.js";
import type { Precedence, Step, WorkGraph } from "./step.js";

/** The work of the project in hand: what earlier projects have done for good is no step of it any more. */
export interface ProjectWork extends WorkGraph {
  /** Ids done in this project, in full. */
  readonly done: ReadonlySet<string>;
  /** Ids done in earlier ones that need not be done again. */
  readonly standing: ReadonlySet<string>;
}

/**
 * Lays the ticks over the graph. A step that was done for fewer pieces than the plan now has is to do again for the rest. What earlier
 * projects have finished stands, but what the new work touches is opened, proven and closed again, and the battery is taken off first.
 */
export function projectWork(
  plan: CompletePlan,
  graph: WorkGraph,
  earlier: readonly DoneStep[],
  now: readonly DoneStep[],
): ProjectWork {
  const covered = coverage([...earlier, ...now]);
  const inThis = new Set(now.map(({ step }) => step));
  const before = new Set(earlier.map(({ step }) => step));
  const left = graph.steps.map((step) => leftOf(step, covered.get(step.id)));
  const finished = new Set(left.flatMap(({ step, todo }) => (todo ? [] : [step.id])));
  // without earlier projects nothing stands, and every step is this project's own
  if (before.size === 0)
    return { ...graph, steps: left.map(({ step }) => step), done: finished, standing: new Set() };
  const fresh = left.filter(({ step, todo }) => todo || (inThis.has(step.id) && !before.has(step.id)));
  const touched = touchedBy(
    plan,
    fresh.map(({ step }) => step),
  );
  const steps: Step[] = [];
  const standing = new Set<string>();
  const done = new Set<string>();
  for (const { step, todo } of left) {
    // a panel is covered for hands only
    if (!touched.any && (step.task === "cover panel" || step.task === "uncover panel")) {
      standing.add(step.id);
      continue;
    }
    const again = before.has(step.id) && isAgain(step, touched);
    if (!todo && !again && before.has(step.id)) {
      standing.add(step.id);
      continue;
    }
    if (!todo && inThis.has(step.id)) done.add(step.id);
    steps.push(again ? narrowed(step, touched) : step);
  }
  const opening = openingSteps(plan, touched, before, steps);
  for (const { id } of opening.steps) if (inThis.has(id)) done.add(id);
  const known = new Set([...opening.steps, ...steps].map(({ id }) => id));
  return {
    steps: [...opening.steps, ...steps],
    precedences: [...opening.precedences, ...graph.precedences].filter(
      ({ before: first, after }) => known.has(first) && known.has(after),
    ),
    done,
    standing,
  };
}

/** Pieces done, by step; `all`: a tick that names none. */
function coverage(ticks: readonly DoneStep[]): Map<string, ReadonlySet<string> | "all"> {
  return new Map(
    [...groupedBy(ticks, ({ step }) => step)].map(([step, list]) => [
      step,
      list.some(({ covers }) => covers === undefined)
        ? "all"
        : new Set(list.flatMap(({ covers = [] }) => covers)),
    ]),
  );
}

function leftOf(step: Step, done: ReadonlySet<string> | "all" | undefined): { step: Step; todo: boolean } {
  if (done === undefined) return { step, todo: true };
  if (done === "all" || step.pieces.length === 0) return { step, todo: false };
  const pieces = step.pieces.filter((piece) => !done.has(piece));
  if (pieces.length === 0) return { step, todo: false };
  return { step: onlyFor(step, pieces), todo: true };
}

/** The step for some of its pieces: their sizes, and as much less time and material. */
function onlyFor(step: Step, pieces: readonly string[]): Step {
  const share = pieces.length / Math.max(1, step.pieces.length);
  const kept = new Set(pieces);
  const about = (of: string) => kept.has(of) || kept.has(of.split(" / ")[0] ?? "");
  const named = step.sizes.some(({ of }) =>
    step.pieces.some((piece) => of === piece || of.startsWith(`${piece} / `)),
  );
  return {
    ...step,
    pieces,
    doneBefore: step.pieces.filter((piece) => !kept.has(piece)),
    sizes: named ? step.sizes.filter(({ of }) => about(of)) : step.sizes,
    minutes: Math.max(1, Math.round(step.minutes * share)),
    consumables: step.consumables.map((one) => ({
      ...one,
      count: Math.max(1, Math.round(one.count * share)),
    })),
  };
}

interface Touched {
  readonly any: boolean;
  readonly places: ReadonlySet<string>;
  readonly circuits: ReadonlySet<string>;
  readonly gear: ReadonlySet<string>;
}

/** What a project's own steps lay hands on. */
function touchedBy(plan: CompletePlan, steps: readonly Step[]): Touched {
  const handled = new Set(steps.flatMap(({ kind, pieces }) => (wiring.has(kind) ? pieces : [])));
  const runs = plan.runs.filter(({ name }) => handled.has(name));
  const circuits = new Set([
    ...runs.flatMap(({ carries }) => carries),
    ...plan.gear.flatMap(({ name }) => (handled.has(name) ? [plan.circuitOf.get(name) ?? ""] : [])),
  ]);
  return {
    any: handled.size > 0,
    places: new Set(runs.flatMap(({ from, to }) => [from.place, to.place])),
    circuits,
    gear: new Set(
      plan.gear.flatMap(({ name }) => (circuits.has(plan.circuitOf.get(name) ?? "") ? [name] : [])),
    ),
  };
}

const wiring: ReadonlySet<Step["kind"]> = new Set([
  "cut box",
  "draw wire",
  "join",
  "connect",
  "mount",
  "seal",
]);

/** Must a step that stands be done once more? */
function isAgain({ kind, task, at }: Step, touched: Touched): boolean {
  if (!touched.any) return false;
  if (task === "prove charger polarity") return at.some((place) => touched.places.has(place));
  if (kind === "prove dead" || kind === "battery on" || task === "cover panel") return true;
  if (kind === "close up") return at.some((place) => touched.places.has(place));
  return kind === "prove live" && at.some((place) => touched.circuits.has(place));
}

/** Proven again is what the work touched, not the whole boat. */
function narrowed(step: Step, touched: Touched): Step {
  const pieces = step.pieces.filter((piece) => touched.gear.has(piece));
  if (step.kind !== "prove dead" || pieces.length === 0 || pieces.length === step.pieces.length) return step;
  return { ...onlyFor(step, pieces), doneBefore: [] };
}

/** The battery off, and the boxes open, before hands go in. */
function openingSteps(
  plan: CompletePlan,
  touched: Touched,
  before: ReadonlySet<string>,
  steps: readonly Step[],
): { steps: Step[]; precedences: Precedence[] } {
  if (!touched.any) return { steps: [], precedences: [] };
  const made: Step[] = [];
  const precedences: Precedence[] = [];
  const blank = { pieces: [], sizes: [], readings: [], consumables: [], inOneGo: false } as const;
  const panels = steps.flatMap(({ id, task }) => (task === "cover panel" ? [id] : []));
  const offs = plan.batteries.flatMap(({ name }) => (before.has(`battery on / ${name}`) ? [name] : []));
  for (const name of offs)
    made.push({
      ...blank,
      id: `battery off / ${name}`,
      kind: "battery off",
      task: "battery off",
      at: [name],
      tools: ["spanner"],
      minutes: workMinutes.batteryOff,
      caution: "battery short",
    });
  for (const panel of panels)
    for (const name of offs)
      precedences.push({ before: panel, after: `battery off / ${name}`, reason: "covered before working" });
  const closed = [...touched.places].filter((place) => before.has(`close / ${place}`));
  for (const place of closed) {
    made.push({
      ...blank,
      id: `open / ${place}`,
      kind: "open up",
      task: "open box",
      at: [place],
      tools: ["screwdriver"],
      minutes: workMinutes.openBox,
    });
    for (const name of offs)
      precedences.push({
        before: `battery off / ${name}`,
        after: `open / ${place}`,
        reason: "battery off first",
      });
  }
  for (const step of steps) {
    if (!wiring.has(step.kind) && step.kind !== "prove dead") continue;
    for (const place of closed)
      if (step.at.includes(place) && step.kind !== "prove dead")
        precedences.push({ before: `open / ${place}`, after: step.id, reason: "open before working" });
    if (step.kind === "connect" || step.kind === "prove dead")
      for (const name of offs)
        precedences.push({ before: `battery off / ${name}`, after: step.id, reason: "battery off first" });
  }
  return { steps: made, precedences };
}
