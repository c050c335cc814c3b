import type { RuleId } from "../../core/findings/rules.js";
import type { FindingWords } from "../finding-words.js";
import type { RuleWords } from "../rule-words.js";
import { spanish } from "../steps/spanish.js";
import { workingInSpanish } from "./finding-working.js";
import { pathInSpanish } from "./path.js";
import { batteryRules, chargingRules } from "./rules-batteries.js";
import { boxRules } from "./rules-boxes.js";
import { conductorRules } from "./rules-conductors.js";
import { endRules } from "./rules-ends.js";
import { formRules, markRules } from "./rules-form.js";
import { floatRules, holeRules } from "./rules-holes.js";
import { jointRules } from "./rules-joints.js";
import { layoutRules } from "./rules-layout.js";
import { partRules } from "./rules-parts.js";
import { protectionRules } from "./rules-protection.js";
import { readingRules } from "./rules-readings.js";
import { supplyRules } from "./rules-supply.js";
import { voltageRules } from "./rules-voltage.js";
import { wayRules } from "./rules-ways.js";
import { workRules } from "./rules-work.js";

const rules: Readonly<Record<RuleId, RuleWords>> = {
  ...supplyRules,
  ...voltageRules,
  ...conductorRules,
  ...protectionRules,
  ...jointRules,
  ...batteryRules,
  ...chargingRules,
  ...layoutRules,
  ...boxRules,
  ...wayRules,
  ...endRules,
  ...partRules,
  ...formRules,
  ...markRules,
  ...holeRules,
  ...floatRules,
  ...workRules,
  ...readingRules,
};

/** Findings in Spanish. */
export const findingsInSpanish: FindingWords = {
  rules,
  plan: "el plan",
  corner: (corner) => {
    switch (corner) {
      case "nominal":
        return "en uso corriente";
      case "worst drop":
        return "con la batería baja, el cobre caliente y todo encendido";
      case "highest voltage":
        return "mientras se carga la batería";
      default:
        return `en el caso ${corner}`;
    }
  },
  joining: spanish.joining,
  path: pathInSpanish,
  working: workingInSpanish,
  units: { years: "años", days: "días" },
};
