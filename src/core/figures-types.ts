import type { ProtectionFigures } from "./circuit/protection/types.js";
import type { CornerFigures } from "./circuit/results.js";
import type { SizeResult } from "./circuit/sizes/types.js";
import type { GearPath } from "./circuit/topology/gear-paths.js";
import type { ChargingFigures, OutingFigures } from "./energy/types.js";
import type { Finding } from "./findings/finding.js";
import type { Assumption, CompletePlan } from "./plan/completed.js";
import type { JudgedReading } from "./proving/taken/judge.js";

/** Everything worked out from one plan. */
export interface Figures {
  readonly plan: CompletePlan;
  readonly assumptions: readonly Assumption[];
  readonly sizes: SizeResult;
  readonly protection: readonly ProtectionFigures[];
  readonly corners: readonly CornerFigures[];
  /** By which branches each piece of gear hangs on its supply. */
  readonly paths: readonly GearPath[];
  readonly outings: readonly OutingFigures[];
  readonly charging: readonly ChargingFigures[];
  /** Readings on record, compared with a sound boat; left out where there are none. */
  readonly readings?: readonly JudgedReading[];
  readonly findings: readonly Finding[];
}
