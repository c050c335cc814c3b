import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** What decides where a hole may be is measured: the inside of a box, its posts, the lip of its lid. */
export const boxUnmeasured = rule({
  id: "box-unmeasured",
  theme: "boxes",
  level: "unchecked",
  sources: both(physics("a template is drawn from the inside of the box")),
  check: ({ layout }) =>
    (layout?.boxes ?? []).flatMap(({ box, unmeasured, bought }): Finding[] =>
      unmeasured.length === 0
        ? []
        : [
            {
              rule: "box-unmeasured",
              level: "unchecked",
              at: box,
              ...(bought === undefined ? {} : { with: [bought.name] }),
              terms: { what: unmeasured.join(" and ") },
            },
          ],
    ),
});
