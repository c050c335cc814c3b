import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { workOutHull } from "../../src/core/hull-figures.js";
import { completePlan } from "../../src/core/plan/complete.js";
import { readPlan } from "../../src/core/plan/read.js";

const textOf = (name: string) =>
  readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), "utf8");

/** Hull figures of a plan, or undefined where it is refused on reading. */
function hullOf(text: string) {
  const read = readPlan(text);
  return read.ok ? workOutHull(completePlan(read.plan)) : undefined;
}

/** Where the numbers with a unit of length stand in the parts of a plan that the hull is made from. */
function lengthsIn(text: string): { at: number; length: number; unit: string }[] {
  const lengths = [...text.matchAll(/-?\d[\d ./]*(?:\/\d+)? (mm|m|in)\b/g)];
  const parts = [...text.matchAll(/^(craft|references|faces|marks|float):[^\n]*\n(?:(?: .*)?\n)*/gm)];
  return lengths
    .filter(({ index }) => parts.some((part) => index >= part.index && index < part.index + part[0].length))
    .map((found) => ({ at: found.index, length: found[0].length, unit: found[1] ?? "mm" }));
}

const strange = ["0", "-1", "0.0001", "1", "37", "500", "12345", "9999999", "-9999999"];

describe.each(["utility", "launch", "tender"])("%s with lengths that make no boat", (name) => {
  const text = textOf(name);
  const lengths = lengthsIn(text);

  test("gives figures and problems, never a throw, and in time", () => {
    expect(lengths.length).toBeGreaterThan(15);
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(lengths.length - 1), fc.constantFrom(...strange)), {
          minLength: 1,
          maxLength: 4,
        }),
        (changes) => {
          const wanted = new Map(changes);
          let changed = text;
          for (const [index, value] of [...wanted].toSorted(([a], [b]) => b - a)) {
            const found = lengths[index];
            if (found === undefined) continue;
            changed = `${changed.slice(0, found.at)}${value} ${found.unit}${changed.slice(found.at + found.length)}`;
          }
          const figures = hullOf(changed);
          for (const problem of figures?.problems ?? []) expect(problem.at).not.toBe("");
        },
      ),
      { numRuns: 80, seed: 3 },
    );
  }, 600_000);
});

describe("what the issue names, each told at its place with what would be right", () => {
  const utility = textOf("utility");
  const problemsOf = (from: string | RegExp, to: string) => {
    const changed = utility.replace(from, to);
    expect(changed).not.toBe(utility);
    const figures = hullOf(changed);
    if (figures === undefined) throw new Error("refused on reading");
    return figures.problems;
  };
  test("stations out of order", () => {
    const [first] = problemsOf("[0 in, 20 in, 40 in,", "[0 in, 40 in, 20 in,");
    expect(first).toMatchObject({
      problem: "stations out of order",
      at: "keel",
      figure: 0.508,
      limit: 1.016,
    });
  });
  test("lines that cross, with the height that would be right", () => {
    const [first] = problemsOf(
      "heights: [25 7/8 in, 26 in, 26 1/4 in",
      "heights: [25 7/8 in, 4 in, 26 1/4 in",
    );
    expect(first).toMatchObject({ problem: "lines cross", at: "sheer", with: ["chine"] });
    expect(first?.right).toBeGreaterThan(0.4);
  });
  test("a surface that stays open at the keel", () => {
    const apart = `half-breadths: [${Array.from({ length: 11 }, () => "3 in").join(", ")}]`;
    const found = problemsOf("      keel:\n", `      keel:\n        ${apart}\n`);
    expect(found).toContainEqual(
      expect.objectContaining({ problem: "open surface", at: "keel", figure: expect.closeTo(0.0762, 6) }),
    );
  });
  test("a measurement that is not fair, and what it would be", () => {
    const found = problemsOf("[32 3/4 in, 33 1/2 in, 34 1/4 in", "[32 3/4 in, 33 1/2 in, 36 1/4 in");
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ problem: "unfair measurement", at: "sheer at 1.016 m" });
    expect(Math.abs((found[0]?.right ?? 0) / 0.0254 - 34.25)).toBeLessThan(0.2);
  });
  test("a mark that no tape can reach: from where, how far, how long the tape is", () => {
    const found = problemsOf("longest: 16 ft", "longest: 10 in");
    expect(found).toContainEqual(
      expect.objectContaining({
        problem: "unreachable by tape",
        at: "coaming lamp 1",
        with: ["oar block"],
        limit: 0.254,
      }),
    );
  });
  test("three reference points in a line, with a mirror image that lies on the face too", () => {
    const lined = utility
      .replace(
        "board corner: {face: helm board, along: 0 in, off: 0 in}",
        "board corner: {face: helm board, along: 0 in, off: 2 in}",
      )
      .replace(
        "board top: {face: helm board, along: 0 in, off: 6 in}",
        "board top: {face: helm board, along: 6 in, off: 2 in}",
      )
      .replace(
        "board end: {face: helm board, along: 12 in, off: 0 in}",
        "board end: {face: helm board, along: 12 in, off: 2 in}",
      )
      .replace("graduation: 1/16 in, longest", "method: two tapes, graduation: 1/16 in, longest");
    const found = hullOf(lined)?.problems ?? [];
    expect(found.map(({ problem }) => problem)).toContain("references in a line");
  });
  test("a place far off its face is told as that", () => {
    const found = problemsOf("along: 20 in, below: sheer, off: 4 in", "along: 90 m, below: sheer, off: 4 in");
    expect(found).toContainEqual(expect.objectContaining({ problem: "off the face", at: "bilge outlet" }));
    const point = problemsOf(
      "along: 113 in, below: sheer, off: 13 in",
      "along: 113 in, below: sheer, off: 90 m",
    );
    expect(point).toContainEqual(expect.objectContaining({ problem: "off the face", at: "step bracket" }));
  });
  test("a girth measured downwards is read like one measured upwards", () => {
    expect(problemsOf("line: chine, to: sheer, at", "line: sheer, to: chine, at")).toEqual([]);
  });
});
