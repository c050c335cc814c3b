import { cornerFigures } from "./circuit/corner-figures.js";
import { type Stage, stagesOf } from "./circuit/corners.js";
import { CircuitNetwork } from "./circuit/network.js";
import type { Chosen } from "./circuit/parts.js";
import { rememberingSolver } from "./circuit/solve/solve.js";
import type { SolveNetwork } from "./circuit/solve/types.js";
import { solveCorner } from "./circuit/solved-corner.js";
import { buildTopology } from "./circuit/topology/build.js";
import type { Topology } from "./circuit/topology/types.js";
import type { Figures } from "./figures-types.js";
import { checkElectrics, isOfElectrics } from "./findings/check-electrics.js";
import type { Finding } from "./findings/finding.js";
import { gravestFirst } from "./findings/merge.js";
import { completeMoved } from "./plan/complete/moved.js";
import { completePlan } from "./plan/complete.js";
import type { CompletePlan } from "./plan/completed.js";
import type { Plan } from "./plan/model/plan.js";
import { ruleSet } from "./reference/rule-sets.js";

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
    findings: findings.filter((one) => !isOfElectrics(one)),
  };
}

/** Figures of a plan in which things stand elsewhere than in one worked out before; see `workOutHeld`. */
export type WorkOutHeld = (source: Plan, held: Figures) => Figures | undefined;

/**
 * `workOutHeld` for a plan in which things move step by step: how its circuit is joined is worked out once, at the first step, as long as
 * nothing but places changes.
 */
export function rememberingWorkOutHeld(): WorkOutHeld {
  const solve = rememberingSolver();
  let standing: Circuit | undefined;
  let priced: { readonly with: Figures; readonly chosen: Chosen } | undefined;
  const circuitNow = (source: Plan): Circuit => {
    const moved = standing && completeMoved(standing.plan, source);
    if (standing && moved) return { ...standing, plan: moved, network: standing.network.withRuns(moved) };
    standing = circuitOf(completePlan(source), solve);
    return standing;
  };
  return (source, held) => {
    // most answers of the worker change neither sizes nor ratings: what was priced with them stays
    if (!priced || !isPricedWith(priced.with, held)) priced = { with: held, chosen: chosenOf(held) };
    return figuresOf(circuitNow(source), held, priced.chosen);
  };
}

/**
 * Figures of a plan in which things stand elsewhere than in one worked out before, cheap enough for every frame of a drag: lengths, drops,
 * currents and heat at every corner, and the findings of the electrics. Sizes, ratings and outings, and findings of anything else, are held
 * as they were; `workOut` settles those anew.
 * @returns undefined where the plan is made of other conductors, devices or gear than the figures held.
 */
export const workOutHeld: WorkOutHeld = (source, held) => rememberingWorkOutHeld()(source, held);

/** A plan with its circuit, and the corners it is solved at. */
interface Circuit {
  readonly plan: CompletePlan;
  readonly network: CircuitNetwork;
  readonly stages: readonly Stage[];
}

function circuitOf(plan: CompletePlan, solve: SolveNetwork): Circuit {
  return { plan, network: new CircuitNetwork(plan, buildTopology(plan), solve), stages: stagesOf(plan) };
}

function figuresOf({ plan, network, stages }: Circuit, held: Figures, chosen: Chosen): Figures | undefined {
  if (!isPriced(network.topology, chosen) || plan.gear.length !== held.plan.gear.length) return undefined;
  const corners = stages.map(({ state, turns }) =>
    cornerFigures(network, plan, chosen, solveCorner(network, chosen, state, turns)),
  );
  const { sizes, protection, paths, outings, charging } = held;
  const readings = held.readings === undefined ? {} : { readings: held.readings };
  const found = checkElectrics({
    plan,
    ruleSet: ruleSet(plan.source.rules),
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
  const kept = held.filter((one) => !isOfElectrics(one));
  return kept.length === 0 ? found : gravestFirst([...found, ...kept]);
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

function isPricedWith(a: Figures, b: Figures): boolean {
  return a.plan === b.plan && a.sizes === b.sizes && a.protection === b.protection;
}

function isPriced(topology: Topology, { sizes, ratingsA }: Chosen): boolean {
  return topology.branches.every(({ parts }) =>
    parts.every((part) => {
      if (part.kind === "conductor") return sizes.has(part.sizeGroup);
      return part.kind !== "protection" || ratingsA.has(part.device);
    }),
  );
}
