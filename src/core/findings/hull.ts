import type { FaceFigures, HullFigures, SideFigures } from "../hull/figures.js";
import type { HullProblem, HullProblemKind } from "../hull/problem.js";
import type { Edit } from "../plan/edits/edit.js";
import { writeQuantity } from "../quantity/write.js";
import type { Facts } from "./facts.js";
import type { Finding, Level } from "./finding.js";
import { oneEachGroup } from "./merge.js";

/** The entry something on a face was written under: six lamps are one. */
export function hullGroup({ gear, hull }: Facts, name: string): string {
  return gear.get(name)?.group ?? hull?.holes.find((hole) => hole.name === name)?.group ?? name;
}

/** A problem of the hull's figures as a finding of a rule. `terms.kind` is the problem, `terms.by` the other things it names. */
export function hullFinding(rule: string, level: Level, problem: HullProblem): Finding {
  const { at, figure, limit, unit, right, terms, with: by = [] } = problem;
  return {
    rule,
    level,
    at,
    ...(figure === undefined ? {} : { figure }),
    ...(limit === undefined ? {} : { limit }),
    ...(unit === undefined || unit === "" ? {} : { unit }),
    terms: {
      ...terms,
      ...(terms?.kind ? { reading: terms.kind } : {}),
      kind: problem.problem,
      ...(by.length > 0 ? { by: by.join(", ") } : {}),
    },
    ...(right === undefined
      ? {}
      : { working: [{ symbol: "right", value: right, ...(unit ? { unit } : {}) }] }),
  };
}

/** Every problem of these kinds, told once. */
export function problemsOf(hull: HullFigures | undefined, kinds: readonly HullProblemKind[]): HullProblem[] {
  const told = new Set<string>();
  return (hull?.problems ?? []).filter((one) => {
    const key = [one.problem, one.at, ...(one.with ?? [])].join("\n");
    if (!kinds.includes(one.problem) || told.has(key)) return false;
    told.add(key);
    return true;
  });
}

/**
 * Problems of these kinds as findings, one for each entry: the worst stands for it.
 * @param worse Is the first figure worse than the second? The smaller, unless said.
 */
export function hullFindings(
  facts: Facts,
  rule: string,
  level: Level,
  kinds: readonly HullProblemKind[],
  worse: (a: number, b: number) => boolean = (a, b) => a < b,
): Finding[] {
  const found = problemsOf(facts.hull, kinds).map((problem) => hullFinding(rule, level, problem));
  return oneEachGroup(found, (at) => hullGroup(facts, at), worse);
}

/** Each problem for itself: measurements, lines. */
export function eachHullFinding(
  { hull }: Facts,
  rule: string,
  level: Level,
  kinds: readonly HullProblemKind[],
): Finding[] {
  return problemsOf(hull, kinds).map((problem) => hullFinding(rule, level, problem));
}

/** Every side of every face. */
export function allSides(hull: HullFigures | undefined): { face: FaceFigures; side: SideFigures }[] {
  return (hull?.faces ?? []).flatMap((face) => face.sides.map((side) => ({ face, side })));
}

/** An edit that sets one key of a piece of gear's hole, whether it was written short (`hole: 16 mm`) or long. */
export function holeRemedy(facts: Facts, at: string, key: string, to: string | boolean): Edit[] {
  const piece = facts.gear.get(at);
  if (piece?.hole === undefined) return [];
  const { sizeM, measuredM, ...more } = piece.hole;
  const short = sizeM !== undefined && measuredM.length === 0 && Object.keys(more).length === 0;
  return short
    ? [
        {
          edit: "set field",
          at: piece.group,
          field: "hole",
          to: `{size: ${writeQuantity(sizeM, "mm")}, ${key}: ${to}}`,
        },
      ]
    : [{ edit: "set field", at: piece.group, field: `hole / ${key}`, to }];
}
