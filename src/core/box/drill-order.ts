import { drillSizes } from "../reference/boxes.js";
import type { Placed } from "./entry-rules.js";
import type { BoxBody, FaceName } from "./face.js";

export type DrillTool = "punch" | "twist drill" | "step drill" | "hole saw" | "deburring tool";

/** One tool at a time, face by face: a tool is put away after its last hole. */
export interface DrillStep {
  readonly tool: DrillTool;
  readonly diameterMm?: number;
  readonly face: FaceName;
  readonly entries: readonly string[];
  /** What holds the wall meanwhile. */
  readonly support: readonly ("lid on" | "block behind wall")[];
}

/**
 * Order of drilling: every centre punched, every pilot, then sizes from small to large, so that the wall stays stiff as
 * long as may be; then every edge. The lid stays on and keeps the box square; sheet and plastic get a block behind.
 */
export function drillOrder(box: BoxBody, placed: readonly Placed[]): DrillStep[] {
  const faces = [...new Set(placed.map((entry) => entry.on))];
  const metal = box.material === "cast aluminium" || box.material === "stainless steel";
  const support = metal ? (["lid on"] as const) : (["lid on", "block behind wall"] as const);
  const along = (on: FaceName): Placed[] =>
    placed.filter((entry) => entry.on === on).sort((a, b) => a.x - b.x || a.y - b.y);
  const ids = (list: readonly Placed[]): string[] => list.map((entry) => entry.id);
  const steps: DrillStep[] = [];
  for (const face of faces) steps.push({ tool: "punch", face, entries: ids(along(face)), support });
  for (const face of faces) {
    steps.push({
      tool: "twist drill",
      diameterMm: drillSizes.pilotMm,
      face,
      entries: ids(along(face)),
      support,
    });
  }
  const sizes = [...new Set(placed.map((entry) => entry.holeMm))].sort((a, b) => a - b);
  for (const diameterMm of sizes) {
    if (diameterMm <= drillSizes.pilotMm) continue;
    for (const face of faces) {
      const entries = ids(along(face).filter((entry) => entry.holeMm === diameterMm));
      if (entries.length > 0) steps.push({ tool: toolFor(diameterMm), diameterMm, face, entries, support });
    }
  }
  for (const face of faces)
    steps.push({ tool: "deburring tool", face, entries: ids(along(face)), support: [] });
  return steps;
}

function toolFor(diameterMm: number): DrillTool {
  if (diameterMm <= drillSizes.maxTwistMm) return "twist drill";
  return diameterMm <= drillSizes.maxStepMm ? "step drill" : "hole saw";
}
