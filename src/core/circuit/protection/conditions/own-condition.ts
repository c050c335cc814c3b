import type { PreparedGuard } from "../prepared.js";
import type { ConditionResult, ProtectionCondition } from "../types.js";

/** A condition that depends on the device's own rating alone. */
export interface OwnCondition {
  readonly condition: ProtectionCondition;
  /** Does this rating break it? Asked of every standard rating of every device, so it makes no result. */
  readonly fails: (prepared: PreparedGuard, ratingA: number) => boolean;
  /** Undefined where it does not apply. */
  readonly result: (prepared: PreparedGuard, ratingA: number) => ConditionResult | undefined;
}
