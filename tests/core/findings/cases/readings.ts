import type { CheckInput } from "../../../../src/core/findings/check-input.js";
import type { JudgedReading } from "../../../../src/core/proving/taken/judge.js";
import { boat } from "../boat.js";
import type { RuleCase } from "../case.js";

const taken = { kind: "voltage", at: "helm +", against: "helm -", withOn: [], value: 11.2 } as const;
const band = { expected: 12.6, low: 12.2, high: 13 };
const read =
  (...readings: readonly Partial<JudgedReading>[]) =>
  (): CheckInput => ({
    ...boat(),
    readings: readings.map((one) => ({ taken, band, verdict: "within", differsFrom: [], ...one })),
  });

export const readingCases = {
  "reading-outside": {
    raises: [
      { boat: read({ verdict: "low" }), at: "helm +", level: "mend", figure: 11.2, limit: 12.2 },
      {
        boat: read({ verdict: "high", taken: { ...taken, value: 13.9 } }),
        at: "helm +",
        level: "mend",
        figure: 13.9,
        limit: 13,
      },
      {
        boat: read({
          verdict: "high",
          taken: { kind: "marking", at: "helm / lamps / fuse", withOn: [], value: 10 },
          band: { expected: 3, low: 3, high: 3 },
        }),
        at: "helm / lamps / fuse",
        level: "mend",
        figure: 10,
        limit: 3,
      },
    ],
    quiet: [read({}), read({ verdict: "low", wouldFitTimes: 1000 }), read({ verdict: "impossible" })],
  },
  "reading-range": {
    raises: [
      { boat: read({ verdict: "impossible" }), at: "helm +", level: "mend", figure: 11.2 },
      { boat: read({ verdict: "low", wouldFitTimes: 1000 }), at: "helm +", level: "mend" },
      { boat: read({ verdict: "impossible", wouldFitTimes: 1e-3 }), at: "helm +", level: "mend" },
    ],
    quiet: [read({ verdict: "high" })],
  },
  "readings-differ": {
    raises: [
      {
        boat: read({ differsFrom: [1] }, { differsFrom: [0], taken: { ...taken, value: 12.4 } }),
        at: "helm +",
        level: "mind",
        figure: 12.4,
        limit: 11.2,
      },
    ],
    quiet: [read({}, {})],
  },
  "reading-unplaced": {
    raises: [
      {
        boat: read({ verdict: "unchecked", unplaced: { why: "no such point", name: "helm +" } }),
        at: "helm +",
        level: "unchecked",
      },
      {
        boat: read({ verdict: "unchecked", unplaced: { why: "second point missing" } }),
        at: "helm +",
        level: "unchecked",
      },
    ],
    quiet: [read({ verdict: "high" })],
  },
} satisfies Record<string, RuleCase>;
