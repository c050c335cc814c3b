import type { CompleteGear, CompletePlan } from "../plan/completed.js";
import { groupedBy } from "./grouped.js";
import { plannedHoles } from "./planned-holes.js";

/** Holes that are proven against water together: an entry of gear, or a hole that takes none. */
export interface LeakTest {
  readonly of: string;
  readonly holes: readonly string[];
}

/** Whatever is bedded, and every hole the work makes in a face. */
export function leakTests(plan: CompletePlan): LeakTest[] {
  const made = new Set(plannedHoles(plan).flatMap(({ hole, there }) => (there ? [] : [hole])));
  const ofGear = [...groupedBy(plan.gear, ({ group }) => group)].flatMap(([of, pieces]): LeakTest[] => {
    const holes = pieces.filter((piece) => isBedded(piece) || made.has(piece.name)).map(({ name }) => name);
    return holes.length === 0 ? [] : [{ of, holes }];
  });
  const gear = new Set(plan.gear.map(({ name }) => name));
  const bare = [...made]
    .filter((hole) => !gear.has(hole))
    .map((hole): LeakTest => ({ of: hole, holes: [hole] }));
  return [...ofGear, ...bare];
}

/** Gear that water reaches is bedded in sealant, unless its plan names another seal. */
export function isBedded(piece: CompleteGear): boolean {
  if (piece.hole?.seal !== undefined) return piece.hole.seal === "sealant";
  return piece.surroundings === "wet" || piece.surroundings === "bilge";
}
