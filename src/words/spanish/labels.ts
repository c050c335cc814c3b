import { chemistries } from "../../core/plan/model/supply.js";
import type { LabelWords } from "../labels.js";
import { asking } from "../screen/es/asking.js";
import { findings } from "../screen/es/findings.js";
import { conditionWords, devices, stateWords } from "./devices.js";
import { sided } from "./sided.js";
import { chemistryIn } from "./trade.js";

const [flooded, agm, gel, lifepo4] = chemistries;

/** Short words for what has a key, in Spanish. */
export const labelsInSpanish: LabelWords = {
  levels: findings.levels,
  chemistries: {
    flooded: chemistryIn(flooded),
    agm: chemistryIn(agm),
    gel: chemistryIn(gel),
    lifepo4: chemistryIn(lifepo4),
  },
  conditions: conditionWords,
  states: stateWords,
  ruleSets: { us: `normas de ${asking.us}`, iso: "normas ISO" },
  devices,
  sides: { port: "babor", starboard: "estribor" },
  sided,
};
