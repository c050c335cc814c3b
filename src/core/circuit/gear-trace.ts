import type { CompletePlan } from "../plan/completed.js";
import type { BranchFigures, CornerFigures } from "./results.js";
import type { GearPath } from "./topology/gear-paths.js";

/** One stretch that current passes on its way to a piece of gear or back. */
export interface TraceStep {
  readonly leg: "out" | "back";
  readonly branch: BranchFigures;
  /** Lost in this stretch, counted along the way [V]. */
  readonly dropV: number;
  /** At the far end of the stretch, against the negative terminal of the supply [V]. */
  readonly againstNegativeV: number;
}

/** Both legs between a piece of gear and what feeds it, in one corner. */
export interface GearTrace {
  readonly gear: string;
  /** Battery or converter. */
  readonly supply: string;
  readonly supplyV: number;
  /** From the positive terminal out to the gear, then back to the negative one. */
  readonly steps: readonly TraceStep[];
  /** Is the gear on in this corner? Where not, the stretches show what else flows through them. */
  readonly on: boolean;
}

interface Known {
  readonly plan: Pick<CompletePlan, "circuitOf" | "circuits" | "converters">;
  readonly paths: readonly GearPath[];
}

/** Voltage a circuit starts from in a corner: at the battery's posts or the converter's output [V]; undefined where neither is known. */
export function supplyVoltage(
  plan: Known["plan"],
  corner: CornerFigures,
  circuit: string,
): number | undefined {
  const supply = plan.circuits.get(circuit)?.supply;
  const battery = corner.batteries.find(({ id }) => id === supply);
  if (battery) return battery.terminalV;
  const off = corner.converters.find(({ id }) => id === supply)?.off;
  return off === true ? undefined : plan.converters.find(({ name }) => name === supply)?.outputV;
}

/** Follows both legs of a piece of gear. Undefined where nothing feeds it, or where the corner has no solution. */
export function traceGear(
  { plan, paths }: Known,
  corner: CornerFigures,
  gear: string,
): GearTrace | undefined {
  const path = paths.find((one) => one.gear === gear);
  const circuit = plan.circuitOf.get(gear);
  if (!path || circuit === undefined || corner.status !== "solved") return undefined;
  const supplyV = supplyVoltage(plan, corner, circuit);
  if (supplyV === undefined) return undefined;
  const branches = new Map(corner.branches.map((branch) => [branch.id, branch]));
  const stretch = (leg: TraceStep["leg"], steps: GearPath["out"]) =>
    steps.flatMap(({ branch: id, along }) => {
      const branch = branches.get(id);
      return branch ? [{ leg, branch, dropV: branch.dropV * along }] : [];
    });
  let againstV = supplyV;
  const out = stretch("out", path.out).map((step): TraceStep => {
    againstV -= step.dropV;
    return { ...step, againstNegativeV: againstV };
  });
  const back = stretch("back", path.back);
  againstV = back.reduce((sum, { dropV }) => sum + dropV, 0);
  const steps = back.map((step): TraceStep => {
    againstV -= step.dropV;
    return { ...step, againstNegativeV: Math.max(againstV, 0) };
  });
  const found = corner.gear.find(({ id }) => id === gear);
  return {
    gear,
    supply: plan.circuits.get(circuit)?.supply ?? "",
    supplyV,
    steps: [...out, ...steps],
    on: found?.on === true && found.inTurn !== true,
  };
}
