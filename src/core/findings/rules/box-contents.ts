import { boxProblems } from "../layout.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** What is screwed into a box has room, with the bends of its conductors and room for a hand. */
export const boxContents = rule({
  id: "box-contents",
  theme: "boxes",
  level: "mend",
  sources: both(practice),
  check: boxProblems(["too-tall", "no-room-for-contents", "no-room-to-bend"], ({ box }, problem) => {
    const about = { rule: "box-contents", level: "mend", at: box, unit: "mm" } as const;
    const { figureMm, limitMm } = problem;
    return {
      ...about,
      ...(problem.problem === "no-room-to-bend" ? {} : { with: [problem.content] }),
      ...(figureMm === undefined ? {} : { figure: figureMm }),
      ...(limitMm === undefined ? {} : { limit: limitMm }),
      terms: {
        problem: problem.problem,
        proof: problem.problem === "no-room-to-bend" ? "proven" : problem.proof,
      },
    };
  }),
});
