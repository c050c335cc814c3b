import { hullFinding, hullGroup, problemsOf } from "../hull.js";
import { oneEachGroup } from "../merge.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

const reasons = ["unreachable by tape", "tape leaves the face", "straight tape blocked"] as const;
/** Two tapes at least reach every mark. */
export const markUnreachable = rule({
  id: "mark-unreachable",
  theme: "marks",
  level: "mend",
  sources: both(physics("a tape lies on the face, or is pulled straight and free")),
  check: (facts) => {
    const why = problemsOf(facts.hull, reasons);
    const found = problemsOf(facts.hull, ["no reference point"]).map((problem) => {
      const working = why
        .filter(({ at }) => at === problem.at)
        .map((one) => ({ symbol: "from" as const, at: one.with?.join(", ") ?? "", value: one.problem }));
      return {
        ...hullFinding("mark-unreachable", "mend", problem),
        ...(working.length > 0 ? { working } : {}),
      };
    });
    return oneEachGroup(
      found,
      (at) => hullGroup(facts, at),
      (a, b) => a < b,
    );
  },
});
