import type { Finding, Level } from "../finding.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

const levels: Readonly<Record<"bare" | "fails" | "unchecked", Level>> = {
  bare: "mind",
  fails: "mend",
  unchecked: "unchecked",
};

/** What must go through an opening to its place goes through: the finished box with its glands, the battery. */
export const boxOpening = rule({
  id: "box-opening",
  theme: "boxes",
  level: "mend",
  sources: both(physics("a rectangle in a rectangle, a circle or a slot")),
  check: ({ layout }) =>
    [...(layout?.boxes ?? []).flatMap(({ passing }) => passing ?? []), ...(layout?.passings ?? [])].flatMap(
      ({ what, through, state, answer }): Finding[] => {
        if (state === "holds") return [];
        const end = answer?.endMm.map((each) => `${Math.round(each)} mm`).join(" × ");
        return [
          {
            rule: "box-opening",
            level: levels[state],
            at: what,
            with: [through],
            terms: { state, ...(end === undefined ? {} : { end }) },
          },
        ];
      },
    ),
});
