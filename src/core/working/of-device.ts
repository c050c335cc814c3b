import type { ConditionResult, ProtectionFigures } from "../circuit/protection/types.js";
import type { Figures } from "../figures-types.js";
import { deviceDrop } from "../reference/contacts.js";
import { continuousLoad } from "../reference/protection-practice.js";
import { ruleSet } from "../reference/rule-sets.js";
import { largestShort, shortCircuitFormula } from "../reference/short-circuit.js";
import type { Source } from "../reference/source.js";
import { assumedFor } from "./assumed-for.js";
import type { Given, Working } from "./working.js";

/** Why a fuse or breaker has its rating: what it must do, and which ratings do all of it. */
export function ratingWorking(figures: Figures, device: ProtectionFigures): Working {
  const { weakest, nextSmaller } = device;
  const given: Given[] = [
    { term: "load", value: device.loadA, unit: "A" },
    { term: "starting current", value: device.startA, unit: "A" },
  ];
  if (weakest)
    given.push(
      { term: "weakest conductor", value: weakest.sizeKey, at: weakest.id },
      { term: "allowed current", value: weakest.allowedA, unit: "A", at: weakest.id },
    );
  given.push({
    term: "possible ratings",
    value: device.possibleA.length > 0 ? device.possibleA.map((ratingA) => `${ratingA} A`).join(", ") : "–",
  });
  if (nextSmaller)
    given.push({ term: "next smaller", value: `${nextSmaller.ratingA} A`, at: nextSmaller.fails.join(", ") });
  return {
    at: device.id,
    value: device.ratingA,
    unit: "A",
    says: "rating",
    given,
    table: {
      columns: [{ term: "state" }, { term: "load" }, { term: "limit" }],
      rows: device.conditions.map((result) => ({
        name: result.condition,
        figure: { of: "condition", device: device.id, condition: result.condition },
        cells: [result.state, withUnit(result.figure, result.unit), withUnit(result.limit, result.unit)],
      })),
    },
    sources: [...new Set(device.conditions.flatMap((result) => conditionSources(figures, result)))],
    assumptions: assumedFor(figures, [device.of]),
  };
}

/** One condition a device must meet. */
export function conditionWorking(
  figures: Figures,
  device: ProtectionFigures,
  result: ConditionResult,
): Working {
  const given: Given[] = [{ term: "rating", value: device.ratingA, unit: "A" }];
  const push = (term: Given["term"], value: number | undefined, unit: string) => {
    if (value !== undefined) given.push({ term, value, unit });
  };
  push("load", device.loadA, "A");
  if (result.condition === "carries-load") given.push({ term: "factor", value: continuousLoad.maxShare });
  push("short at the device", device.shortAtDeviceA, "A");
  push("short at the far end", device.shortAtFarEndA, "A");
  push("clears within", device.clearsWithinS, "s");
  push("limit", result.limit, result.unit);
  if (result.binds !== undefined) given.push({ term: "weakest conductor", value: result.binds });
  return {
    at: device.id,
    value: result.figure ?? result.state,
    ...(result.figure === undefined ? {} : { unit: result.unit }),
    says: "condition",
    ...(formulas[result.condition] === undefined ? {} : { formula: formulas[result.condition] }),
    given: [{ term: "condition", value: result.condition }, { term: "state", value: result.state }, ...given],
    sources: conditionSources(figures, result),
    assumptions: assumedFor(figures, [device.of]),
  };
}

const formulas: Partial<Record<ConditionResult["condition"], string>> = {
  "carries-load": "I_load ≤ factor · I_rating",
  "protects-weakest": "I_rating ≤ I_allowed",
  "gear-limit": "I_rating ≤ I_maker",
  "clears-far-short": "t(I_short) ≤ (k · A / I_short)²",
  "withstands-short": "∫ I² dt ≤ (k · A)²",
  interrupts: "I_short ≤ I_interrupts",
};

function conditionSources(figures: Figures, { condition }: ConditionResult): Source[] {
  const rules = ruleSet(figures.plan.source.rules);
  switch (condition) {
    case "carries-load":
      return [continuousLoad.source];
    case "protects-weakest":
      return [rules.ampacity.source, rules.maxProtectionShare.source];
    case "clears-far-short":
    case "withstands-short":
      return [shortCircuitFormula.source];
    case "near-source":
      return [rules.maxProtectionDistanceM.source, rules.maxProtectionDistanceEnclosedM.source];
    case "rides-start":
    case "before-main":
      return [deviceDrop.source];
    case "interrupts":
      return [largestShort.source];
    case "gear-limit":
      return [];
    default:
      return condition satisfies never;
  }
}

function withUnit(value: number | undefined, unit: string): string | undefined {
  return value === undefined ? undefined : `${Number(value.toPrecision(3))} ${unit}`;
}
