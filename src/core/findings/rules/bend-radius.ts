import { bendRadius } from "../../reference/boxes.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";
import { pointChecks } from "../way-checks.js";

/** No corner is tighter than the thickest cable round it allows. */
export const bendRadiusRule = rule({
  id: "bend-radius",
  theme: "ways",
  level: "mend",
  sources: both(bendRadius.source),
  check: pointChecks("bend-radius", "bend"),
});
