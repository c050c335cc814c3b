import type { GearPath } from "../../core/circuit/topology/gear-paths.js";
import type { CompletePlan } from "../../core/plan/completed.js";
import type { Spot } from "./lay-out.js";

/** Which legs of each spot's own lines are followed. */
export interface TracedSpot {
  readonly out: boolean;
  readonly back: boolean;
}

/** Branches on the way from a supply to a thing and back. */
export interface Traced {
  readonly out: ReadonlySet<string>;
  readonly back: ReadonlySet<string>;
  /** Single pieces of gear whose legs these are; empty where something else is followed. */
  readonly gear: readonly string[];
}

interface Known {
  readonly plan: Pick<CompletePlan, "gear" | "runs">;
  readonly paths: readonly GearPath[];
}

/**
 * Both legs of what is selected: of a piece of gear (of all pieces, where the name is that of a row) as far as its supply; of a run,
 * way, panel or box as far as the thing itself.
 * @param ofBranch Run, way, panel, battery or gear a branch belongs to.
 */
export function traceSelected(
  { plan, paths }: Known,
  selected: string,
  ofBranch: ReadonlyMap<string, string>,
): Traced {
  const pieces = plan.gear.filter(({ name, group }) => name === selected || group === selected);
  const out = new Set<string>();
  const back = new Set<string>();
  if (pieces.length > 0) {
    const names = new Set(pieces.map(({ name }) => name));
    for (const path of paths.filter(({ gear }) => names.has(gear))) {
      for (const { branch } of path.out) out.add(branch);
      for (const { branch } of path.back) back.add(branch);
    }
    return { out, back, gear: [...names] };
  }
  const own = new Set(
    plan.runs
      .filter(({ name, group, to }) => name === selected || group === selected || to.place === selected)
      .map(({ name }) => name),
  );
  own.add(selected);
  const belongs = (branch: string) => own.has(ofBranch.get(branch) ?? "");
  for (const path of paths) {
    const lastOut = path.out.findLastIndex(({ branch }) => belongs(branch));
    const firstBack = path.back.findIndex(({ branch }) => belongs(branch));
    for (const { branch } of path.out.slice(0, lastOut + 1)) out.add(branch);
    if (firstBack >= 0) for (const { branch } of path.back.slice(firstBack)) back.add(branch);
    // A way has no return of its own: what it feeds goes back from its panel.
    else if (lastOut >= 0) for (const { branch } of path.back) back.add(branch);
  }
  return { out, back, gear: [] };
}

/** The legs of each spot that lie on the traced way, in the order of the spots. */
export function tracedSpots(
  spots: readonly Spot[],
  branchesOf: (spot: Spot) => readonly { readonly id: string }[],
  { out, back }: Pick<Traced, "out" | "back">,
): TracedSpot[] {
  const traced = spots.map((spot) => {
    const branches = branchesOf(spot);
    return {
      out: branches.some(({ id }) => out.has(id)),
      back: branches.some(({ id }) => back.has(id)),
    };
  });
  // The return passes by the fuse and switch of a way.
  for (let index = spots.length - 1; index >= 0; index -= 1) {
    const spot = spots[index];
    const parent = traced[spot?.parent ?? -1];
    if (spot && parent && spots[spot.parent]?.node.kind === "way" && traced[index]?.back === true)
      traced[spot.parent] = { ...parent, back: true };
  }
  return traced;
}
