import type { BranchFigures, CornerFigures, Part } from "../circuit/results.js";
import type { Figures } from "../figures-types.js";
import {
  layAllowance,
  makingAllowance,
  tinAllowance,
  tinnedStrandedAwg,
} from "../reference/awg-conductors.js";
import { deviceDrop } from "../reference/contacts.js";
import { copper } from "../reference/copper.js";
import { jointsSource } from "../reference/joints.js";
import { flexibleCopper } from "../reference/metric-conductors.js";
import type { Source } from "../reference/source.js";
import { assumedFor } from "./assumed-for.js";
import type { Given, Working } from "./working.js";

/** Drop along one branch: the sum of its parts' resistance, times its current. */
export function branchDropWorking(figures: Figures, corner: CornerFigures, branch: BranchFigures): Working {
  const ohm = branch.parts.reduce((sum, part) => sum + part.ohm, 0);
  return {
    at: branch.id,
    value: Math.abs(branch.dropV),
    unit: "V",
    says: "branch drop",
    formula: "ΔU = I · R,  R = Σ R_part,  R_conductor = R₂₀ · (1 + α · (T − 20 °C)) · L",
    given: [
      {
        term: "current",
        value: Math.abs(branch.currentA),
        unit: "A",
        figure: { of: "branch current", branch: branch.id, corner: corner.name },
      },
      { term: "resistance", value: ohm * 1000, unit: "mΩ" },
      { term: "copper temperature", value: corner.copperC, unit: "°C" },
      ...slackGiven(figures, branch),
    ],
    table: {
      columns: [
        { term: "size" },
        { term: "length", unit: "m" },
        { term: "resistance at 20 °C", unit: "mΩ/m" },
        { term: "resistance", unit: "mΩ" },
      ],
      rows: branch.parts.map((part) => ({ name: partName(part), cells: partCells(part) })),
    },
    sources: sourcesOf(branch.parts),
    assumptions: assumedFor(figures, [branch.of]),
  };
}

/** The slack that stands in the length of a run's conductor. */
function slackGiven({ plan }: Figures, { of }: BranchFigures): Given[] {
  const run = plan.runs.find(({ name }) => name === of);
  return run === undefined ? [] : [{ term: "slack", value: run.pulledM - run.lengthM, unit: "m" }];
}

/** Current of one branch: that of all gear it leads to. */
export function branchCurrentWorking(
  figures: Figures,
  corner: CornerFigures,
  branch: BranchFigures,
): Working {
  const beyond = figures.paths.filter(({ out, back }) =>
    [...out, ...back].some((step) => step.branch === branch.id),
  );
  const names = new Set(beyond.map(({ gear }) => gear));
  const gear = corner.gear.filter(({ id, on, inTurn }) => names.has(id) && on && !inTurn);
  return {
    at: branch.id,
    value: Math.abs(branch.currentA),
    unit: "A",
    says: "branch current",
    formula: "I = Σ I_gear",
    given: [],
    table: {
      columns: [{ term: "current", unit: "A" }],
      rows: gear.map(({ id, currentA }) => ({
        name: id,
        figure: { of: "gear current", gear: id, corner: corner.name },
        cells: [currentA],
      })),
    },
    sources: [],
    assumptions: assumedFor(figures, names, ["behaves as"]),
  };
}

function partName(part: Part): string {
  switch (part.kind) {
    case "conductor":
      return part.sizeKey;
    case "joint":
      return part.joint;
    case "protection":
      return `${part.ratingA} A`;
    case "switch":
      return "switch";
    default:
      return part satisfies never;
  }
}

function partCells(part: Part): (number | string | undefined)[] {
  if (part.kind !== "conductor") return [undefined, undefined, undefined, part.ohm * 1000];
  return [part.sizeKey, part.lengthM, part.ohmPerMAt20C * 1000, part.ohm * 1000];
}

/** Where the resistances of some parts come from, each source once. */
export function sourcesOf(parts: readonly Part[]): Source[] {
  const sources = new Set<Source>();
  for (const part of parts) {
    if (part.kind === "joint") sources.add(jointsSource);
    else if (part.kind !== "conductor") sources.add(deviceDrop.source);
    else if (part.sizeKey.endsWith("AWG"))
      for (const { source } of [copper, layAllowance, makingAllowance, tinAllowance, tinnedStrandedAwg])
        sources.add(source);
    else for (const { source } of [copper, flexibleCopper]) sources.add(source);
  }
  return [...sources];
}
