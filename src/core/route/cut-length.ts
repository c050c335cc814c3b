import type { CompleteRun } from "../plan/completed.js";
import type { Shows } from "../plan/model/plan.js";
import { type RunEnd, type SlackPart, slackParts } from "../way/slack.js";

export interface CutLengthAnswer {
  readonly routeM: number;
  readonly start: readonly SlackPart[];
  readonly end: readonly SlackPart[];
  readonly slackM: number;
  /** Rounded up to what one marks and cuts [m]. */
  readonly cutM: number;
  readonly cutMm: number;
}

/** What the owner's tape is laid to when a cable is cut: see `cutLength`. */
export const cutStep = ({ lengths }: Pick<Shows, "lengths">): number | "inch" =>
  lengths === "inches" ? "inch" : 10;

/** What is cut for a run, as the run sheet has it [m]. */
export const runCutM = ({ lengthM, ends }: CompleteRun, shows: Pick<Shows, "lengths">): number =>
  cutLength(lengthM, ends.start, ends.end, cutStep(shows)).cutM;

/**
 * Length to cut: the way, the slack at both ends, rounded up to a step of the owner's tape.
 * @param step What lengths are rounded up to: whole millimetres, or whole inches (kept as the nearest whole millimetre).
 */
export function cutLength(
  routeM: number,
  start: RunEnd,
  end: RunEnd,
  step: number | "inch" = 10,
): CutLengthAnswer {
  if (!(routeM >= 0)) throw new RangeError(`way must be ≥ 0 m, got ${routeM}`);
  if (step !== "inch" && !(Number.isInteger(step) && step >= 1))
    throw new RangeError(`step must be a whole number ≥ 1 mm, got ${step}`);
  const parts = { start: slackParts(start), end: slackParts(end) };
  const slackM = [...parts.start, ...parts.end].reduce((sum, part) => sum + part.lengthM, 0);
  // A millionth of a millimetre off, so that 3.48 m does not become 3.49 m by rounding of binary fractions.
  const stepMm = step === "inch" ? 25.4 : step;
  const steps = Math.ceil(((routeM + slackM) * 1000) / stepMm - 1e-6);
  const cutMm = Math.round(steps * stepMm);
  return { routeM, ...parts, slackM, cutM: cutMm / 1000, cutMm };
}
