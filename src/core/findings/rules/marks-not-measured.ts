import { allSides } from "../hull.js";
import { uncheckedTogether } from "../merge.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** Marks are measured again before they are drilled. */
export const marksNotMeasured = rule({
  id: "marks-not-measured",
  theme: "marks",
  level: "unchecked",
  sources: both(practice),
  check: ({ hull }) =>
    allSides(hull).flatMap(({ side }) => {
      const known = new Map(side.checked?.verdicts.map((one) => [one.name, one.verdict]));
      const open = side.marks
        .filter(({ mark }) => mark.method !== "none" && (known.get(mark.name) ?? "not known") === "not known")
        .map(({ mark }) => mark.name);
      return uncheckedTogether("marks-not-measured", open);
    }),
});
