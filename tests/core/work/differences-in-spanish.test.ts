import { describe, expect, test } from "vitest";
import type {
  BuiltEntry,
  BuiltHole,
  BuiltJoint,
  BuiltLength,
  BuiltRating,
} from "../../../src/core/plan/model/work.js";
import type { Difference } from "../../../src/core/work/differences.js";
import type { PlannedHole } from "../../../src/core/work/planned-holes.js";
import type { TickProblem } from "../../../src/core/work/ticks.js";
import { differenceSentence, tickProblemSentence } from "../../../src/words/difference-words.js";
import { differenceInSpanish, tickProblemInSpanish } from "../../../src/words/spanish/difference-words.js";
import { sameFigures } from "../../words/spanish.js";

// no outside check is possible: that both languages tell the same names and the same figures is all a machine can see
const record = { measured: true, photos: [] } as const;
const hole: BuiltHole = {
  ...record,
  hole: "xole",
  on: "xransom",
  side: "port",
  at: { alongM: 0.31, from: "xark", edge: { off: "below", line: "xheer" }, offM: 0.047 },
  sizeM: 0.019,
};
const wanted: PlannedHole = {
  hole: "xole",
  on: "xulkhead",
  side: "starboard",
  at: { alongM: 0.33, offM: 0.05 },
  sizeM: 0.022,
  there: false,
};
const entry: BuiltEntry = {
  ...record,
  box: "xox",
  run: "xun",
  on: "left",
  atM: [0.041, 0.023],
  holeM: 0.0125,
};
const length: BuiltLength = { ...record, run: "xun", lengthM: 3.42 };
const joint: BuiltJoint = { ...record, at: "xun", end: "end", kind: "twist-on cap" };
const rating: BuiltRating = { ...record, device: "xanel / xay / fuse", ratingA: 7.5 };
const planned = { run: "xun", holeMm: 16 } as const;

const differences: readonly Difference[] = [
  { kind: "hole moved", built: hole, alongM: 0.02, offM: -0.006, byM: 0.021 },
  { kind: "hole moved", built: hole, alongM: -0.02, offM: 0.006, byM: 0.021 },
  { kind: "hole moved", built: hole, alongM: 0, offM: 0, byM: 0.014 },
  { kind: "hole not compared", built: hole },
  { kind: "hole on another face", built: hole, wanted },
  { kind: "hole size", built: hole, wantedM: 0.022, byM: 0.003 },
  { kind: "hole size", built: hole, wantedM: 0.016, byM: -0.003 },
  { kind: "hole not wanted", built: hole },
  { kind: "entry moved", built: entry, wanted: { ...planned, on: "right", atM: [0.06, 0.03] }, byM: 0.02 },
  { kind: "entry moved", built: entry, wanted: planned, byM: 0.02 },
  { kind: "entry size", built: entry, wantedM: 0.016, byM: 0.0035 },
  { kind: "entry not wanted", built: entry },
  { kind: "length", built: length, wantedM: 3.3, byM: 0.12 },
  { kind: "length", built: length, wantedM: 3.5, byM: -0.08 },
  { kind: "conductor size", built: length, wanted: "14 AWG" },
  { kind: "run not wanted", built: length },
  { kind: "joint kind", built: joint, wanted: "sealed butt" },
  { kind: "joint not wanted", built: joint },
  { kind: "rating", built: rating, wantedA: 5 },
  { kind: "device not wanted", built: rating },
];
const first = { step: "xrst", reason: "battery last" } as const;
const problems: readonly TickProblem[] = [
  { problem: "out of order", step: "xtep", missing: [first] },
  { problem: "out of order", step: "xtep", missing: [first, first] },
  { problem: "out of order", step: "xtep", missing: [first, first, first] },
  { problem: "ticked twice", step: "xtep", times: 3 },
  { problem: "not in the plan", step: "xtep" },
];

const shows = { lengths: "millimetres", conductors: "metric", paper: "a4" } as const;
const inches = { ...shows, lengths: "inches" } as const;
const namesIn = (sentence: string) => (sentence.match(/\bx[a-z]+/g) ?? []).toSorted();
function sameButInSpanish(inSpanish: string, inEnglish: string) {
  sameFigures(inSpanish, inEnglish);
  expect(namesIn(inSpanish), inSpanish).toEqual(namesIn(inEnglish));
  expect(inSpanish).not.toMatch(
    /undefined|\b(the|plan now|and|of|at|port|starboard|twist|butt|end|left|right|above|below)\b/,
  );
}

describe("what was built otherwise, in Spanish, tells the same names and figures as in English", () => {
  test.each(differences)("$kind", (one) => {
    for (const units of [shows, inches])
      sameButInSpanish(differenceInSpanish(one, units), differenceSentence(one, units));
  });
  test.each(problems)("$problem", (one) => {
    const title = (step: string) => step;
    sameButInSpanish(tickProblemInSpanish(one, title), tickProblemSentence(one, title));
  });
  test("what differs only by its sign does not read alike", () => {
    const all = differences.map((one) => differenceInSpanish(one, shows));
    expect(new Set(all).size).toBe(all.length);
  });
});
