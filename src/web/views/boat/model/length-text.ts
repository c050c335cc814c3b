import type { PlanPoint } from "../../../../core/plan/model/form.js";
import type { Shows } from "../../../../core/plan/model/plan.js";
import { writeFeetInches } from "../../../../core/quantity/write.js";

export type Lengths = Pick<Shows, "lengths">;

/** A length as it goes into the plan: to 1/16 in, or to 1 mm. */
export function lengthText(lengthM: number, shows: Lengths): string {
  if (shows.lengths === "inches") return writeFeetInches(lengthM, 16);
  return `${Math.round(lengthM * 1000) || 0} mm`;
}

/** The length as it reads back from what is written. */
export function roundedM(lengthM: number, { lengths }: Lengths): number {
  return lengths === "inches"
    ? (Math.round((lengthM / 0.0254) * 16) / 16) * 0.0254
    : Math.round(lengthM * 1000) / 1000;
}

/** A place in the boat as it goes into the plan: `[790 mm, -120 mm, 60 mm]`. */
export function pointText(point: PlanPoint, shows: Lengths): string {
  return `[${point.map((length) => lengthText(length, shows)).join(", ")}]`;
}

/** One step of the arrow keys [m], with nothing, with shift, and with alt held. */
export function nudgeM(shows: Lengths, held: "plain" | "far" | "fine"): number {
  const inches = shows.lengths === "inches";
  if (held === "far") return inches ? 0.0254 * 4 : 0.1;
  if (held === "fine") return inches ? 0.0254 / 16 : 0.001;
  return inches ? 0.0254 / 2 : 0.01;
}
