import type { BatteryFigures, CornerFigures } from "../circuit/results.js";
import type { Figures } from "../figures-types.js";
import { internalResistance } from "../reference/batteries.js";
import { resting } from "../reference/battery-voltage.js";
import { assumedFor } from "./assumed-for.js";
import type { Working } from "./working.js";

/** Voltage at the posts: what the battery has at rest, less what its own resistance takes. */
export function batteryVoltageWorking(
  figures: Figures,
  corner: CornerFigures,
  battery: BatteryFigures,
): Working {
  const made = figures.plan.batteries.find(({ name }) => name === battery.id);
  const innerOhm = battery.currentA === 0 ? undefined : (battery.emfV - battery.terminalV) / battery.currentA;
  return {
    at: battery.id,
    value: battery.terminalV,
    unit: "V",
    says: "battery voltage",
    formula: "U = E − I · R_i",
    given: [
      { term: "resting voltage", value: battery.emfV, unit: "V" },
      {
        term: "current",
        value: battery.currentA,
        unit: "A",
        figure: { of: "battery current", battery: battery.id, corner: corner.name },
      },
      ...(innerOhm === undefined
        ? []
        : [{ term: "internal resistance", value: innerOhm * 1000, unit: "mΩ" } as const]),
    ],
    sources: made ? [resting[made.chemistry].source, internalResistance.source] : [],
    assumptions: assumedFor(figures, [battery.id], ["internal resistance", "voltage", "reserve"]),
  };
}

/** What the battery gives: all gear on it, and what the way there wastes. */
export function batteryCurrentWorking(
  figures: Figures,
  corner: CornerFigures,
  battery: BatteryFigures,
): Working {
  const own = corner.gear.filter(({ source, on, inTurn }) => source === battery.id && on && !inTurn);
  const behind = corner.converters.filter(({ id }) => supplyOf(figures, id) === battery.id);
  return {
    at: battery.id,
    value: battery.currentA,
    unit: "A",
    says: "battery current",
    formula: "I = Σ I_gear",
    given: [],
    table: {
      columns: [{ term: "current", unit: "A" }],
      rows: [
        ...own.map(({ id, currentA }) => ({
          name: id,
          figure: { of: "gear current", gear: id, corner: corner.name } as const,
          cells: [currentA],
        })),
        ...behind.map(({ id, inputA }) => ({ name: id, cells: [inputA] })),
      ],
    },
    sources: [],
    assumptions: [],
  };
}

function supplyOf(figures: Figures, converter: string): string | undefined {
  return figures.plan.circuits.get(figures.plan.circuitOf.get(converter) ?? "")?.supply;
}
