import type { CheckInput } from "../../../../src/core/findings/check-input.js";
import type { RuleCase } from "../case.js";
import { hullBoat } from "../hull-boat.js";
import { layoutBoat } from "../layout-boat.js";

const built =
  (list: string, ...records: readonly string[]) =>
  () =>
    layoutBoat({ more: `as built: {${list}: [${records.join(", ")}]}` });
const done =
  (...ticks: readonly string[]) =>
  () =>
    layoutBoat({ more: `work done: [${ticks.map((step) => `{step: ${step}}`).join(", ")}]` });
/** The skiff with a hole on record: her own gear, faces and record with the sound electrics. */
const drilled = (record: string) => (): CheckInput => {
  const input = hullBoat(["runs:", `as built: {holes: [${record}]}\nruns:`]);
  const own = input.hull?.plan.source;
  if (own === undefined) throw new Error("the skiff has a hull");
  const { gear, hull, work } = own;
  return { ...input, plan: { ...input.plan, source: { ...input.plan.source, gear, hull, work } } };
};

export const workCases = {
  "built-conductor": {
    raises: [
      { boat: built("lengths", "{run: trunk, length: 8 ft, size: 18 AWG}"), at: "trunk", level: "mend" },
      { boat: built("lengths", "{run: trunk, length: 8 ft, size: 14 AWG}"), at: "trunk", level: "mind" },
    ],
    quiet: [
      built("lengths", "{run: trunk, length: 8 ft, size: 16 AWG}"),
      // of two records the last counts
      built(
        "lengths",
        "{run: trunk, length: 8 ft, size: 18 AWG}",
        "{run: trunk, length: 8 ft, size: 16 AWG}",
      ),
    ],
  },
  "built-fuse": {
    raises: [
      {
        boat: built("ratings", "{device: helm / lamps / fuse, rating: 30 A}"),
        at: "helm / lamps / fuse",
        level: "stop",
        figure: 30,
        limit: 3,
      },
      {
        boat: built("ratings", "{device: helm / lamps / fuse, rating: 2 A}"),
        at: "helm / lamps / fuse",
        level: "mend",
        figure: 2,
        limit: 3,
      },
    ],
    quiet: [built("ratings", "{device: helm / lamps / fuse, rating: 3 A}")],
  },
  "built-hole": {
    raises: [
      {
        boat: drilled("{hole: switch, on: board, at: {along: 220 mm, off: 100 mm}, size: 22 mm}"),
        at: "switch",
        level: "mend",
        figure: 0.02,
      },
      {
        boat: drilled("{hole: switch, on: lining, at: {along: 700 mm, off: 100 mm}, size: 22 mm}"),
        at: "switch",
        level: "mend",
      },
      {
        boat: drilled("{hole: switch, on: board, at: {along: 200 mm, off: 100 mm}, size: 19 mm}"),
        at: "switch",
        level: "mend",
        figure: 19,
        limit: 22,
      },
      {
        boat: drilled(
          "{hole: switch, on: board, at: {along: 200 mm, from: nowhere, off: 100 mm}, size: 22 mm}",
        ),
        at: "switch",
        level: "unchecked",
      },
    ],
    quiet: [
      drilled("{hole: switch, on: board, at: {along: 202 mm, off: 100 mm}, size: 22 mm}"),
      // the same place counted from another point
      drilled("{hole: switch, on: board, at: {along: -200 mm, from: board right, off: 100 mm}, size: 22 mm}"),
    ],
  },
  "built-joint": {
    raises: [
      { boat: built("joints", "{at: trunk, end: start, kind: crimped fork}"), at: "trunk", level: "mind" },
    ],
    quiet: [built("joints", "{at: leads 1, end: end, kind: sealed butt}")],
  },
  "built-length": {
    raises: [
      {
        boat: built("lengths", "{run: trunk, length: 9 ft, measured: true}"),
        at: "trunk",
        level: "mind",
        figure: 2.7432,
        limit: 2.4384,
      },
    ],
    quiet: [built("lengths", "{run: trunk, length: 8 ft 1/16 in}")],
  },
  "record-of-nothing": {
    raises: [
      {
        boat: built("holes", "{hole: horn, on: deck, at: {along: 1 m, off: 0 mm}, size: 20 mm}"),
        at: "horn",
        level: "mend",
      },
      {
        boat: built(
          "entries",
          "{box: fore box, run: horn cable, on: down, at: [40 mm, 30 mm], hole: 12.5 mm}",
        ),
        at: "fore box",
        level: "mend",
      },
      { boat: built("lengths", "{run: horn cable, length: 2 m}"), at: "horn cable", level: "mind" },
      { boat: built("joints", "{at: horn, kind: sealed butt}"), at: "horn", level: "mind" },
      {
        boat: built("ratings", "{device: helm / horn / fuse, rating: 5 A}"),
        at: "helm / horn / fuse",
        level: "mind",
      },
      { boat: done("draw / horn cable"), at: "draw / horn cable", level: "mind" },
    ],
    quiet: [
      done("survey / boat"),
      built("entries", "{box: fore box, run: spare, on: down, at: [40 mm, 30 mm], hole: 12.5 mm}"),
    ],
  },
  "step-out-of-order": {
    raises: [
      { boat: done("survey / boat", "drill / lamp"), at: "drill / lamp", level: "mind" },
      { boat: done("survey / boat", "survey / boat"), at: "survey / boat", level: "mind", figure: 2 },
    ],
    quiet: [done("survey / boat", "mark / lamp", "drill / lamp")],
  },
} as const satisfies Readonly<Record<string, RuleCase>>;
