import { looseEnds } from "../loose-ends.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** A converter is not fed, directly or through others, by its own output. */
export const converterLoop = rule({
  id: "converter-loop",
  theme: "supply",
  level: "stop",
  sources: both(physics("nothing feeds itself")),
  check: looseEnds("converter-loop", "stop", ["converter loop"]),
});
