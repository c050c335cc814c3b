import { emptyWays } from "../../plan/empty-ways.js";
import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** A way that feeds nothing is either spare, and says so by its name, or was forgotten. */
export const wayEmpty = rule({
  id: "way-empty",
  theme: "layout",
  level: "mind",
  sources: both(practice),
  check: ({ plan }) =>
    emptyWays(plan)
      .filter((way) => !/spare/i.test(way.split(" / ")[1] ?? ""))
      .map((at): Finding => ({ rule: "way-empty", level: "mind", at })),
});
