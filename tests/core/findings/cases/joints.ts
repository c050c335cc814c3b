import type { CheckInput } from "../../../../src/core/findings/check-input.js";
import type { CompleteBox, CompleteRun } from "../../../../src/core/plan/completed.js";
import type { JointKind } from "../../../../src/core/plan/model/common.js";
import { battery, boat, box, branch, corner, feed, lamp, lampRun, panel, run, writtenAs } from "../boat.js";
import type { RuleCase } from "../case.js";

const gearJoint = (joint: JointKind, surroundings: "dry" | "wet" | "bilge", currentA = 0.5): CheckInput =>
  boat({
    gear: [lamp({ joint, surroundings })],
    corners: [
      corner({
        gear: [
          {
            ...corner().gear[0],
            id: "lamp",
            on: true,
            currentA,
            voltageV: 12,
            dropV: 0,
            dropShare: 0,
            source: "house",
            underVoltage: false,
          },
        ],
        branches: [branch("lamp run / lamps / out", "lamp run", currentA)],
      }),
    ],
  });
const boxed = (change: Partial<CompleteBox>, runChange: Partial<CompleteRun> = {}): CheckInput =>
  boat({
    boxes: [box(change)],
    runs: [feed(), run("trunk", "helm / lamps", "fore box", runChange), lampRun()],
  });
const bilgePump = (written: "splash" | undefined) => {
  const pump = lampRun({ surroundings: written ?? "bilge" });
  return boat({
    gear: [lamp({ surroundings: "bilge" })],
    runs: [feed(), pump],
    plan: {
      source: {
        runs: [writtenAs(feed()), written ? { ...writtenAs(pump), surroundings: written } : writtenAs(pump)],
      },
    },
  });
};

export const jointCases = {
  "twisted-joint": {
    raises: [
      { boat: () => gearJoint("twist-on cap", "wet"), at: "lamp", level: "stop" },
      { boat: () => gearJoint("twisted and taped", "dry"), at: "lamp", level: "mend" },
      {
        boat: () => boxed({ surroundings: "splash" }, { jointAtEnd: "twist-on cap" }),
        at: "trunk",
        level: "stop",
      },
    ],
  },
  "joint-unsealed-wet": {
    raises: [
      { boat: () => gearJoint("crimped butt", "wet"), at: "lamp", level: "mend" },
      {
        boat: () => boxed({ surroundings: "wet" }, { jointAtEnd: "screw terminal" }),
        at: "trunk",
        level: "mend",
      },
    ],
    quiet: [
      () => gearJoint("sealed butt", "wet"),
      () => gearJoint("crimped butt", "dry"),
      () => gearJoint("twist-on cap", "wet"),
    ],
  },
  "joint-in-bilge": {
    raises: [
      { boat: () => bilgePump(undefined), at: "lamp", level: "mend" },
      { boat: () => boxed({ surroundings: "bilge" }), at: "trunk", level: "mend" },
    ],
    quiet: [() => bilgePump("splash")],
  },
  "solder-only-joint": {
    raises: [
      { boat: () => gearJoint("soldered and sleeved", "dry"), at: "lamp", level: "mend" },
      { boat: () => gearJoint("solder sleeve", "dry"), at: "lamp", level: "mind" },
    ],
  },
  "tap-joint": {
    raises: [
      { boat: () => gearJoint("tap", "dry", 11), at: "lamp", level: "mend", figure: 11, limit: 10 },
      { boat: () => gearJoint("tap", "dry", 2), at: "lamp", level: "mind" },
    ],
  },
  "joint-overloaded": {
    raises: [
      { boat: () => gearJoint("pin plug", "dry", 16), at: "lamp", level: "mend", figure: 16, limit: 15 },
    ],
    quiet: [() => gearJoint("pin plug", "dry", 15), () => gearJoint("tap", "dry", 20)],
  },
  "push-on-tab": {
    raises: [{ boat: () => gearJoint("push-on tab", "dry"), at: "lamp", level: "mind" }],
  },
  "battery-terminal-spring": {
    raises: [
      {
        boat: () => boat({ runs: [feed({ jointAtStart: "pin plug" }), lampRun()] }),
        at: "battery feed",
        level: "mend",
      },
    ],
    quiet: [() => gearJoint("pin plug", "dry")],
  },
  "terminals-per-stud": {
    raises: [
      {
        boat: () =>
          boat({ runs: [feed(), ...[1, 2, 3, 4].map((n) => run(`lead ${n}`, "house", "lamp")), lampRun()] }),
        at: "house",
        level: "mend",
        figure: 5,
        limit: 4,
      },
      { boat: () => boxed({ terminalsPerStud: 5 }), at: "fore box", level: "mend", figure: 5, limit: 4 },
      {
        boat: () =>
          boat({
            panels: [panel({ studsPerBus: 1 })],
            runs: [feed(), lampRun(), ...[1, 2, 3].map((n) => run(`lead ${n}`, "helm / lamps", "lamp"))],
          }),
        at: "helm",
        level: "mend",
        figure: 5,
        limit: 4,
      },
    ],
    quiet: [
      () => boxed({ terminalsPerStud: 4 }),
      () =>
        boat({
          batteries: [battery({ studsPerPost: 2 })],
          runs: [feed(), ...[1, 2, 3, 4].map((n) => run(`lead ${n}`, "house", "lamp")), lampRun()],
        }),
    ],
  },
  "bare-live-posts": {
    raises: [
      { boat: () => boat({ batteries: [battery({ covered: false })] }), at: "house", level: "mend" },
      { boat: () => boat({ panels: [{ ...panel(), covered: false }] }), at: "helm", level: "mend" },
      { boat: () => boat({ boxes: [uncovered()] }), at: "fore box", level: "unchecked" },
    ],
  },
} as const satisfies Record<string, RuleCase>;

function uncovered(): CompleteBox {
  const { covered: _covered, ...rest } = box();
  return rest;
}
