import type { BatteryTrace, OutingFigures } from "../../../../src/core/energy/types.js";
import type { LooseEnd } from "../../../../src/core/plan/completed.js";
import { boat, converter, corner } from "../boat.js";
import type { RuleCase } from "../case.js";

const loose = (kind: LooseEnd["kind"], at: string, others: string[] = []) =>
  boat({ plan: { looseEnds: [{ kind, at, with: others }] } });

const converting = (inputV: number, outputA: number, off = false, over = false) =>
  boat({
    converters: [converter()],
    corners: [corner({ converters: [{ id: "buck", inputV, inputA: 3, outputA, lossW: 4, off, over }] })],
  });

const trace = (change: Partial<BatteryTrace>): OutingFigures => ({
  name: "dawn tide",
  lastsH: 5,
  batteries: [{ battery: "house", points: [], usedAh: 20, chargeLeft: 0.6, usableAh: 45, ...change }],
  brownOuts: [],
  uses: [],
  hoursToReserve: [],
});

export const supplyCases = {
  "not-fed": {
    raises: [
      { boat: () => loose("gear not fed", "lamp"), at: "lamp", level: "mend" },
      { boat: () => loose("box not fed", "fore box"), at: "fore box", level: "mend" },
    ],
    quiet: [() => loose("way unclear", "lamp run")],
  },
  "run-carries-nothing": {
    raises: [{ boat: () => loose("run carries nothing", "lamp run"), at: "lamp run", level: "mend" }],
    quiet: [() => loose("gear not fed", "lamp")],
  },
  "way-unclear": {
    raises: [
      {
        boat: () => loose("way unclear", "lamp run", ["helm / lamps", "helm / bilge"]),
        at: "lamp run",
        level: "mend",
      },
    ],
    quiet: [() => loose("gear not fed", "lamp")],
  },
  "two-circuits": {
    raises: [
      {
        boat: () => loose("two circuits at one gear", "lamp", ["helm / lamps", "helm / bilge"]),
        at: "lamp",
        level: "stop",
      },
    ],
    quiet: [() => loose("gear not fed", "lamp")],
  },
  "converter-loop": {
    raises: [{ boat: () => loose("converter loop", "buck", ["buck"]), at: "buck", level: "stop" }],
    quiet: [() => loose("converter not fed", "buck")],
  },
  "converter-overloaded": {
    raises: [
      { boat: () => converting(24, 12, false, true), at: "buck", level: "mend", figure: 12, limit: 10 },
    ],
    quiet: [() => converting(24, 10)],
  },
  "converter-input": {
    raises: [
      { boat: () => converting(19, 0, true), at: "buck", level: "mend", figure: 19, limit: 20 },
      { boat: () => converting(33, 5), at: "buck", level: "stop", figure: 33, limit: 32 },
    ],
    quiet: [() => converting(20, 5), () => converting(32, 5)],
  },
  "outing-reserve": {
    raises: [
      {
        boat: () => boat({ outings: [trace({ reserveAtH: 4.2 })] }),
        at: "dawn tide",
        level: "mend",
        figure: 4.2,
        limit: 5,
      },
    ],
    quiet: [
      () => boat({ outings: [trace({})] }),
      () => boat({ outings: [trace({ reserveAtH: 2, cutOffAtH: 4 })] }),
    ],
  },
  "outing-cut-off": {
    raises: [
      {
        boat: () => boat({ outings: [trace({ reserveAtH: 2, cutOffAtH: 4 })] }),
        at: "dawn tide",
        level: "stop",
        figure: 4,
        limit: 5,
      },
    ],
    quiet: [() => boat({ outings: [trace({ reserveAtH: 2 })] })],
  },
  "outing-brown-out": {
    raises: [
      {
        boat: () =>
          boat({
            outings: [{ ...trace({}), brownOuts: [{ gear: "lamp", atH: 3, voltageV: 9.8, minV: 10 }] }],
          }),
        at: "lamp",
        level: "mend",
        figure: 9.8,
        limit: 10,
      },
    ],
    quiet: [() => boat({ outings: [trace({})] })],
  },
} as const satisfies Record<string, RuleCase>;
