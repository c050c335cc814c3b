import type { CornerFigures, GearFigures } from "../core/circuit/results.js";
import type { Figures } from "../core/figures-types.js";
import type { CompleteGear } from "../core/plan/completed.js";
import type { Endpoint } from "../core/plan/model/common.js";

/** Gear that was written together, `coaming lamp` with a count of 6; alike but for where it sits. */
export interface GearGroup {
  readonly name: string;
  readonly pieces: readonly CompleteGear[];
}

/** Gear by the name it was written under, in the plan's order. */
export function gearGroups(gear: readonly CompleteGear[]): GearGroup[] {
  const groups = new Map<string, CompleteGear[]>();
  for (const piece of gear) {
    const group = groups.get(piece.group);
    if (group) group.push(piece);
    else groups.set(piece.group, [piece]);
  }
  return [...groups].map(([name, pieces]) => ({ name, pieces }));
}

export function cornerNamed(figures: Figures, name: string): CornerFigures | undefined {
  return figures.corners.find((corner) => corner.name === name);
}

/** What a piece of gear gets in its worst corner of all that were solved. */
export interface WorstGear {
  readonly gear: GearFigures;
  readonly corner: string;
}

/** By gear: the corner with the greatest drop while it is on. Gear that is on in no solved corner is missing. */
export function worstByGear(figures: Figures): Map<string, WorstGear> {
  const worst = new Map<string, WorstGear>();
  for (const corner of figures.corners) {
    for (const gear of corner.gear) {
      if (!gear.on || !Number.isFinite(gear.dropShare)) continue;
      const known = worst.get(gear.id);
      if (known === undefined || gear.dropShare > known.gear.dropShare)
        worst.set(gear.id, { gear, corner: corner.name });
    }
  }
  return worst;
}

/**
 * Greatest drop along each run in one leg: of the outgoing conductors, and of the returns [V].
 * @param carriedA What a run carries at most [A], by name: counts where all its gear waits for its turn in this corner.
 */
export function runDrops(
  corner: CornerFigures | undefined,
  carriedA: ReadonlyMap<string, number>,
): Map<string, { outV: number; returnV: number; currentA: number }> {
  const drops = new Map<string, { outV: number; returnV: number; currentA: number }>();
  for (const branch of corner?.branches ?? []) {
    const drop = drops.get(branch.of) ?? { outV: 0, returnV: 0, currentA: 0 };
    const leg = branch.id.endsWith(" / return") ? "returnV" : "outV";
    const ohm = branch.parts.reduce((sum, part) => sum + part.ohm, 0);
    const dropV =
      Math.abs(branch.currentA) < 1e-9 ? ohm * (carriedA.get(branch.of) ?? 0) : Math.abs(branch.dropV);
    drop[leg] = Math.max(drop[leg], dropV);
    drop.currentA = Math.max(drop.currentA, Math.abs(branch.currentA));
    drops.set(branch.of, drop);
  }
  return drops;
}

export const endWords = ({ place, port }: Endpoint) => (port === undefined ? place : `${place} / ${port}`);
