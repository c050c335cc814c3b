import { uncheckedTogether } from "../merge.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** It is known what she weighs and where, so that heights over the water mean something. */
export const floatUnknown = rule({
  id: "float-unknown",
  theme: "float",
  level: "unchecked",
  sources: both(physics("a boat floats by all that is in her")),
  check: ({ hull }) => {
    const wet = (hull?.holes ?? []).filter(({ plan }) => plan.water !== undefined).map(({ group }) => group);
    if (hull?.form?.form === undefined) return uncheckedTogether("float-unknown", wet, { what: "form" });
    if (hull.float === undefined) return uncheckedTogether("float-unknown", wet, { what: "float" });
    return uncheckedTogether("float-unknown", hull.float.without, { what: "weights" });
  },
});
