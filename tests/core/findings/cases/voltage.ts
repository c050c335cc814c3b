import { boat, corner, gearFigures, lamp } from "../boat.js";
import type { RuleCase } from "../case.js";

const drop = (dropShare: number) =>
  boat({ corners: [corner({ gear: [gearFigures({ dropShare, dropV: dropShare * 12 })] })] });
const low = (role: "lighting" | "navigation light") =>
  boat({
    gear: [lamp({ role })],
    corners: [corner({ gear: [gearFigures({ voltageV: 9.6, underVoltage: true })] })],
  });
const charged = (voltageV: number) =>
  boat({ corners: [corner({ name: "highest voltage", gear: [gearFigures({ voltageV })] })] });
const on24 = () =>
  boat({
    plan: {
      circuits: new Map([
        ["helm / lamps", { id: "helm / lamps", supply: "drive", nominalV: 24, battery: "drive" }],
      ]),
    },
    corners: [corner({ gear: [gearFigures({ voltageV: 24 })] })],
  });

export const voltageCases = {
  "voltage-drop": {
    raises: [
      { boat: () => drop(0.12), at: "lamp", level: "mend", figure: 12, limit: 10 },
      // just past its limit: told with as many digits as it takes to see that
      { boat: () => drop(0.1003), at: "lamp", level: "mend", limit: 10, says: /10\.03\s%/ },
      { boat: () => drop(Number.NaN), at: "lamp", level: "unchecked" },
      { boat: () => boat({ corners: [] }), at: "lamp", level: "unchecked" },
      { boat: () => boat({ corners: [corner({ status: "collapsed" })] }), at: "lamp", level: "unchecked" },
    ],
    quiet: [() => drop(0.1)],
  },
  "under-voltage": {
    raises: [
      { boat: () => low("lighting"), at: "lamp", level: "mend", figure: 9.6, limit: 10 },
      { boat: () => low("navigation light"), at: "lamp", level: "stop" },
      { boat: () => boat({ corners: [corner({ cutOut: ["lamp"] })] }), at: "lamp", level: "mend" },
    ],
  },
  "over-voltage": {
    raises: [{ boat: () => charged(16.2), at: "lamp", level: "mend", figure: 16.2, limit: 16 }],
    quiet: [() => charged(16), () => charged(16 + 4e-12), on24],
  },
  collapse: {
    raises: [
      {
        boat: () =>
          boat({ corners: [corner({ status: "collapsed", carriedShare: 0.7, weakestGear: "lamp" })] }),
        at: "lamp",
        level: "stop",
        figure: 70,
        limit: 100,
      },
    ],
  },
  "nominal-voltage": {
    raises: [{ boat: on24, at: "lamp", level: "stop", figure: 24, limit: 16 }],
    quiet: [() => boat({ gear: [lamp({ minV: 12, maxV: 12 })] })],
  },
} as const satisfies Record<string, RuleCase>;
