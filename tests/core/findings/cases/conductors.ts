import type { CheckInput } from "../../../../src/core/findings/check-input.js";
import type { CompleteRun } from "../../../../src/core/plan/completed.js";
import { awgAreaMm2 } from "../../../../src/core/quantity/conductor-size.js";
import { boat, branch, choice, corner, feed, lampRun, writtenAs } from "../boat.js";
import type { RuleCase } from "../case.js";

const thin = { series: "awg", key: "18 AWG", areaMm2: awgAreaMm2(18) } as const;
const withRun = (
  change: Partial<CompleteRun>,
  size: Partial<Parameters<typeof choice>[1] & object> = {},
): CheckInput =>
  boat({ runs: [feed(), lampRun(change)], choices: [choice("battery feed"), choice("lamp run", size)] });
const shared = (backA: number) =>
  boat({
    runs: [feed(), lampRun({ return: "shared", carries: ["helm / lamps", "helm / bilge"] })],
    choices: [choice("battery feed"), choice("lamp run", { ampacityA: 20, currentA: backA })],
    corners: [
      corner({
        branches: [
          branch("lamp run / lamps / out", "lamp run", 12),
          branch("lamp run / bilge / out", "lamp run", backA - 12),
          branch("lamp run / return", "lamp run", backA),
        ],
      }),
    ],
  });

export const conductorCases = {
  ampacity: {
    raises: [
      { boat: () => withRun({}, { currentA: 36 }), at: "lamp run", level: "stop", figure: 36, limit: 35 },
      { boat: () => withRun({}, { currentA: 35.001 }), at: "lamp run", level: "stop", limit: 35 },
      { boat: () => withRun({}, { ampacityA: Number.NaN }), at: "lamp run", level: "unchecked" },
    ],
    quiet: [
      () => withRun({}, { currentA: 35 }),
      // a solved 35 A, off in its last digits
      () => withRun({}, { currentA: 35.00000000000014 }),
      () => withRun({ inEngineSpace: true }, { currentA: 36 }),
      () => shared(24),
    ],
  },
  "engine-space-ampacity": {
    raises: [
      {
        boat: () => withRun({ inEngineSpace: true }, { currentA: 36 }),
        at: "lamp run",
        level: "stop",
        figure: 36,
        limit: 35,
      },
    ],
    quiet: [() => withRun({}, { currentA: 36 })],
  },
  "shared-return": {
    raises: [{ boat: () => shared(24), at: "lamp run", level: "stop", figure: 24, limit: 20 }],
    quiet: [() => shared(20), () => withRun({}, { currentA: 36 })],
  },
  "least-size": {
    raises: [
      {
        boat: () => withRun({ sheathed: false }, { size: thin }),
        at: "lamp run",
        level: "mend",
        figure: awgAreaMm2(18),
      },
      {
        boat: () => withRun({}, { size: { series: "awg", key: "20 AWG", areaMm2: 0.518 } }),
        at: "lamp run",
        level: "mend",
      },
    ],
    quiet: [
      () => withRun({}, { size: thin }),
      () => withRun({ sheathed: false, lengthM: 0.17 }, { size: thin }),
    ],
  },
  "out-of-sheath": {
    raises: [
      {
        boat: () => withRun({ outOfSheathM: 0.8 }, { size: thin }),
        at: "lamp run",
        level: "mend",
        figure: 0.8,
        limit: 0.762,
      },
    ],
    quiet: [() => withRun({ outOfSheathM: 0.76 }, { size: thin }), () => withRun({ outOfSheathM: 2 })],
  },
  "solid-conductor": {
    raises: [{ boat: () => withRun({ conductor: "solid" }), at: "lamp run", level: "mend" }],
  },
  "hull-return": {
    raises: [{ boat: () => withRun({ return: "hull" }), at: "lamp run", level: "stop" }],
    quiet: [() => withRun({ return: "shared" })],
  },
  "size-unmet": {
    raises: [{ boat: () => boat({ sizes: { proof: "none", unmet: ["lamp"] } }), at: "lamp", level: "mend" }],
    quiet: [() => boat({ sizes: { proof: "bounded" } })],
  },
  "run-length": {
    raises: [
      {
        boat: () => boat({ plan: { source: { runs: [{ ...writtenAs(lampRun()), lengthsM: [] }] } } }),
        at: "lamp run",
        level: "unchecked",
      },
    ],
  },
  chafe: {
    raises: [
      { boat: () => withRun({ protectedFromChafe: false }), at: "lamp run", level: "mend" },
      {
        boat: () => boat({ runs: [feed(), without(lampRun(), "protectedFromChafe")] }),
        at: "lamp run",
        level: "unchecked",
      },
    ],
  },
  "conductor-colour": {
    raises: [
      { boat: () => withRun({ colours: { out: "red", return: "red" } }), at: "lamp run", level: "mend" },
      { boat: () => withRun({ colours: { out: "orange", return: "red" } }), at: "lamp run", level: "mend" },
      { boat: () => withRun({ colours: { out: "black", return: "yellow" } }), at: "lamp run", level: "mend" },
      { boat: () => withRun({ colours: { out: "red", return: "green" } }), at: "lamp run", level: "mend" },
      {
        boat: () => boat({ runs: [feed(), without(lampRun(), "colours")] }),
        at: "lamp run",
        level: "unchecked",
      },
    ],
    quiet: [() => withRun({ colours: { out: "orange", return: "yellow" } })],
  },
  "untinned-wet": {
    raises: [{ boat: () => withRun({ tinned: false, surroundings: "wet" }), at: "lamp run", level: "mind" }],
    quiet: [() => withRun({ tinned: false, surroundings: "dry" }), () => withRun({ surroundings: "bilge" })],
  },
} as const satisfies Record<string, RuleCase>;

function without<K extends keyof CompleteRun>(run: CompleteRun, key: K): CompleteRun {
  const copy = { ...run };
  delete copy[key];
  return copy;
}
