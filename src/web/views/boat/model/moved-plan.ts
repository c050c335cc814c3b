import type { PlanPoint } from "../../../../core/plan/model/form.js";
import type { Gear } from "../../../../core/plan/model/gear.js";
import type { Plan } from "../../../../core/plan/model/plan.js";
import { type Lengths, roundedM } from "./length-text.js";
import type { BoatScene, Moves } from "./scene.js";

/**
 * The plan as it would read with pieces moved, rounded as they would be written: without writing it, so that it costs nothing.
 * @returns undefined where a piece stands on a face: what that comes to only the edit itself tells.
 */
export function movedPlan(
  { plan, byName, things }: BoatScene,
  moves: Moves,
  shows: Lengths,
): Plan | undefined {
  const to = new Map<string, PlanPoint>();
  for (const [name, [x, y, z]] of moves) {
    if (byName.get(name)?.face) return undefined;
    to.set(name, [roundedM(x, shows), roundedM(y, shows), roundedM(z, shows)]);
  }
  const { source } = plan;
  const standing = <T extends { readonly name: string }>(list: readonly T[]): readonly T[] =>
    list.some(({ name }) => to.has(name))
      ? list.map((one) => {
          const standsAtM = to.get(one.name);
          return standsAtM ? { ...one, standsAtM } : one;
        })
      : list;
  const movedGear = (gear: Gear): Gear => {
    const pieces = things.filter(({ group, kind }) => kind === "gear" && group === gear.name);
    if (!pieces.some(({ name }) => to.has(name))) return gear;
    const first = pieces.map(({ name }) => to.get(name)).find((point) => point !== undefined);
    const standsAtM = pieces.flatMap(({ name, at }): PlanPoint[] => {
      const point = to.get(name) ?? at ?? first;
      return point ? [point] : [];
    });
    return { ...gear, standsAtM };
  };
  return {
    ...source,
    batteries: standing(source.batteries),
    chargers: standing(source.chargers),
    converters: standing(source.converters),
    panels: standing(source.panels),
    boxes: standing(source.boxes),
    gear: source.gear.map(movedGear),
    waypoints: source.waypoints.map((one) => {
      const atM = to.get(one.name);
      return atM ? { ...one, atM } : one;
    }),
  };
}
