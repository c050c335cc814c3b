import type { Finding } from "../finding.js";
import { uncheckedTogether } from "../merge.js";
import { rule } from "../rule.js";
import { cfr, iso10133 } from "../sources.js";

/** With petrol on board, nothing that sparks sits where vapour gathers unless it is made not to ignite it. */
export const ignitionProtection = rule({
  id: "ignition-protection",
  theme: "layout",
  level: "stop",
  sources: { us: [cfr("183.410(a)")], iso: [iso10133("ignition protection", "memory")] },
  check: (facts) => {
    const petrol = facts.plan.source.craft.petrolOnBoard;
    if (petrol === false) return [];
    const there = facts.devices.filter(
      ({ device, place }) =>
        (device.surroundings ?? place) === "engine space" && device.ignitionProtected !== true,
    );
    const known = there.filter(({ device }) => petrol === true && device.ignitionProtected === false);
    const unknown = there.filter(({ device }) => !(petrol === true && device.ignitionProtected === false));
    const motors = facts.plan.gear.filter(
      ({ behaviour, surroundings }) => behaviour === "motor" && surroundings === "engine space",
    );
    return [
      ...known.map(
        ({ at, kind }): Finding => ({
          rule: "ignition-protection",
          level: "stop",
          at,
          terms: { kind },
          remedies: [],
        }),
      ),
      ...uncheckedTogether("ignition-protection", [
        ...unknown.map(({ at }) => at),
        ...motors.map(({ group }) => group),
      ]),
    ];
  },
});
