import type { Protection, Surroundings, Switch } from "../../plan/model/common.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** Fuses, breakers and switches live where it is dry. */
export const deviceInWet = rule({
  id: "device-in-wet",
  theme: "protection",
  level: "mend",
  sources: both(practice),
  check: (facts) =>
    facts.devices
      .filter(({ device, place }) => wet.has(around(device, place)))
      .map(({ at, device, kind, place }) => ({
        rule: "device-in-wet",
        level: "mend",
        at,
        terms: { kind, surroundings: around(device, place) },
      })),
});

const wet: ReadonlySet<Surroundings> = new Set(["wet", "bilge"]);

function around(device: Protection | Switch, place: Surroundings): Surroundings {
  return device.surroundings ?? place;
}
