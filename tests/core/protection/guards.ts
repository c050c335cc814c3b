import type { Guard, GuardedConductor, GuardRules } from "../../../src/core/circuit/protection/guard.js";
import { judgeGuards } from "../../../src/core/circuit/protection/judge-all.js";
import type { ProtectionFigures } from "../../../src/core/circuit/protection/types.js";

/** An invented lamp way: 16 AWG trunk, thin leads, an AGM battery, everything known. */
export const trunk: GuardedConductor = {
  id: "trunk / out",
  sizeKey: "16 AWG",
  areaMm2: 1.309,
  ampacityA: 25,
  insulationC: 105,
  farLoopOhm: 0.12,
};
export const leads: GuardedConductor = {
  id: "lamp / leads",
  sizeKey: "22 AWG",
  areaMm2: 0.326,
  ampacityA: 5,
  insulationC: 80,
  farLoopOhm: 0.16,
};
export const lampWay: Guard = {
  id: "helm / lamps / fuse",
  of: "helm / lamps",
  device: "blade fuse",
  place: { fromSourceM: 0.05, enclosed: false, startsAt: "bus" },
  loadA: 1.2,
  start: "none",
  conductors: [trunk, leads],
  gear: [{ id: "lamp", maxFuseA: 5 }],
  faults: {
    source: {
      kind: "battery",
      chemistry: "agm",
      maxEmfV: 12.85,
      minEmfV: 12.3,
      minInternalOhm: 0.008,
      maxInternalOhm: 0.014,
      shortCircuitA: 1400,
      assumed: false,
    },
    nearLoopOhm: 0.02,
  },
  nearer: { id: "house / main", device: "bolted fuse", ratingA: 40 },
};

/** One device judged by itself. */
export function judgeGuard(guard: Guard, rules: GuardRules): ProtectionFigures {
  const [figures] = judgeGuards([guard], rules);
  if (figures === undefined) throw new Error(`${guard.id} was not judged`);
  return figures;
}
