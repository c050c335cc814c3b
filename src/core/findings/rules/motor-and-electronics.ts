import { gearRoleFacts } from "../../reference/gear-roles.js";
import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** Instruments and navigation lights hang on another battery than the motor that pulls the boat. */
export const motorAndElectronics = rule({
  id: "motor-and-electronics",
  theme: "batteries",
  level: "mend",
  sources: both(practice),
  check: ({ plan }) =>
    plan.batteries.flatMap((battery): Finding[] => {
      // A converter between them holds its output steady, so only what hangs on the battery itself counts.
      const here = plan.gear.filter(
        ({ name }) => plan.circuits.get(plan.circuitOf.get(name) ?? "")?.supply === battery.name,
      );
      const motors = here.filter(({ role }) => role === "propulsion");
      const others = here.filter(({ role }) => gearRoleFacts.rows[role].upsetByMotor);
      if (motors.length === 0 || others.length === 0) return [];
      return [
        {
          rule: "motor-and-electronics",
          level: "mend",
          at: battery.name,
          with: [...motors, ...others].map(({ name }) => name),
        },
      ];
    }),
});
