import { describe, expect, test } from "vitest";
import { applyEdit, applyEdits } from "../../../src/core/plan/edits/apply.js";
import { readPlan } from "../../../src/core/plan/read.js";
import {
  minuteOfWeek,
  readHours,
  readMoment,
  readShown,
  writeMoment,
} from "../../../src/core/quantity/moments.js";
import { readProblemLine } from "../../../src/words/read-problems.js";
import { docExample, smallPlan } from "./doc-example.js";
import { noWork } from "./empty-sections.js";

function workOf(text: string) {
  const read = readPlan(text);
  if (!read.ok) throw new Error(read.problems.map(readProblemLine).join("\n"));
  return read.plan.work;
}

test("a plan without records has none", () => expect(workOf(smallPlan)).toEqual(noWork));

test("the docs' own record reads whole", () => {
  const work = workOf(docExample());
  expect(work.freeHours).toEqual([
    { day: 1, fromH: 19, toH: 21.5 },
    { day: 5, fromH: 9, toH: 12 },
    { day: 5, fromH: 14, toH: 17.5 },
  ]);
  expect(work.workDone[0]).toMatchObject({ step: "survey / boat", when: "2026-03-28", photos: [] });
  expect(work.workDone[0]?.minutes).toBeCloseTo(40, 9);
  expect(work.workDone[1]?.photos).toEqual([{ file: "trunk.jpg" }]);
  expect(work.notes[0]?.photos).toEqual([{ file: "frame.jpg", shows: "frame behind lamp 4" }]);
  expect(work.readings).toEqual([
    {
      kind: "voltage",
      value: 12.31,
      at: "helm / lamps +",
      against: "house -",
      withOn: ["coaming lamp"],
      meter: { share: 0.005, fixed: 0.02 },
      when: "2026-04-18 20:05",
    },
    { kind: "marking", at: "helm / lamps / fuse", withOn: [], value: 3 },
  ]);
  expect(work.asBuilt.lengths[0]?.size?.key).toBe("16 AWG");
  expect(work.projects[0]).toMatchObject({ name: "first season", finished: "2025-06-01" });
});

test("records of things the plan does not have are kept, not refused", () => {
  const work = workOf(`${smallPlan}
work done: [{step: draw / gone}]
as built:
  lengths: [{run: gone, length: 2 m}]
  holes: [{hole: gone, on: nowhere, at: {along: 1 m, off: 0 mm}, size: 20 mm, behind: foam}]
  entries: [{box: gone, run: gone, on: down, at: [40 mm, 30 mm], hole: 12.5 mm}]
readings: [{at: nowhere, shows: open}]
`);
  expect(work.workDone[0]?.step).toBe("draw / gone");
  expect(work.asBuilt.holes[0]?.behind).toBe("foam");
  expect(work.asBuilt.entries[0]?.atM).toEqual([0.04, 0.03]);
  expect(work.readings[0]).toMatchObject({ kind: "ohm", value: Number.POSITIVE_INFINITY });
});

test.each([
  ["work done: [{when: 2026-01-01}]", "missing key"],
  ["work done: [{step: a, when: 2026-02-30}]", "quantity"],
  ["work done: [{step: a, when: yesterday}]", "quantity"],
  ["work done: {a: b}", "wrong form"],
  ["work done: [{step: a, took: 5}]", "quantity"],
  ["free hours: {monday: 21:00 to 19:00}", "quantity"],
  ["free hours: {someday: 19:00 to 21:00}", "unknown key"],
  ["readings: [{at: a, shows: 12.3}]", "quantity"],
  ["readings: [{at: a, shows: 3 mm}]", "quantity"],
  ["readings: [{at: a, shows: 12.3 V, meter: {fixed: 0.1 A}}]", "other unit"],
  ["as built: {lengths: [{run: a, length: 2}]}", "quantity"],
  ["as built: {joints: [{at: a, kind: glued}]}", "not one of"],
])("%s is refused as %s, with a sentence", (line, code) => {
  const read = readPlan(`${smallPlan}${line}\n`);
  if (read.ok) throw new Error("it read");
  expect(read.problems.map((problem) => problem.code)).toEqual([code]);
  expect(readProblemLine(read.problems[0] ?? never())).not.toMatch(/undefined/);
});

describe("days and hours", () => {
  test("a moment is its own clock's minutes, and comes back as written", () => {
    const read = readMoment("2026-04-11 19:20");
    if (!read.ok) throw new Error("refused");
    expect(read.value.atMin).toBe(Date.UTC(2026, 3, 11, 19, 20) / 60_000);
    expect(writeMoment(read.value.atMin)).toBe("2026-04-11 19:20");
    // 11 April 2026 is a Saturday
    expect(minuteOfWeek(read.value.atMin)).toBe((5 * 24 + 19) * 60 + 20);
  });
  test.each(["2026-13-01", "2026-02-29", "2026-04-11 24:00", "11.4.2026", ""])("%j is no day", (text) =>
    expect(readMoment(text).ok).toBe(false),
  );
  test("a leap day is one", () => expect(readMoment("2028-02-29").ok).toBe(true));
  test("hours up to midnight", () =>
    expect(readHours("9:00 to 24:00")).toEqual({ ok: true, value: { fromH: 9, toH: 24 } }));
  test.each(["9 to 12", "9:00", "12:00 to 9:00", "9:00 to 24:30", "9:70 to 12:00"])(
    "%j are no hours",
    (text) => expect(readHours(text).ok).toBe(false),
  );
  test("reversed polarity has a sign", () =>
    expect(readShown("-12.4 V")).toEqual({ ok: true, value: { kind: "voltage", value: -12.4 } }));
  test("what is printed on a fuse is a current by its unit, and nothing else", () => {
    expect(readShown("marked 7.5 A")).toEqual({ ok: true, value: { kind: "marking", value: 7.5 } });
    expect(readShown("marked 12 V").ok).toBe(false);
    expect(readShown("marked").ok).toBe(false);
  });
});

describe("edits that write records", () => {
  test("a tick is added, and taken away again, and the rest of the text stays", () => {
    const as = "{step: draw / trunk, when: 2026-04-11 19:20}";
    const ticked = applyEdit(smallPlan, { edit: "add", kind: "step done", name: "", as });
    if (!ticked.ok) throw new Error("refused");
    expect(ticked.text.startsWith(smallPlan)).toBe(true);
    expect(ticked.plan.work.workDone).toEqual([
      { step: "draw / trunk", when: "2026-04-11 19:20", photos: [] },
    ]);
    const undone = applyEdit(ticked.text, { edit: "remove field", at: "work done", field: "1" });
    expect(undone.ok && undone.plan.work.workDone).toEqual([]);
  });
  test("several records at once, into sections that are not there yet", () => {
    const made = applyEdits(smallPlan, [
      { edit: "add", kind: "step done", name: "", as: "{step: cut / trunk}" },
      { edit: "add", kind: "built length", name: "", as: "{run: trunk, length: 9 ft 6 in}" },
      { edit: "add", kind: "built joint", name: "", as: "{at: trunk, end: start, kind: crimped ring}" },
      { edit: "add", kind: "reading", name: "", as: "{at: trunk, shows: 12.1 V}" },
      { edit: "add", kind: "step done", name: "", as: "{step: draw / trunk}" },
    ]);
    if (!made.ok) throw new Error(made.problem.code);
    expect(made.plan.work.workDone.map(({ step }) => step)).toEqual(["cut / trunk", "draw / trunk"]);
    expect(made.plan.work.asBuilt.lengths).toHaveLength(1);
    expect(made.plan.work.asBuilt.joints).toHaveLength(1);
    expect(made.plan.work.readings).toHaveLength(1);
  });
});

function never(): never {
  throw new Error("no problem told");
}
