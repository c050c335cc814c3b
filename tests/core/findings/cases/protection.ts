import type {
  ConditionResult,
  ProtectionCondition,
  ProtectionFigures,
} from "../../../../src/core/circuit/protection/types.js";
import type { CheckInput } from "../../../../src/core/findings/check-input.js";
import { battery, boat, charger, corner, feed, lampRun, panel, protection, run, way } from "../boat.js";
import type { RuleCase } from "../case.js";

const judged = (
  condition: ProtectionCondition,
  state: ConditionResult["state"],
  change: Partial<ProtectionFigures> = {},
): CheckInput =>
  boat({
    protection: [
      protection({
        conditions: [{ condition, state, figure: 5, limit: 4, unit: "A", binds: "lamp / lead" }],
        ...change,
      }),
    ],
  });

const main = { id: "house / main", of: "house" };
const condition = (name: ProtectionCondition, level: "stop" | "mend"): RuleCase => ({
  raises: [
    { boat: () => judged(name, "fails"), at: "helm / lamps", level, figure: 5, limit: 4 },
    { boat: () => judged(name, "unchecked"), at: "helm / lamps", level: "unchecked" },
  ],
  quiet: [() => judged(name, "holds")],
});

const bare = (change: Parameters<typeof feed>[0] = {}) =>
  boat({ batteries: [battery({ main: "none" })], runs: [feed(change), lampRun()] });
const fuse = { device: "blade fuse", ratingA: 10 } as const;
const wayA = (currentA: number) => corner({ ways: [{ id: "helm / lamps", currentA }] });

export const protectionCases = {
  "protection-carries-load": {
    ...condition("carries-load", "mend"),
    quiet: [() => judged("carries-load", "fails", main), () => judged("carries-load", "holds")],
  },
  "main-overloaded": {
    raises: [
      { boat: () => judged("carries-load", "fails", main), at: "house", level: "mend", figure: 5, limit: 4 },
      { boat: () => judged("carries-load", "unchecked", main), at: "house", level: "unchecked" },
    ],
    quiet: [() => judged("carries-load", "fails")],
  },
  "protection-rides-start": condition("rides-start", "mend"),
  "protection-protects-weakest": condition("protects-weakest", "stop"),
  "protection-gear-limit": condition("gear-limit", "mend"),
  "protection-clears-far-short": condition("clears-far-short", "stop"),
  "protection-withstands-short": condition("withstands-short", "stop"),
  "protection-interrupts": condition("interrupts", "stop"),
  "protection-near-source": condition("near-source", "mend"),
  "protection-before-main": condition("before-main", "mend"),
  "protection-conflict": {
    raises: [
      {
        boat: () =>
          boat({
            protection: [protection({ possibleA: [], conflict: ["carries-load", "protects-weakest"] })],
          }),
        at: "helm / lamps",
        level: "mend",
      },
    ],
    quiet: [() => boat({ protection: [protection({ possibleA: [] })] })],
  },
  "protection-missing-at-battery": {
    raises: [{ boat: () => bare(), at: "house", level: "stop", figure: 1400 }],
    quiet: [() => bare({ protection: fuse })],
  },
  "protection-missing-on-run": {
    raises: [
      {
        boat: () => boat({ runs: [feed({ beforeMain: true }), lampRun()] }),
        at: "battery feed",
        level: "stop",
      },
      {
        boat: () => boat({ runs: [feed(), lampRun(), run("pump lead", "house", "lamp")] }),
        at: "pump lead",
        level: "mend",
      },
    ],
    quiet: [() => boat({ runs: [feed({ beforeMain: true, protection: fuse }), lampRun()] }), () => bare()],
  },
  "protection-missing-on-way": {
    raises: [
      {
        boat: () => boat({ panels: [panel({ ways: [way({ protection: "none" })] })] }),
        at: "helm / lamps",
        level: "mend",
      },
    ],
    quiet: [() => boat({ panels: [panel({ ways: [way(), way({ name: "spare", protection: "none" })] })] })],
  },
  "switch-overloaded": {
    raises: [
      { boat: () => boat({ corners: [wayA(12)] }), at: "helm / lamps", level: "mend", figure: 12, limit: 10 },
      {
        boat: () => boat({ panels: [panel({ ways: [way({ switch: {} })] })] }),
        at: "helm / lamps",
        level: "unchecked",
      },
      {
        boat: () => boat({ panels: [panel({ master: { ratingA: 8 } })], corners: [wayA(9)] }),
        at: "helm",
        level: "mend",
        figure: 9,
        limit: 8,
      },
    ],
    quiet: [() => boat({ corners: [wayA(10)] }), () => boat({ corners: [wayA(10 + 2e-12)] })],
  },
  "device-in-wet": {
    raises: [
      { boat: () => boat({ panels: [panel({ surroundings: "wet" })] }), at: "helm / lamps", level: "mend" },
    ],
    quiet: [() => boat({ panels: [panel({ surroundings: "splash" })] })],
  },
  "charger-unprotected": {
    raises: [
      {
        boat: () =>
          boat({ runs: [feed(), lampRun(), run("shore lead", "shore", "house", { beforeMain: true })] }),
        at: "shore lead",
        level: "stop",
        figure: 1400,
      },
      {
        boat: () =>
          boat({
            chargers: [charger({ selfLimiting: false })],
            runs: [feed(), lampRun(), run("shore lead", "shore", "house")],
          }),
        at: "shore lead",
        level: "mend",
      },
    ],
    quiet: [
      () => boat({ runs: [feed(), lampRun(), run("shore lead", "shore", "house")] }),
      () =>
        boat({
          runs: [
            feed(),
            lampRun(),
            run("shore lead", "shore", "house", { beforeMain: true, protection: fuse }),
          ],
        }),
    ],
  },
} as const satisfies Record<string, RuleCase>;
