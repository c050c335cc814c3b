import type { CheckInput } from "./check-input.js";

/** Greatest currents over all corners that have a solution [A], by the plan's ids. */
export interface Currents {
  readonly ways: ReadonlyMap<string, number>;
  /** Sum of a panel's ways within one corner. */
  readonly panels: ReadonlyMap<string, number>;
  readonly batteries: ReadonlyMap<string, number>;
  readonly gear: ReadonlyMap<string, number>;
  /** Outgoing conductors of a run, the greatest of them; and its returns. */
  readonly out: ReadonlyMap<string, number>;
  readonly back: ReadonlyMap<string, number>;
}

/** Follows the corners once and keeps the greatest current of each thing. */
export function currentsOf({ corners, plan }: Pick<CheckInput, "corners" | "plan">): Currents {
  const ways = new Map<string, number>();
  const panels = new Map<string, number>();
  const batteries = new Map<string, number>();
  const gear = new Map<string, number>();
  const out = new Map<string, number>();
  const back = new Map<string, number>();
  const keep = (table: Map<string, number>, id: string, currentA: number) => {
    if (!(Math.abs(currentA) <= (table.get(id) ?? 0))) table.set(id, Math.abs(currentA));
  };
  for (const corner of corners) {
    if (corner.status !== "solved") continue;
    const wayA = new Map<string, number>();
    for (const { id, currentA } of corner.ways) {
      wayA.set(id, currentA);
      keep(ways, id, currentA);
    }
    for (const panel of plan.panels) {
      let sumA = 0;
      for (const way of panel.ways) sumA += wayA.get(`${panel.name} / ${way.name}`) ?? 0;
      keep(panels, panel.name, sumA);
    }
    for (const { id, currentA } of corner.batteries) keep(batteries, id, currentA);
    for (const { id, currentA } of corner.gear) keep(gear, id, currentA);
    for (const { id, of, currentA } of corner.branches) {
      if (id.endsWith(" / out")) keep(out, of, currentA);
      else if (id.endsWith("return")) keep(back, of, currentA);
    }
  }
  return { ways, panels, batteries, gear, out, back };
}
