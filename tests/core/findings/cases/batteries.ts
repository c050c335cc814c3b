import type { CheckInput } from "../../../../src/core/findings/check-input.js";
import type { CompleteBattery } from "../../../../src/core/plan/completed.js";
import { battery, boat, charger, corner, lamp } from "../boat.js";
import type { RuleCase } from "../case.js";

const withBattery = (change: Partial<CompleteBattery>): CheckInput => boat({ batteries: [battery(change)] });
const lacking = (
  key: "fixed" | "vented" | "maxDischargeA",
  change: Partial<CompleteBattery> = {},
): CheckInput => {
  const copy = { ...battery(change) };
  delete copy[key];
  return boat({ batteries: [copy] });
};
const pair = (change: Partial<CompleteBattery>): CheckInput =>
  boat({
    batteries: [
      battery({ parallelWith: ["second"] }),
      battery({ name: "second", parallelWith: ["house"], ...change }),
    ],
  });
const drawing = (currentA: number, change: Partial<CompleteBattery>): CheckInput =>
  boat({
    batteries: [battery(change)],
    corners: [corner({ batteries: [{ id: "house", emfV: 12, currentA, terminalV: 11.8 }] })],
  });
const petrol = (change: Partial<CompleteBattery>): CheckInput =>
  boat({ batteries: [battery(change)], plan: { source: { craft: { petrolOnBoard: true } } } });
const motorBoat = (supply: string): CheckInput =>
  boat({
    gear: [lamp({ role: "electronics" }), lamp({ name: "motor", group: "motor", role: "propulsion" })],
    plan: {
      circuits: new Map([
        ["house / feed", { id: "house / feed", supply: "house", nominalV: 12, battery: "house" }],
        ["helm / lamps", { id: "helm / lamps", supply, nominalV: 12, battery: "house" }],
      ]),
      circuitOf: new Map([
        ["lamp", "helm / lamps"],
        ["motor", "house / feed"],
      ]),
    },
  });
const charging = (
  change: Parameters<typeof charger>[0],
  chemistry: CompleteBattery["chemistry"] = "agm",
  coldC = 5,
): CheckInput =>
  boat({
    batteries: [battery({ chemistry, maxDischargeA: 50 })],
    chargers: [charger(change)],
    plan: { ambient: { coldC, airC: 15, hotC: 30, engineSpaceC: 50 } },
  });
const filling = (change: Partial<CheckInput["charging"][number]>): CheckInput =>
  boat({ charging: [{ charger: "shore", battery: "house", fromCharge: 0.5, state: "works", ...change }] });

export const batteryCases = {
  "battery-current": {
    raises: [
      { boat: () => drawing(60, { maxDischargeA: 50 }), at: "house", level: "mend", figure: 60, limit: 50 },
      { boat: () => lacking("maxDischargeA", { chemistry: "lifepo4" }), at: "house", level: "unchecked" },
    ],
    quiet: [() => drawing(50, { maxDischargeA: 50 }), () => drawing(60, {})],
  },
  "motor-and-electronics": {
    raises: [{ boat: () => motorBoat("house"), at: "house", level: "mend" }],
    quiet: [() => motorBoat("buck")],
  },
  "parallel-chemistry": {
    raises: [{ boat: () => pair({ chemistry: "lifepo4" }), at: "house", level: "stop" }],
    quiet: [() => pair({ chemistry: "flooded" })],
  },
  "parallel-voltage": {
    raises: [{ boat: () => pair({ nominalV: 24 }), at: "house", level: "stop", figure: 12, limit: 0 }],
    quiet: [() => pair({})],
  },
  "parallel-unlike": {
    raises: [
      { boat: () => pair({ capacityAh: 56 }), at: "house", level: "mend", figure: 12, limit: 10 },
      { boat: () => pair({ ageYears: 3 }), at: "house", level: "mend", figure: 3, limit: 1 },
      { boat: () => pair({ chemistry: "gel" }), at: "house", level: "mend" },
    ],
    quiet: [() => pair({ capacityAh: 55, ageYears: 1 })],
  },
  "battery-loose": {
    raises: [
      { boat: () => withBattery({ fixed: "loose" }), at: "house", level: "mend" },
      { boat: () => withBattery({ fixed: "tray" }), at: "house", level: "mend" },
      { boat: () => lacking("fixed"), at: "house", level: "unchecked" },
    ],
    quiet: [() => withBattery({ fixed: "bracket" })],
  },
  "battery-vent": {
    raises: [
      { boat: () => withBattery({ vented: false, chemistry: "flooded" }), at: "house", level: "stop" },
      { boat: () => withBattery({ vented: false }), at: "house", level: "mend" },
      { boat: () => lacking("vented"), at: "house", level: "unchecked" },
    ],
    quiet: [() => lacking("vented", { chemistry: "lifepo4", maxDischargeA: 50 })],
  },
  "battery-near-fuel": {
    raises: [
      {
        boat: () => petrol({ fuelPartWithinM: 0.2 }),
        at: "house",
        level: "stop",
        figure: 0.2,
        limit: 0.3048,
      },
      { boat: () => petrol({}), at: "house", level: "unchecked" },
    ],
    quiet: [() => petrol({ fuelPartWithinM: 0.31 })],
  },
  "deep-discharge": {
    raises: [
      { boat: () => withBattery({ reserveShare: 0.3 }), at: "house", level: "mind", figure: 30, limit: 50 },
      {
        boat: () => withBattery({ reserveShare: 0, chemistry: "lifepo4", maxDischargeA: 50 }),
        at: "house",
        level: "mind",
      },
    ],
    quiet: [() => withBattery({ reserveShare: 0.2, chemistry: "lifepo4", maxDischargeA: 50 })],
  },
  "cold-charging": {
    raises: [
      {
        boat: () => charging({ stopsBelowC: -10 }, "lifepo4", -5),
        at: "shore",
        level: "stop",
        figure: -10,
        limit: 0,
      },
      { boat: () => charging({}, "lifepo4", -5), at: "shore", level: "unchecked" },
    ],
    quiet: [
      () => charging({ stopsBelowC: 0 }, "lifepo4", -5),
      () => charging({}, "lifepo4", 0),
      () => charging({ stopsBelowC: -10 }, "agm", -5),
    ],
  },
  "absorption-voltage": {
    raises: [
      {
        boat: () => charging({ absorptionV: 14.7 }, "lifepo4"),
        at: "shore",
        level: "mend",
        figure: 14.7,
        limit: 14.6,
      },
      { boat: () => charging({ absorptionV: 13.8 }), at: "shore", level: "mind", figure: 13.8, limit: 14.2 },
    ],
    quiet: [() => charging({ absorptionV: 14.8 }), () => charging({ absorptionV: 14.2 })],
  },
  "charger-too-big": {
    raises: [
      { boat: () => charging({ outputA: 11 }, "flooded"), at: "shore", level: "mend", figure: 11, limit: 10 },
      { boat: () => boat({ chargers: [noOutput()] }), at: "shore", level: "unchecked" },
    ],
    quiet: [() => charging({ outputA: 10 }, "flooded"), () => charging({ outputA: 15 }, "agm")],
  },
  "slow-charging": {
    raises: [
      { boat: () => filling({ hours: 30 }), at: "shore", level: "mind", figure: 30, limit: 24 },
      { boat: () => filling({ days: 6, hours: 24 }), at: "shore", level: "mind", figure: 6, limit: 5 },
      { boat: () => filling({ state: "too cold" }), at: "shore", level: "mind" },
      { boat: () => filling({ state: "unchecked" }), at: "shore", level: "unchecked" },
    ],
    quiet: [() => filling({ hours: 24 }), () => filling({ days: 5, hours: 100 })],
  },
  "charger-missing": {
    raises: [{ boat: () => boat({ chargers: [] }), at: "house", level: "mind" }],
  },
} as const satisfies Record<string, RuleCase>;

function noOutput(): ReturnType<typeof charger> {
  const { outputA: _outputA, ...rest } = charger();
  return rest;
}
