import { boxProblems } from "../layout.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** A box, or the largest one would buy, has room on its faces for every entry and the spares. */
export const entriesFit = rule({
  id: "entries-fit",
  theme: "boxes",
  level: "mend",
  sources: both(physics("nuts, spanner room and webs on the faces there are")),
  check: boxProblems(["too-many-entries", "entry-too-large"], (box, { without, room, proof, problem }) => ({
    rule: "entries-fit",
    level: "mend",
    at: box.box,
    with: without,
    figure: box.cables.length + box.spareEntries,
    limit: room,
    terms: { problem, proof, from: box.from },
  })),
});
