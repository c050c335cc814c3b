import type { ProtectionFigures } from "../circuit/protection/types.js";
import type { CornerFigures } from "../circuit/results.js";
import type { SizeResult } from "../circuit/sizes/types.js";
import type { ChargingFigures, OutingFigures } from "../energy/types.js";
import type { HullFigures } from "../hull/figures.js";
import type { LayoutFigures } from "../parts/layout-types.js";
import type { CompletePlan } from "../plan/completed.js";
import type { JudgedReading } from "../proving/taken/judge.js";
import type { RuleSet } from "../reference/rule-sets.js";

/** Everything the rules look at. Ids are the plan's own in every table. */
export interface CheckInput {
  readonly plan: CompletePlan;
  readonly ruleSet: RuleSet;
  readonly sizes: SizeResult;
  readonly protection: readonly ProtectionFigures[];
  readonly corners: readonly CornerFigures[];
  readonly outings: readonly OutingFigures[];
  readonly charging: readonly ChargingFigures[];
  /** What is cut, drilled and bought; left out where only the electrics were worked out. */
  readonly layout?: LayoutFigures;
  /** Form, marks, holes and float; left out where only the electrics were worked out. */
  readonly hull?: HullFigures;
  /** Readings on record, compared with a sound boat; left out where there are none. */
  readonly readings?: readonly JudgedReading[];
}
