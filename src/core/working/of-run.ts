import { sizeOfKey } from "../circuit/conductor/sizes.js";
import { runAmpacity } from "../circuit/guards/run-ampacities.js";
import type { SizeChoice, SizeReason } from "../circuit/sizes/types.js";
import { priceBasis } from "../circuit/sizing/prices.js";
import type { Figures } from "../figures-types.js";
import { ruleSet } from "../reference/rule-sets.js";
import { relativePrice } from "../reference/wire-make.js";
import { assumedFor } from "./assumed-for.js";
import type { Given, Working } from "./working.js";

/** Why a set of conductors has its size. */
export function runSizeWorking(figures: Figures, choice: SizeChoice): Working {
  const { sizes } = figures;
  const given: Given[] = [
    { term: "reason", value: choice.reason.rule },
    ...reasonGiven(choice.reason),
    { term: "current", value: choice.currentA, unit: "A" },
    {
      term: "allowed current",
      value: choice.ampacityA,
      unit: "A",
      figure: { of: "run ampacity", choice: choice.id },
    },
    { term: "length", value: choice.lengthM, unit: "m" },
    { term: "slack", value: slackOfGroup(figures, choice), unit: "m" },
    { term: "area", value: choice.size.areaMm2, unit: "mm²" },
    { term: "aim", value: sizes.aim },
    { term: "proof", value: sizes.proof },
  ];
  const { nextSmaller } = choice;
  if (nextSmaller)
    given.push(
      { term: "next smaller", value: nextSmaller.size.key },
      ...reasonGiven(nextSmaller.reason).map((each) => ({ ...each, at: nextSmaller.size.key })),
    );
  return {
    at: choice.id,
    value: choice.size.key,
    says: "run size",
    given,
    sources: [],
    assumptions: assumedFor(figures, [choice.run]),
  };
}

/** Of all its cables together; it stands in their length. */
const slackOfGroup = ({ plan }: Figures, choice: SizeChoice): number =>
  plan.runs
    .filter(({ group }) => group === choice.run)
    .reduce((sum, { lengthM, pulledM }) => sum + pulledM - lengthM, 0);

function reasonGiven(reason: SizeReason): Given[] {
  switch (reason.rule) {
    case "drop":
      return [
        { term: "drop share", value: reason.dropShare * 100, unit: "%", at: reason.gear },
        { term: "drop limit", value: reason.limitShare * 100, unit: "%", at: reason.gear },
      ];
    case "ampacity":
      return [
        { term: "current", value: reason.currentA, unit: "A" },
        { term: "allowed current", value: reason.ampacityA, unit: "A" },
      ];
    case "protection":
      return [
        { term: "rating", value: reason.ratingA, unit: "A" },
        { term: "allowed current", value: reason.allowedA, unit: "A" },
      ];
    case "least size":
      return [{ term: "limit", value: reason.clause }];
    case "suits a fuse":
      return [{ term: "limit", value: reason.device }];
    case "owner":
    case "price":
    case "smallest made":
      return [];
    default:
      return reason satisfies never;
  }
}

/** Allowed current of a set of conductors where it lies: a table's row times its factors. */
export function runAmpacityWorking(figures: Figures, choice: SizeChoice): Working {
  const { plan } = figures;
  const rules = ruleSet(plan.source.rules);
  const run = plan.runs.find(({ group }) => group === choice.run);
  const shown = { at: choice.id, value: choice.ampacityA, unit: "A", says: "run ampacity" } as const;
  if (!run) return { ...shown, given: [], sources: [], assumptions: [] };
  const working = runAmpacity(run, plan, rules, sizeOfKey(choice.size.key));
  return {
    ...shown,
    formula: working.factors.length > 0 ? "I_allowed = I_table · Π factors" : "I_allowed = I_table",
    given: [
      { term: "size", value: choice.size.key },
      { term: "table row", value: working.rowKey },
      { term: "insulation", value: working.columnC, unit: "°C" },
      { term: "table value", value: working.baseA, unit: "A" },
      ...working.factors.map(({ kind, factor }): Given => ({ term: "factor", value: factor, at: kind })),
    ],
    sources: [working.source, ...working.factors.map(({ source }) => source)],
    assumptions: assumedFor(figures, [choice.run], ["insulation", "sheathed"]),
  };
}

/** What all conductors together cost or weigh, and how surely nothing does better. */
export function sizesTotalWorking(figures: Figures): Working {
  const { plan, sizes } = figures;
  const basis = priceBasis(plan, ruleSet(plan.source.rules), sizes);
  return {
    at: "plan",
    value: sizes.total,
    ...(sizes.aim === "lightest" ? { unit: "kg" } : {}),
    says: "sizes total",
    formula: sizes.aim === "lightest" ? "m = Σ L · n · m_conductor" : "c = Σ L · n · c_conductor",
    given: [
      { term: "aim", value: sizes.aim },
      { term: "proof", value: sizes.proof },
      { term: "lower bound", value: sizes.lowerBound, ...(sizes.aim === "lightest" ? { unit: "kg" } : {}) },
    ],
    table: {
      columns: [{ term: "size" }, { term: "length", unit: "m" }, { term: "cores" }],
      rows: sizes.choices.map(({ id, size, lengthM, cores }) => ({
        name: id,
        figure: { of: "run size", choice: id },
        cells: [size.key, lengthM, cores],
      })),
    },
    sources: basis === "model" || basis === "both" ? [relativePrice.source] : [],
    assumptions: [],
  };
}
