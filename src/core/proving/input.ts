import type { ProtectionFigures } from "../circuit/protection/types.js";
import type { GearPath } from "../circuit/topology/gear-paths.js";
import type { CompletePlan } from "../plan/completed.js";

/** What proving asks of the figures of a plan; `Figures` fit as they are. */
export interface ProvingInput {
  readonly plan: CompletePlan;
  readonly protection: readonly ProtectionFigures[];
  readonly paths: readonly GearPath[];
}
