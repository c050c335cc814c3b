import { backing, cutting, type Material } from "../../reference/drilling.js";
import type { HullProblem } from "../problem.js";

/** How to make a hole. */
export interface HoleTool {
  readonly pilotMm: number;
  readonly tool: "twist drill" | "step drill" | "hole saw";
  /** Turns a minute, where a figure is known. */
  readonly rpm?: number;
  readonly pointAngleDeg?: number;
  /** What to mind; the sentences stand in `words/`. */
  readonly mind: readonly (
    | "back with wood"
    | "peck and clear chips"
    | "no cutting oil"
    | "round the rim"
    | "keep off moulded corners"
    | "seal the end grain"
    | "isolate from the fitting"
    | "dust of glass"
    | "stop the step with tape"
  )[];
}

/**
 * Pilot and tool by material, sheet and hole.
 * @throws RangeError if a length is not above zero.
 */
export function toolFor(material: Material, sheetMm: number, holeMm: number): HoleTool {
  if (!(sheetMm > 0)) throw new RangeError(`sheet must be > 0 mm, got ${sheetMm}`);
  if (!(holeMm > 0)) throw new RangeError(`hole must be > 0 mm, got ${holeMm}`);
  const { stepDrill, twistDrill, pilot } = cutting;
  const stepped =
    holeMm >= stepDrill.minHoleMm &&
    holeMm <= stepDrill.maxHoleMm &&
    sheetMm <= stepDrill.maxSheetMm &&
    isStep(holeMm);
  const plastic = material === "polycarbonate" || material === "acrylic";
  // a step drill leaves a round hole in thin sheet, where a twist drill grabs and tears
  const tool = stepped ? "step drill" : holeMm <= twistDrill.maxHoleMm ? "twist drill" : "hole saw";
  const rpm =
    tool === "step drill"
      ? cutting.stepDrillSpeed.minRpm
      : tool === "twist drill" && plastic
        ? plasticRpm(holeMm)
        : undefined;
  const pointAngleDeg =
    tool !== "twist drill"
      ? undefined
      : material === "polycarbonate"
        ? cutting.pointAngle.polycarbonateDeg
        : material === "acrylic"
          ? cutting.pointAngle.acrylicDeg
          : undefined;
  return {
    pilotMm: Math.min(pilot.mm, holeMm),
    tool,
    ...(rpm === undefined ? {} : { rpm }),
    ...(pointAngleDeg === undefined ? {} : { pointAngleDeg }),
    mind: [
      ...(tool === "step drill" ? (["stop the step with tape"] as const) : []),
      ...(plastic ? (["back with wood", "peck and clear chips"] as const) : []),
      ...(material === "polycarbonate" ? (["no cutting oil"] as const) : []),
      ...(material === "polyethylene" ? (["round the rim", "keep off moulded corners"] as const) : []),
      ...(material === "wood" ? (["seal the end grain"] as const) : []),
      ...(material === "aluminium" || material === "steel"
        ? (["round the rim", "isolate from the fitting"] as const)
        : []),
      ...(material === "glass" ? (["dust of glass"] as const) : []),
    ],
  };
}

/** Is the wall so thin that the fitting's clamp should be spread? Undefined: not known for this material. */
export function backingProblem(hole: string, material: Material, sheetMm: number): HullProblem[] {
  if (!(sheetMm > 0)) throw new RangeError(`sheet must be > 0 mm, got ${sheetMm}`);
  const limit = backing.belowMm[material];
  return sheetMm < limit ? [{ problem: "needs backing", at: hole, figure: sheetMm, limit, unit: "mm" }] : [];
}

/** Does a usual step drill have this step: even millimetres, or one of the gland steps? */
function isStep(holeMm: number): boolean {
  const { riseMm, glandStepsMm } = cutting.stepDrill;
  const near = (step: number) => Math.abs(holeMm - step) < 0.05;
  return near(Math.round(holeMm / riseMm) * riseMm) || glandStepsMm.some(near);
}

/** Speed between the rows of the table, straight on a scale of diameters; the end rows beyond it. */
function plasticRpm(holeMm: number): number {
  const { rows } = cutting.plasticSpeeds;
  const next = rows.findIndex((row) => row.holeMm >= holeMm);
  const [high, low] = [rows[next], rows[next - 1]];
  if (next < 0) return rows.at(-1)?.rpm ?? rows[0].rpm;
  if (!high || !low) return rows[0].rpm;
  return low.rpm + ((holeMm - low.holeMm) / (high.holeMm - low.holeMm)) * (high.rpm - low.rpm);
}
