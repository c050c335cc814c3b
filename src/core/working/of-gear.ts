import type { BranchFigures, CornerFigures, GearFigures } from "../circuit/results.js";
import type { Figures } from "../figures-types.js";
import { ruleSet } from "../reference/rule-sets.js";
import type { Source } from "../reference/source.js";
import { assumedFor } from "./assumed-for.js";
import { sourcesOf } from "./of-branch.js";
import type { Given, Working } from "./working.js";

/** Drop between source and gear: what each branch on the way there and back loses. */
export function gearDropWorking(figures: Figures, corner: CornerFigures, gear: GearFigures): Working {
  const circuit = figures.plan.circuits.get(figures.plan.circuitOf.get(gear.id) ?? "");
  const piece = figures.plan.gear.find(({ name }) => name === gear.id);
  const branches = new Map(corner.branches.map((branch) => [branch.id, branch]));
  const path = figures.paths.find((one) => one.gear === gear.id);
  const steps = [...(path?.out ?? []), ...(path?.back ?? [])].flatMap(({ branch, along }) => {
    const found = branches.get(branch);
    return found ? [{ branch: found, dropV: found.dropV * along }] : [];
  });
  const given: Given[] = [
    { term: "drop", value: gear.dropV, unit: "V" },
    { term: "nominal voltage", value: circuit?.nominalV ?? Number.NaN, unit: "V" },
    { term: "copper temperature", value: corner.copperC, unit: "°C" },
  ];
  if (piece) given.push({ term: "drop limit", value: piece.maxDropShare * 100, unit: "%" });
  return {
    at: gear.id,
    value: gear.dropShare * 100,
    unit: "%",
    says: gear.inTurn ? "in its own turn" : "gear drop",
    formula: "ΔU = Σ I · R,  ΔU / U_nominal",
    given,
    ...(gear.inTurn ? {} : { table: pathTable(corner, steps) }),
    sources: [
      ...limitSources(figures, piece?.role),
      ...sourcesOf(steps.flatMap(({ branch }) => branch.parts)),
    ],
    assumptions: assumedFor(figures, [gear.id, ...steps.map(({ branch }) => branch.of)]),
  };
}

function pathTable(
  corner: CornerFigures,
  steps: readonly { readonly branch: BranchFigures; readonly dropV: number }[],
): NonNullable<Working["table"]> {
  return {
    columns: [
      { term: "current", unit: "A" },
      { term: "resistance", unit: "mΩ" },
      { term: "drop", unit: "V" },
    ],
    rows: steps.map(({ branch, dropV }) => ({
      name: branch.id,
      figure: { of: "branch drop", branch: branch.id, corner: corner.name },
      cells: [Math.abs(branch.currentA), branch.parts.reduce((sum, { ohm }) => sum + ohm, 0) * 1000, dropV],
    })),
  };
}

function limitSources(figures: Figures, role: string | undefined): Source[] {
  const rules = ruleSet(figures.plan.source.rules);
  if (role === undefined) return [];
  const safety = rules.safetyRoles.value.includes(role);
  return [safety ? rules.maxDropSafety.source : rules.maxDropOther.source];
}

/** Voltage at the gear: that of its source less the drop. */
export function gearVoltageWorking(figures: Figures, corner: CornerFigures, gear: GearFigures): Working {
  const battery = corner.batteries.find(({ id }) => id === gear.source);
  return {
    at: gear.id,
    value: gear.voltageV,
    unit: "V",
    says: "gear voltage",
    formula: "U = U_source − ΔU",
    given: [
      {
        term: "supply voltage",
        value: gear.voltageV + gear.dropV,
        unit: "V",
        at: gear.source,
        ...(battery
          ? { figure: { of: "battery voltage", battery: battery.id, corner: corner.name } as const }
          : {}),
      },
      {
        term: "drop",
        value: gear.dropV,
        unit: "V",
        figure: { of: "gear drop", gear: gear.id, corner: corner.name },
      },
    ],
    sources: [],
    assumptions: assumedFor(figures, [gear.id], ["works"]),
  };
}

const currentFormula = {
  power: "I = P / U",
  current: "I = I_given",
  motor: "I = I_given",
  resistance: "I = U / R",
} as const;

/** Current of the gear at its own voltage. */
export function gearCurrentWorking(figures: Figures, corner: CornerFigures, gear: GearFigures): Working {
  const piece = figures.plan.gear.find(({ name }) => name === gear.id);
  const given: Given[] = [];
  if (piece) {
    given.push({ term: "behaviour", value: piece.behaviour }, { term: "draw", ...drawn(piece.draw) });
    if (piece.draw.kind !== "resistance" && piece.draw.atV !== undefined)
      given.push({ term: "nominal voltage", value: piece.draw.atV, unit: "V" });
  }
  given.push({
    term: "gear voltage",
    value: gear.voltageV,
    unit: "V",
    figure: { of: "gear voltage", gear: gear.id, corner: corner.name },
  });
  return {
    at: gear.id,
    value: gear.currentA,
    unit: "A",
    says: "gear current",
    ...(piece ? { formula: currentFormula[piece.behaviour] } : {}),
    given,
    sources: [],
    assumptions: assumedFor(figures, [gear.id], ["behaves as"]),
  };
}

function drawn(draw: Figures["plan"]["gear"][number]["draw"]): { value: number; unit: string } {
  switch (draw.kind) {
    case "power":
      return { value: draw.powerW, unit: "W" };
    case "current":
      return { value: draw.currentA, unit: "A" };
    case "resistance":
      return { value: draw.resistanceOhm, unit: "Ω" };
    default:
      return draw satisfies never;
  }
}
