import type { ConditionResult, ProtectionCondition } from "../types.js";

/** One result; figures that are missing or endless are left out, since a table cannot print them. */
export function conditionResult(
  condition: ProtectionCondition,
  state: ConditionResult["state"],
  unit: ConditionResult["unit"],
  figure?: number,
  limit?: number,
  binds?: string,
): ConditionResult {
  const result: { -readonly [K in keyof ConditionResult]: ConditionResult[K] } = { condition, state, unit };
  if (figure !== undefined && Number.isFinite(figure)) result.figure = figure;
  if (limit !== undefined && Number.isFinite(limit)) result.limit = limit;
  if (binds !== undefined) result.binds = binds;
  return result;
}
