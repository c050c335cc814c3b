import type { CheckInput } from "../../../../src/core/findings/check-input.js";
import type { CompleteBattery, CompletePanel } from "../../../../src/core/plan/completed.js";
import { battery, boat, feed, lamp, lampRun, panel, run, way } from "../boat.js";
import type { RuleCase } from "../case.js";

const engine = (ignitionProtected: boolean | undefined, petrolOnBoard: boolean): CheckInput => {
  const device = ignitionProtected === undefined ? { ratingA: 10 } : { ratingA: 10, ignitionProtected };
  const safe = { device: "blade fuse", ratingA: 5, ignitionProtected: true } as const;
  return boat({
    panels: [panel({ surroundings: "engine space", ways: [way({ switch: device, protection: safe })] })],
    plan: { source: { craft: { petrolOnBoard, hullMaterial: "wood" } } },
    batteries: [battery({ fuelPartWithinM: 1 })],
  });
};
const petrolBoat = (change: Parameters<typeof boat>[0]): CheckInput =>
  boat({ ...change, plan: { source: { craft: { petrolOnBoard: true } } } });
const pumpBoat = (
  change: {
    panel?: Partial<CompletePanel>;
    way?: Parameters<typeof way>[0];
    battery?: Partial<CompleteBattery>;
    beforeMaster?: boolean;
  } = {},
): CheckInput =>
  boat({
    batteries: [unmastered(change.battery)],
    panels: [panel({ ways: [way({ switch: "none", ...change.way })], ...change.panel })],
    gear: [lamp({ role: "bilge pump", floatSwitch: true })],
    runs: [feed({ beforeMaster: change.beforeMaster ?? false }), lampRun()],
  });

/** A boat of a kind and a length with these lights; a number beside a light: how high it stands [m]. */
const lit = (
  kind: string,
  lengthM: number | undefined,
  ...lights: readonly (string | readonly [string, number])[]
): CheckInput =>
  boat({
    gear: lights.map((light) => {
      const [name, upM] = typeof light === "string" ? [light] : light;
      const about = { name, group: name, role: "navigation light" } as const;
      return lamp(upM === undefined ? about : { ...about, standsAtM: [1, 0, upM] });
    }),
    plan: { source: { craft: { kind, ...(lengthM !== undefined && { lengthM }) } } },
  });

export const layoutCases = {
  "ignition-protection": {
    raises: [
      { boat: () => engine(false, true), at: "helm / lamps", level: "stop" },
      { boat: () => engine(undefined, true), at: "helm / lamps", level: "unchecked" },
    ],
    quiet: [() => engine(true, true), () => engine(false, false)],
  },
  "live-pump-behind-master": {
    raises: [
      { boat: () => pumpBoat({ panel: { master: { ratingA: 30 } } }), at: "lamp", level: "stop" },
      { boat: () => pumpBoat({ battery: { master: { ratingA: 100 } } }), at: "lamp", level: "stop" },
    ],
    quiet: [
      () => pumpBoat({ panel: { master: { ratingA: 30 } }, way: { alwaysLive: true } }),
      () => pumpBoat({ battery: { master: { ratingA: 100 } }, beforeMaster: true }),
      () => pumpBoat(),
    ],
  },
  "float-pump-switched": {
    raises: [{ boat: () => pumpBoat({ way: { switch: { ratingA: 10 } } }), at: "lamp", level: "mend" }],
    quiet: [() => pumpBoat()],
  },
  "float-pump-way": {
    raises: [
      {
        boat: () =>
          boat({
            gear: [lamp({ role: "bilge pump", floatSwitch: true }), lamp({ name: "other", group: "other" })],
            plan: {
              circuitOf: new Map([
                ["lamp", "helm / lamps"],
                ["other", "helm / lamps"],
              ]),
            },
          }),
        at: "helm / lamps",
        level: "mend",
      },
    ],
    quiet: [
      () => pumpBoat(),
      () =>
        boat({
          gear: [
            lamp({ role: "bilge pump", floatSwitch: true }),
            lamp({ name: "telltale", group: "telltale", role: "gauge" }),
          ],
          plan: {
            circuitOf: new Map([
              ["lamp", "helm / lamps"],
              ["telltale", "helm / lamps"],
            ]),
          },
        }),
    ],
  },
  "bilge-pump-by-hand": {
    raises: [{ boat: () => boat({ gear: [lamp({ role: "bilge pump" })] }), at: "lamp", level: "mind" }],
    quiet: [() => pumpBoat()],
  },
  "blower-missing": {
    raises: [
      {
        boat: () => petrolBoat({ gear: [lamp({ surroundings: "engine space" })] }),
        at: "lamp",
        level: "mind",
      },
      {
        boat: () => petrolBoat({ runs: [run("feed", "house", "helm", { inEngineSpace: true })] }),
        at: "feed",
        level: "mind",
      },
    ],
    quiet: [
      () =>
        petrolBoat({
          gear: [
            lamp({ surroundings: "engine space" }),
            lamp({ name: "blower", group: "blower", role: "blower" }),
          ],
        }),
      () => petrolBoat({}),
      () => boat({ gear: [lamp({ surroundings: "engine space" })] }),
    ],
  },
  "navigation-lights-set": {
    raises: [
      // Rule 23 (a) and (d): under 12 m an all-round light may stand for masthead light and sternlight, not for sidelights
      { boat: () => lit("motor boat", 6, "side lights", "stern light"), at: "side lights", level: "mend" },
      { boat: () => lit("motor boat", 6, "side lights", "masthead light"), at: "side lights", level: "mend" },
      { boat: () => lit("motor boat", 7, "all-round light"), at: "all-round light", level: "mend" },
      { boat: () => lit("motor boat", 6.9, "all-round light"), at: "all-round light", level: "mind" },
      {
        boat: () => lit("motor boat", 12, "all-round light", "side lights"),
        at: "all-round light",
        level: "mend",
      },
      { boat: () => lit("sailing boat", 7, "stern light"), at: "stern light", level: "mend" },
      { boat: () => lit("skiff", 5, "all-round light"), at: "all-round light", level: "unchecked" },
      { boat: () => lit("motor boat", 5, "green lamp"), at: "green lamp", level: "unchecked" },
      {
        boat: () => lit("motor boat", undefined, "all-round light"),
        at: "all-round light",
        level: "unchecked",
      },
    ],
    quiet: [
      () => lit("motor boat", 11.9, "all-round light", "side lights"),
      () => lit("motor boat", 14, "masthead light", "side lights", "stern light"),
      () => lit("sailing boat", 8, "side lights", "stern light"),
      () => lit("velero", 8, "tricolour lantern"),
      // Rule 25 (d): a torch does
      () => lit("sailing dinghy", 6.9, "stern light"),
      () => lit("rowing boat", 4, "all-round light"),
      () => lit("lancha", 5, "luz todo horizonte", "luces de costado"),
      () => boat({ gear: [lamp({})] }),
    ],
  },
  "navigation-lights-height": {
    raises: [
      {
        boat: () => lit("motor boat", 5, ["all-round light", 1.5], ["side lights", 0.75]),
        at: "all-round light",
        level: "mend",
        figure: 0.75,
      },
      {
        boat: () => lit("motor boat", 5, ["all-round light", 1.7], "side lights"),
        at: "side lights",
        level: "unchecked",
      },
    ],
    quiet: [
      () => lit("motor boat", 5, ["all-round light", 1.7], ["side lights", 0.7]),
      () => lit("rowing boat", 4, "all-round light", "side lights"),
      () => lit("motor boat", 5, "side lights"),
    ],
  },
  "navigation-lights-way": {
    raises: [
      {
        boat: () =>
          boat({
            gear: [lamp({ role: "navigation light" }), lamp({ name: "other", group: "other" })],
            plan: {
              circuitOf: new Map([
                ["lamp", "helm / lamps"],
                ["other", "helm / lamps"],
              ]),
            },
          }),
        at: "helm / lamps",
        level: "mend",
      },
    ],
    quiet: [() => boat({ gear: [lamp({ role: "navigation light" })] })],
  },
  "way-empty": {
    raises: [
      {
        boat: () => boat({ panels: [panel({ ways: [way(), way({ name: "bilge" })] })] }),
        at: "helm / bilge",
        level: "mind",
      },
    ],
    quiet: [() => boat({ panels: [panel({ ways: [way(), way({ name: "spare 1" })] })] })],
  },
  "metal-hull": {
    raises: [
      {
        boat: () => boat({ plan: { source: { craft: { hullMaterial: "aluminium" } } } }),
        at: "plan",
        level: "mind",
      },
    ],
  },
  "master-missing": {
    raises: [{ boat: () => boat({ batteries: [unmastered()] }), at: "house", level: "mind" }],
    quiet: [() => boat({ batteries: [unmastered()], panels: [panel({ master: { ratingA: 30 } })] })],
  },
} as const satisfies Record<string, RuleCase>;

function unmastered(change: Partial<CompleteBattery> = {}): CompleteBattery {
  const { master: _master, ...rest } = battery();
  return { ...rest, ...change };
}
