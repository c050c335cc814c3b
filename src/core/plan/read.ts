import { bringFullYaml } from "./source/full.js";
import { fullYaml } from "./source/full-yaml.js";

bringFullYaml(fullYaml);

// the front door: whoever comes in here reads all of YAML; the page comes in by `read-text.js` and brings the full reader later
export { type ReadPlan, readPlan, readPlanBytes } from "./read-text.js";
