import type { ProtectionFigures } from "../../circuit/protection/types.js";
import type { GearPath } from "../../circuit/topology/gear-paths.js";
import type { CompleteGear, CompletePlan, CompleteRun } from "../../plan/completed.js";
import type { Bench } from "../bench-network.js";
import type { ProvingInput } from "../input.js";

/** Where one can put the probes to a piece of gear: at the joint of its leads where it has any, else at its terminals. */
export function polesOf(bench: Bench, gear: string): readonly [plus: string, minus: string] {
  const { topology, branchOf, gearOf } = bench;
  const branch = (id: string) => topology.branches[branchOf.get(id) ?? -1];
  const own = topology.gear[gearOf.get(gear) ?? -1];
  const plus = branch(`${gear} / lead / out`)?.from ?? own?.plus ?? 0;
  const minus = branch(`${gear} / lead / return`)?.to ?? own?.minus ?? 0;
  return [topology.nodes[plus] ?? "", topology.nodes[minus] ?? ""];
}

/** Posts of a battery. */
export function postsOf({ topology }: Bench, battery: string): readonly [plus: string, minus: string] {
  const source = topology.sources.find((one) => one.battery === battery);
  return [topology.nodes[source?.plus ?? 0] ?? "", topology.nodes[source?.minus ?? 0] ?? ""];
}

/** Plus and minus of what feeds a circuit: a battery's posts, or the output of a converter. */
export function supplyPoles(bench: Bench, supply: string): readonly [plus: string, minus: string] {
  const { topology } = bench;
  const converter = topology.converters.find(({ id }) => id === supply);
  if (!converter) return postsOf(bench, supply);
  return [topology.nodes[converter.outPlus] ?? "", topology.nodes[converter.outMinus] ?? ""];
}

/** Fuses and breakers of a piece of gear's own circuit, nearest the supply first: mains guard more than it. */
export function guardsOf(
  { protection, paths }: Pick<ProvingInput, "protection" | "paths">,
  gear: string,
): readonly ProtectionFigures[] {
  const byId = new Map(protection.map((one) => [one.id, one]));
  const out = paths.find((path) => path.gear === gear)?.out ?? [];
  return out.flatMap(({ branch }) => (branch.endsWith(" / main") ? [] : (byId.get(branch) ?? [])));
}

/** Leads of a charger that stays aboard. */
export const chargerRuns = ({ runs }: CompletePlan, charger: string): readonly CompleteRun[] =>
  runs.filter(({ from, to }) => from.place === charger || to.place === charger);

/** Of each group of gear the piece behind most resistance: what holds for it holds for the others. */
export function farthest(
  bench: Bench,
  gear: readonly CompleteGear[],
  paths: readonly GearPath[],
): readonly CompleteGear[] {
  const pathOf = new Map(paths.map((path) => [path.gear, path]));
  const ohm = ({ name }: CompleteGear): number => {
    const path = pathOf.get(name);
    return [...(path?.out ?? []), ...(path?.back ?? [])].reduce(
      (sum, { branch }) => sum + (bench.numbers.branches.ohm[bench.branchOf.get(branch) ?? -1] ?? 0),
      0,
    );
  };
  const best = new Map<string, CompleteGear>();
  for (const piece of gear) {
    const known = best.get(piece.group);
    if (!known || ohm(piece) > ohm(known)) best.set(piece.group, piece);
  }
  return [...best.values()];
}

/** States in which the gear of a circuit can be proven: all at once, but of a one-at-a-time group one entry after another. */
export function statesOf(
  gear: readonly CompleteGear[],
  oneAtATime: readonly (readonly (readonly string[])[])[],
): readonly (readonly string[])[] {
  const names = gear.map(({ name }) => name);
  const states = [new Set(names)];
  for (const group of oneAtATime) {
    const entries = group
      .map((entry) => entry.filter((name) => names.includes(name)))
      .filter((e) => e.length > 0);
    if (entries.length < 2) continue;
    const [first, ...others] = entries;
    for (const name of others.flat()) states[0]?.delete(name);
    for (const entry of others)
      states.push(
        new Set(names.filter((n) => !first?.includes(n) && (entry.includes(n) || states[0]?.has(n)))),
      );
  }
  return states.map((state) => names.filter((name) => state.has(name)));
}
