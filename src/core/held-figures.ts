import { cornerFigures } from "./circuit/corner-figures.js";
import { cornersOf, turnsOf } from "./circuit/corners.js";
import { CircuitNetwork } from "./circuit/network.js";
import type { Chosen } from "./circuit/parts.js";
import { rememberingSolver } from "./circuit/solve/solve.js";
import type { SolveNetwork } from "./circuit/solve/types.js";
import { solveCorner } from "./circuit/solved-corner.js";
import { buildTopology } from "./circuit/topology/build.js";
import type { Figures } from "./figures-types.js";
import { checkPlan } from "./findings/check.js";
import type { Finding } from "./findings/finding.js";
import { gravestFirst } from "./findings/merge.js";
import { rules } from "./findings/rules.js";
import { completePlan } from "./plan/complete.js";
import type { Plan } from "./plan/model/plan.js";
import { ruleSet } from "./reference/rule-sets.js";

/** Chapters of rules that look at more than the electrics, and single rules of other chapters that do. */
const apart: ReadonlySet<string> = new Set(["boxes", "ways", "parts", "form", "marks", "holes", "float"]);
const apartToo: ReadonlySet<string> = new Set([
  "barrel-fit",
  "step-down",
  "strain-relief",
  "stud-fit",
  "tab-fit",
  "tap-limits",
  "built-hole",
  "record-of-nothing",
]);
/** Rules that look at more than the electrics: at the hull, at boxes, ends and parts. */
export const apartRules: ReadonlySet<string> = new Set(
  rules.filter(({ id, theme }) => apart.has(theme) || apartToo.has(id)).map(({ id }) => id),
);

/** What is held while things move. */
export type Held = Pick<
  Figures,
  "sizes" | "protection" | "paths" | "outings" | "charging" | "readings" | "findings"
>;

/** Of figures, what is held while things move; of the findings those that look at more than the electrics. */
export function heldOf({ sizes, protection, paths, outings, charging, readings, findings }: Figures): Held {
  return {
    sizes,
    protection,
    paths,
    outings,
    charging,
    ...(readings === undefined ? {} : { readings }),
    findings: findings.filter(({ rule }) => apartRules.has(rule)),
  };
}

/**
 * Figures of a plan in which things stand elsewhere than in one worked out before, cheap enough for every frame of a drag: lengths, drops,
 * currents and heat at every corner, and the findings of the electrics. Sizes, ratings and outings, and findings of anything else, are held
 * as they were; `workOut` settles those anew.
 * @param solve One kept from call to call saves time; the answer is the same.
 * @returns undefined where the plan is made of other conductors, devices or gear than the figures held.
 */
export function workOutHeld(
  source: Plan,
  held: Figures,
  solve: SolveNetwork = rememberingSolver(),
): Figures | undefined {
  const plan = completePlan(source);
  const chosen = chosenOf(held);
  const topology = buildTopology(plan);
  if (!isPriced(topology, chosen) || plan.gear.length !== held.plan.gear.length) return undefined;
  const network = new CircuitNetwork(plan, topology, solve);
  const corners = cornersOf(plan).map((state) =>
    cornerFigures(network, plan, chosen, solveCorner(network, chosen, state, turnsOf(plan, state))),
  );
  const { sizes, protection, paths, outings, charging } = held;
  const readings = held.readings === undefined ? {} : { readings: held.readings };
  const found = checkPlan({
    plan,
    ruleSet: ruleSet(source.rules),
    sizes,
    protection,
    corners,
    outings,
    charging,
    ...readings,
  });
  return {
    plan,
    assumptions: plan.assumptions,
    sizes,
    protection,
    corners,
    paths,
    outings,
    charging,
    ...readings,
    findings: withHeld(found, held.findings),
  };
}

function withHeld(found: readonly Finding[], held: readonly Finding[]): readonly Finding[] {
  const kept = held.filter(({ rule }) => apartRules.has(rule));
  if (kept.length === 0) return found;
  return gravestFirst([...found.filter(({ rule }) => !apartRules.has(rule)), ...kept]);
}

/** What the circuit was priced with. */
function chosenOf({ plan, sizes, protection }: Figures): Chosen {
  const tinned = new Map<string, boolean>();
  for (const run of plan.runs) if (!tinned.has(run.group)) tinned.set(run.group, run.tinned);
  return {
    sizes: new Map(sizes.choices.map(({ id, size }) => [id, size])),
    tinned: new Map(sizes.choices.map(({ id, run }) => [id, tinned.get(run) ?? false])),
    ratingsA: new Map(protection.map(({ id, ratingA }) => [id, ratingA])),
  };
}

function isPriced(topology: ReturnType<typeof buildTopology>, { sizes, ratingsA }: Chosen): boolean {
  return topology.branches.every(({ parts }) =>
    parts.every((part) => {
      if (part.kind === "conductor") return sizes.has(part.sizeGroup);
      return part.kind !== "protection" || ratingsA.has(part.device);
    }),
  );
}
