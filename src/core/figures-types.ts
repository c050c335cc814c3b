import type { ProtectionFigures } from "./circuit/protection/types.js";
import type { CornerFigures } from "./circuit/results.js";
import type { SizeResult } from "./circuit/sizes/types.js";
import type { ChargingFigures, OutingFigures } from "./energy/types.js";
import type { Finding } from "./findings/finding.js";
import type { Assumption, CompletePlan } from "./plan/completed.js";

/** Everything worked out from one plan. */
export interface Figures {
  readonly plan: CompletePlan;
  readonly assumptions: readonly Assumption[];
  readonly sizes: SizeResult;
  readonly protection: readonly ProtectionFigures[];
  readonly corners: readonly CornerFigures[];
  readonly outings: readonly OutingFigures[];
  readonly charging: readonly ChargingFigures[];
  readonly findings: readonly Finding[];
}
