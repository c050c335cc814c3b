import type { EntryFault } from "../box/check-entries.js";
import type { BoxProblem } from "../box/layout.js";
import type { BoxFigures } from "../box/plan-boxes.js";
import type { EndFigures } from "../terminations/plan-terminations.js";
import type { TerminationProblem } from "../terminations/termination.js";
import type { Facts } from "./facts.js";
import type { Finding, Level } from "./finding.js";

type ProblemOf<K extends BoxProblem["problem"]> = Extract<BoxProblem, { readonly problem: K }>;

/** A rule's check that reports some problems of boxes: nothing where no layout was worked out. */
export function boxProblems<const K extends BoxProblem["problem"]>(
  kinds: readonly K[],
  say: (box: BoxFigures, problem: ProblemOf<K>) => Finding,
) {
  const isOne = (problem: BoxProblem): problem is ProblemOf<K> =>
    (kinds as readonly BoxProblem["problem"][]).includes(problem.problem);
  return ({ layout }: Facts): Finding[] =>
    (layout?.boxes ?? []).flatMap((box) => box.problems.filter(isOne).map((problem) => say(box, problem)));
}

/** Faults of holes where they are; a layout of our own has none of these. */
export function holeFaults(rule: string, level: Level, kinds: readonly EntryFault["fault"][]) {
  return ({ layout }: Facts): Finding[] =>
    (layout?.boxes ?? []).flatMap(({ box, layout: laid }) =>
      (laid?.faults ?? [])
        .filter(({ fault }) => kinds.includes(fault))
        .map(
          ({ fault, at, with: other, figureMm, limitMm, crackRisk }): Finding => ({
            rule,
            level,
            at: box,
            with: other === undefined ? [at] : [at, other],
            ...(figureMm === undefined ? {} : { figure: figureMm }),
            ...(limitMm === undefined ? {} : { limit: limitMm }),
            unit: "mm",
            terms: { fault, cracks: crackRisk ? "yes" : "no" },
          }),
        ),
    );
}

type EndProblemOf<K extends TerminationProblem["problem"]> = Extract<
  TerminationProblem,
  { readonly problem: K }
>;

/** Problems of conductor ends, one finding for each place, kind of problem and run as written. */
export function endProblems<const K extends TerminationProblem["problem"]>(
  kinds: readonly K[],
  say: (end: EndFigures, problem: EndProblemOf<K>) => Omit<Finding, "at" | "with">,
) {
  const isOne = (problem: TerminationProblem): problem is EndProblemOf<K> =>
    (kinds as readonly TerminationProblem["problem"][]).includes(problem.problem);
  return ({ layout, runs, gear }: Facts): Finding[] => {
    const found = new Map<string, Finding>();
    for (const end of layout?.terminations.ends ?? []) {
      const at = runs.get(end.at.run)?.group ?? end.at.run;
      const place = gear.get(end.at.place)?.group ?? end.at.place;
      for (const problem of end.problems.filter(isOne)) {
        const key = `${at}\n${place}\n${problem.problem}`;
        if (!found.has(key)) found.set(key, { ...say(end, problem), at, with: [place] });
      }
    }
    return [...found.values()];
  };
}
