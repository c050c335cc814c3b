import type { GearFigures } from "./circuit/results.js";
import type { Figures } from "./figures-types.js";
import { type Level, levels } from "./findings/finding.js";

/** The three things one wants in sight at all times. */
export interface Ledger {
  /** The outing and battery that reach their reserve first when the outing goes on; undefined: none does. */
  readonly leastHours?: {
    readonly hours: number;
    readonly battery: string;
    readonly outing: string;
    readonly within: boolean;
  };
  /** The gear nearest to its drop limit, or furthest over it, in the worst-drop corner. */
  readonly worstDrop?: { readonly gear: GearFigures; readonly limitShare: number };
  readonly counts: Readonly<Record<Level, number>>;
}

/** The ledger line of a plan: hours left, worst drop against its limit, findings by level. */
export function ledgerOf(figures: Figures): Ledger {
  const leastHours = leastHoursOf(figures);
  const worstDrop = worstDropOf(figures);
  const counts = Object.fromEntries(levels.map((level) => [level, 0])) as Record<Level, number>;
  for (const { level } of figures.findings) counts[level] += 1;
  return { ...(leastHours && { leastHours }), ...(worstDrop && { worstDrop }), counts };
}

function leastHoursOf({ outings }: Figures): Ledger["leastHours"] {
  let least: Ledger["leastHours"];
  for (const { name, lastsH, hoursToReserve } of outings) {
    for (const { battery, hours } of hoursToReserve) {
      if (!Number.isFinite(hours) || (least !== undefined && hours >= least.hours)) continue;
      least = { hours, battery, outing: name, within: hours < lastsH };
    }
  }
  return least;
}

function worstDropOf({ corners, plan }: Figures): Ledger["worstDrop"] {
  const limits = new Map(plan.gear.map((piece) => [piece.name, piece.maxDropShare]));
  const worst = corners.find(({ name }) => name === "worst drop");
  let nearest: Ledger["worstDrop"];
  for (const gear of worst?.gear ?? []) {
    const limitShare = limits.get(gear.id);
    if (!gear.on || limitShare === undefined || worst?.status !== "solved") continue;
    const over = gear.dropShare / limitShare;
    if (nearest === undefined || over > nearest.gear.dropShare / nearest.limitShare)
      nearest = { gear, limitShare };
  }
  return nearest;
}
