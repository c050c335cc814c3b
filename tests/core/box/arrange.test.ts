import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { arrange } from "../../../src/core/box/arrange.js";
import { checkEntries } from "../../../src/core/box/check-entries.js";
import { type Entry, minWebMm, usualRoom } from "../../../src/core/box/entry-rules.js";
import { type BoxBody, facesOf } from "../../../src/core/box/face.js";
import { nutCornersMm } from "../../../src/core/box/gland.js";

const box = (change: Partial<BoxBody> = {}): BoxBody => ({
  widthMm: 170,
  heightMm: 120,
  depthMm: 75,
  wallMm: 3,
  material: "abs",
  mounted: "wall",
  ...change,
});
const gland = (id: string, size: 12 | 16 | 20 = 12): Entry => {
  const [holeMm, spannerMm] = { 12: [12.5, 15], 16: [16.5, 19], 20: [20.5, 24] }[size];
  return { id, holeMm: holeMm ?? 0, acrossMm: nutCornersMm(spannerMm ?? 1), spanner: true };
};
const many = (count: number, size?: 12 | 16 | 20): Entry[] =>
  Array.from({ length: count }, (_, k) => gland(`g${k}`, size));

test("a few entries lie in one row on the downward face, evenly spread", () => {
  const answer = arrange(facesOf(box()), many(4), box(), usualRoom);
  if (!answer.ok) throw new Error(answer.problem);
  expect(answer.placed.every((entry) => entry.on === "down")).toBe(true);
  const xs = answer.placed.map((entry) => entry.x);
  expect(new Set(answer.placed.map((entry) => entry.y)).size).toBe(1);
  expect((xs[1] ?? 0) - (xs[0] ?? 0)).toBeCloseTo((xs[3] ?? 0) - (xs[2] ?? 0), 9);
  expect((xs[0] ?? 0) + (xs[3] ?? 0)).toBeCloseTo(170, 9);
});

test("what the downward face does not take goes to the sides, the upward face last", () => {
  const answer = arrange(facesOf(box({ depthMm: 40 })), many(14), box({ depthMm: 40 }), usualRoom);
  if (!answer.ok) throw new Error(answer.problem);
  const faces = new Set(answer.placed.map((entry) => entry.on));
  expect(faces.has("down") && faces.has("left")).toBe(true);
  expect(faces.has("up")).toBe(false);
});

describe("the law: nothing laid out breaks a rule", () => {
  test("any box, any entries", () => {
    const sizes = fc.array(fc.constantFrom<12 | 16 | 20>(12, 16, 20), { minLength: 1, maxLength: 25 });
    const shape = fc.record({
      widthMm: fc.integer({ min: 50, max: 260 }),
      heightMm: fc.integer({ min: 50, max: 260 }),
      depthMm: fc.integer({ min: 30, max: 120 }),
      bossMm: fc.integer({ min: 0, max: 12 }),
      lidLipMm: fc.integer({ min: 0, max: 8 }),
      material: fc.constantFrom<BoxBody["material"]>("abs", "polyethylene", "cast aluminium"),
      mounted: fc.constantFrom<BoxBody["mounted"]>("wall", "floor"),
    });
    let laid = 0;
    fc.assert(
      fc.property(shape, sizes, (change, list) => {
        const body = box(change);
        const faces = facesOf(body);
        const entries = list.map((size, k) => gland(`g${k}`, size));
        const answer = arrange(faces, entries, body, usualRoom);
        if (!answer.ok) return;
        laid += 1;
        expect(answer.placed.map((one) => one.id).sort()).toEqual(entries.map((one) => one.id).sort());
        const faults = checkEntries(faces, answer.placed, body, usualRoom).filter(
          (one) => one.fault !== "upward-face",
        );
        expect(faults).toEqual([]);
      }),
      { numRuns: 400 },
    );
    expect(laid).toBeGreaterThan(50);
  });
});

test("40 entries of two sizes on one box", () => {
  const body = box({ widthMm: 300, heightMm: 220, depthMm: 90 });
  const entries = [...many(30), ...many(10, 16).map((entry) => ({ ...entry, id: `b${entry.id}` }))];
  const answer = arrange(facesOf(body), entries, body, usualRoom);
  expect(answer.ok && answer.placed.length).toBe(40);
});

describe("what does not go is named", () => {
  test("an entry larger than any face", () => {
    const answer = arrange(
      facesOf(box({ depthMm: 30 })),
      [gland("main", 20)],
      box({ depthMm: 30 }),
      usualRoom,
    );
    expect(answer).toEqual({
      ok: false,
      problem: "entry-too-large",
      without: ["main"],
      room: 0,
      proof: "proven",
    });
  });
  test("more entries than any arrangement takes is proven by Oler's bound", () => {
    const answer = arrange(facesOf(box()), many(200), box(), usualRoom);
    expect(answer).toMatchObject({ ok: false, problem: "too-many-entries", proof: "proven" });
  });
  test("a face asked for is kept to", () => {
    const entry = { ...gland("aft", 16), face: "left" as const };
    const answer = arrange(facesOf(box()), [entry], box(), usualRoom);
    expect(answer).toMatchObject({ ok: true, placed: [{ on: "left" }] });
    const closed = box({ closedFaces: ["left"] });
    expect(arrange(facesOf(closed), [entry], closed, usualRoom)).toMatchObject({
      ok: false,
      problem: "entry-too-large",
    });
  });
});

describe("holes that are there already are held against the rules", () => {
  const faces = facesOf(box({ bossMm: 10, lidLipMm: 4 }));
  const at = (x: number, y: number, id = "a") => ({ ...gland(id), on: "down" as const, x, y });
  const faults = (...placed: ReturnType<typeof at>[]) =>
    checkEntries(faces, placed, box(), usualRoom).map((one) => one.fault);
  test.each([
    [5, 37, "off-the-face"],
    [15, 37, "on-boss"],
    [85, 10, "near-base"],
    [85, 62, "near-lid"],
  ] as const)("at %d, %d: %s", (x, y, fault) => expect(faults(at(x, y))).toContain(fault));
  test("in the middle nothing is wrong", () => expect(faults(at(85, 37))).toEqual([]));
  test("two too close", () => {
    expect(faults(at(80, 37), at(97, 37, "b"))).toEqual(["thin-web", "nuts-touch"]);
    expect(faults(at(80, 37), at(100, 37, "b"))).toEqual(["no-spanner-room"]);
  });
  test("a thin web in a wall that cracks", () => {
    const brittle = { material: "acrylic", wallMm: 3 } as const;
    const [fault] = checkEntries(faces, [at(80, 37), at(101.5, 37, "b")], brittle, usualRoom);
    expect(fault).toMatchObject({
      fault: "thin-web",
      crackRisk: true,
      figureMm: 9,
      limitMm: minWebMm(brittle, 12.5),
    });
  });
  test("the face against the wall is no place for a hole", () => {
    expect(
      checkEntries(facesOf(box({ closedFaces: ["down"] })), [at(85, 37)], box(), usualRoom),
    ).toMatchObject([{ fault: "closed-face" }]);
  });
});
