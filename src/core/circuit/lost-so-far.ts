import type { CornerFigures } from "./results.js";
import type { GearPath } from "./topology/gear-paths.js";

/**
 * What is lost between a supply and the far side of each branch, by the branch's id [V]: on the way out up to and with the branch,
 * on the way back from the branch (with it) to the supply. The voltage at a place is that of its supply less both.
 */
export function lostSoFar(corner: CornerFigures, paths: readonly GearPath[]): ReadonlyMap<string, number> {
  const lost = new Map<string, number>();
  const drops = new Map(corner.branches.map(({ id, dropV }) => [id, dropV]));
  const follow = (steps: GearPath["out"]) => {
    let sumV = 0;
    for (const { branch, along } of steps) {
      sumV += (drops.get(branch) ?? Number.NaN) * along;
      lost.set(branch, sumV);
    }
  };
  for (const { out, back } of paths) {
    follow(out);
    follow(back.toReversed());
  }
  return lost;
}
