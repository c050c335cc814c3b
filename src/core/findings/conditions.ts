import type { ConditionResult, ProtectionCondition, ProtectionFigures } from "../circuit/protection/types.js";
import type { Edit } from "../plan/edits/edit.js";
import type { Facts } from "./facts.js";
import { runsFromBattery } from "./feeds.js";
import type { Finding, Level, WorkingStep } from "./finding.js";
import { kindRemedies, placeRemedies, ratingRemedies } from "./remedies.js";
import type { WorkingSymbol } from "./working-symbols.js";

/** Is it the main of a battery or a panel? */
export function isMain({ batteries, panels }: Facts, { of }: ProtectionFigures): boolean {
  return batteries.has(of) || panels.has(of);
}

/** A spare way, or a main past which every run has a fuse of its own: there is no conductor that could be harmed. */
function guardsNothing(facts: Facts, { of }: ProtectionFigures): boolean {
  if (facts.batteries.has(of))
    return runsFromBattery(facts, of).every((run) => run.beforeMain || run.protection !== undefined);
  return !facts.panels.has(of) && !facts.runs.has(of) && !facts.carried.has(of);
}

/** A rule's check that reports one condition of protective devices wherever it fails or could not be judged. */
export function conditionFindings(
  rule: string,
  condition: ProtectionCondition,
  level: Level,
  applies: (facts: Facts, device: ProtectionFigures) => boolean = () => true,
) {
  return (facts: Facts): Finding[] => {
    const found: Finding[] = [];
    for (const device of facts.protection)
      for (const result of device.conditions) {
        if (result.condition !== condition || result.state === "holds") continue;
        if (applies(facts, device) && !guardsNothing(facts, device))
          found.push(findingOf(rule, level, facts, device, result));
      }
    return found;
  };
}

function findingOf(
  rule: string,
  level: Level,
  facts: Facts,
  device: ProtectionFigures,
  { condition, state, figure, limit, unit, binds }: ConditionResult,
): Finding {
  const fails = state === "fails";
  return {
    rule,
    level: fails ? level : "unchecked",
    at: device.of,
    ...(figure === undefined ? {} : { figure }),
    ...(limit === undefined ? {} : { limit }),
    unit,
    terms: {
      device: device.device,
      rating: `${device.ratingA} A`,
      ...(binds === undefined ? {} : { binds }),
    },
    ...(fails ? { working: working(device), remedies: remediesFor(facts, device, condition, limit) } : {}),
  };
}

function remediesFor(
  facts: Facts,
  device: ProtectionFigures,
  condition: ProtectionCondition,
  limit: number | undefined,
): Edit[] {
  if (condition === "interrupts") return kindRemedies(facts, device);
  return condition === "near-source" ? placeRemedies(facts, device, limit) : ratingRemedies(facts, device);
}

function working(device: ProtectionFigures): WorkingStep[] {
  const amps: [WorkingSymbol, number | undefined][] = [
    ["rating", device.ratingA],
    ["I load", device.loadA],
    ["I start", device.startA],
    ["weakest conductor allows", device.weakest?.allowedA],
    ["I short at the device", device.shortAtDeviceA],
    ["I short at the far end", device.shortAtFarEndA],
  ];
  return amps.flatMap(([symbol, value]) => (value === undefined ? [] : [{ symbol, value, unit: "A" }]));
}
