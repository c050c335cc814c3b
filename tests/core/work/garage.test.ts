import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { workOut } from "../../../src/core/figures.js";
import { applyEdits } from "../../../src/core/plan/edits/apply.js";
import type { Edit } from "../../../src/core/plan/edits/edit.js";
import { editSound } from "../../../src/core/plan/edits/edit-sound.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { readMoment } from "../../../src/core/quantity/moments.js";
import { nextStep, planWork, type WorkFigures } from "../../../src/core/work/plan-work.js";
import { byProject } from "../../../src/core/work/projects.js";
import {
  finishEdits,
  noteEdits,
  readingEdits,
  tickEdits,
  undoEdits,
} from "../../../src/core/work/work-edits.js";
import { noWork } from "../plan/empty-sections.js";

/** The tender with a panel that is not drilled yet. */
const tender = readFileSync("examples/tender.yaml", "utf8").replace(/^ {4}holes:.*\n(?: {6}.*\n)+/m, "");

function sound(text: string) {
  const read = readPlan(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return { ...read, text };
}
const at = (text: string) => {
  const read = readMoment(text);
  if (!read.ok) throw new Error(text);
  return read.value.atMin;
};
function edited(text: string, edits: readonly Edit[]): string {
  const made = applyEdits(text, edits);
  if (!made.ok) throw new Error(JSON.stringify(made.problem));
  return made.text;
}
const workOf = (text: string, nowMin?: number) => planWork(workOut(sound(text).plan).figures, {}, nowMin);

/** Ticks everything in the order proposed, a minute after the other at least. */
function walk(
  from: string,
  begin: number,
): { text: string; ids: string[]; last: WorkFigures; nowMin: number } {
  let now = begin;
  const ids: string[] = [];
  let plan = sound(from);
  for (;;) {
    const { figures } = workOut(plan.plan);
    const work = planWork(figures, {}, now);
    const next = nextStep(work);
    if (next === undefined) return { text: plan.text, ids, last: work, nowMin: now };
    now += next.waitMin + 1;
    ids.push(next.step.id);
    const made = editSound(plan, tickEdits(figures, work.facts, next.step, { nowMin: Math.floor(now) }));
    if (!made.ok) throw new Error(JSON.stringify(made.problem));
    plan = made as typeof plan & typeof made;
    if (ids.length > 500) throw new Error("it never ends");
  }
}

const first = walk(tender, at("2026-04-11 09:00"));

describe("a whole project, step by step", () => {
  test("every step is come to once, in an order that keeps every precedence; nothing is odd afterwards", () => {
    const all = workOf(tender).project;
    expect([...first.ids].sort()).toEqual(all.steps.map(({ id }) => id).sort());
    const place = new Map(first.ids.map((id, index) => [id, index]));
    for (const { before, after } of all.precedences)
      expect(place.get(before) ?? 1e9, `${before} before ${after}`).toBeLessThan(place.get(after) ?? -1);
    expect(first.last.asBuilt.problems).toEqual([]);
    expect(first.last.asBuilt.differences).toEqual([]);
  });
  test("what was made is on record: every cable, every joint, every fuse", () => {
    const { plan } = sound(first.text);
    const { figures } = workOut(plan);
    const { asBuilt } = plan.work;
    expect(asBuilt.lengths.map(({ run }) => run).sort()).toEqual(
      figures.plan.runs.map(({ name }) => name).sort(),
    );
    expect(asBuilt.joints).toHaveLength(2 * figures.plan.runs.length);
    expect(asBuilt.ratings.length).toBeGreaterThan(0);
    expect(asBuilt.lengths.every(({ measured }) => !measured)).toBe(true);
  });
  test("the owner's own lines and comments are all still there", () => {
    expect(first.text.startsWith(tender.trimEnd())).toBe(true);
  });
});

test("a tick taken back leaves the plan as it was, and its note with the step", () => {
  const plan = sound(tender);
  const { figures } = workOut(plan.plan);
  const work = planWork(figures);
  for (const { step } of work.order.steps) {
    const found = work.step.get(step);
    if (found === undefined) throw new Error(step);
    const ticked = edited(tender, tickEdits(figures, work.facts, found, { nowMin: at("2026-04-11 09:00") }));
    const { work: back } = sound(edited(ticked, undoEdits(sound(ticked).plan, step))).plan;
    expect([back.workDone, ...Object.values(back.asBuilt).flat()]).toEqual([[]]);
    if (step !== "survey / boat") continue;
    const noted = tickEdits(figures, work.facts, found, {
      nowMin: 30_000_000,
      note: "rot: here, #1",
      photos: [{ file: "a b.jpg" }],
    });
    const kept = sound(edited(edited(tender, noted), undoEdits(sound(edited(tender, noted)).plan, step))).plan
      .work;
    expect(kept.notes).toEqual([
      { step, when: "2027-01-15 08:00", note: "rot: here, #1", photos: [{ file: "a b.jpg" }] },
    ]);
  }
}, 60_000);

test("a rest runs from the tick's own time, through any reload, and holds what waits for it", () => {
  const { figures } = workOut(sound(tender).plan);
  const bed = workOf(tender).project.precedences.find(({ cure }) => cure?.key === "sealant before wet");
  if (bed === undefined) throw new Error("nothing is bedded");
  const when = "2026-04-11 10:00";
  const text = `${tender}\nwork done: [{step: ${bed.before}, when: ${when}}]\n`;
  const soon = workOf(text, at(when) + 60);
  const hours = bed.cure?.hours ?? 0;
  expect(soon.rests).toMatchObject([{ after: bed.before, leftMin: hours * 60 - 60, holds: [bed.after] }]);
  const held = soon.order.steps.find(({ step }) => step === bed.after);
  const begun = soon.order.steps[0]?.startMin ?? 0;
  expect((held?.startMin ?? 0) - begun).toBeGreaterThanOrEqual(hours * 60 - 60 - 1e-9);
  expect(workOf(text, at(when) + hours * 60 + 1).rests[0]?.leftMin).toBe(0);
  // a day without a time never lets it run out too early
  const dayOnly = `${tender}\nwork done: [{step: ${bed.before}, when: 2026-04-11}]\n`;
  expect(workOf(dayOnly, at("2026-04-12 00:00")).rests[0]?.leftMin).toBe(hours * 60);
  expect(figures.plan.gear.length).toBeGreaterThan(0);
});

describe("the next project starts from as built", () => {
  const finished = edited(
    first.text,
    finishEdits(sound(first.text).plan.work, "first fitting", Math.floor(first.nowMin) + 1, "dry all summer"),
  );
  test("nothing is left of the first", () => {
    const work = workOf(finished);
    expect(work.project.steps).toEqual([]);
    expect(work.asBuilt.steps.every(({ state }) => state === "stands")).toBe(true);
  });
  const [panel = ""] = sound(tender).plan.panels.map(({ name }) => name);
  const second = edited(finished, [
    { edit: "add", kind: "gear", name: "stern lamp", as: "{role: lighting, draws: 1 W, works: 9 V to 16 V}" },
    { edit: "add", kind: "way", name: `${panel} / stern`, as: "{switch: {rating: 5 A}}" },
    {
      edit: "add",
      kind: "run",
      name: "stern cable",
      as: `{from: ${panel} / stern, to: stern lamp, length: 2 m}`,
    },
  ]);
  test("only what the new lamp needs, with the battery off first and the panel opened, proven and closed again", () => {
    const { ids, last } = walk(second, Math.floor(first.nowMin) + 2000);
    const battery = sound(tender).plan.batteries[0]?.name ?? "";
    expect(ids[0]).toMatch(/^(survey|mark|cut|battery off|drill)/);
    for (const wanted of [
      `battery off / ${battery}`,
      `open / ${panel}`,
      `drill box / ${panel}`,
      "draw / stern cable",
      "prove polarity",
      `battery on / ${battery}`,
      `prove / ${panel} / stern`,
      `close / ${panel}`,
    ])
      expect(ids).toContain(wanted);
    expect(ids.indexOf(`battery off / ${battery}`)).toBeLessThan(ids.indexOf(`open / ${panel}`));
    expect(ids.indexOf(`open / ${panel}`)).toBeLessThan(ids.indexOf("connect / stern cable / start"));
    expect(ids.indexOf(`battery on / ${battery}`)).toBeLessThan(ids.indexOf(`prove / ${panel} / stern`));
    expect(ids.indexOf(`prove / ${panel} / stern`)).toBeLessThan(ids.indexOf(`close / ${panel}`));
    expect(ids.filter((id) => id.startsWith("draw /"))).toEqual(["draw / stern cable"]);
    expect(ids).not.toContain("survey / boat");
    expect(last.asBuilt.problems).toEqual([]);
    expect(ids.length).toBeLessThan(30);
  });
  test("the panel is drilled for the new cable alone", () => {
    const step = workOf(second).step.get(`drill box / ${panel}`);
    expect(step?.pieces).toEqual(["stern cable"]);
    expect(step?.doneBefore?.length).toBeGreaterThan(0);
  });
});

test("a note and a reading go in as they were said", () => {
  const text = edited(tender, [
    ...noteEdits(noWork, "survey / boat", { nowMin: 30_000_000, note: "frame at 790 mm" }),
    ...readingEdits(
      noWork,
      {
        kind: "voltage",
        at: "helm / lamps +",
        against: "house -",
        withOn: ["floor lamp"],
        value: -12.31,
        meter: { share: 0.005, fixed: 0.02 },
      },
      30_000_000,
    ),
    ...readingEdits(
      noWork,
      { kind: "ohm", at: "a, b", withOn: [], value: Number.POSITIVE_INFINITY },
      30_000_000,
    ),
    ...readingEdits(
      noWork,
      { kind: "ohm", at: "a", withOn: [], lifted: ["trunk / out"], value: 0.3 },
      30_000_000,
    ),
    ...readingEdits(
      noWork,
      { kind: "marking", at: "helm / lamps / fuse", withOn: [], value: 7.5 },
      30_000_000,
    ),
  ]);
  const { work } = sound(text).plan;
  expect(work.notes[0]?.note).toBe("frame at 790 mm");
  expect(work.readings).toEqual([
    {
      kind: "voltage",
      at: "helm / lamps +",
      against: "house -",
      withOn: ["floor lamp"],
      value: -12.31,
      meter: { share: 0.005, fixed: 0.02 },
      when: "2027-01-15 08:00",
    },
    { kind: "ohm", at: "a, b", withOn: [], value: Number.POSITIVE_INFINITY, when: "2027-01-15 08:00" },
    { kind: "ohm", at: "a", withOn: [], lifted: ["trunk / out"], value: 0.3, when: "2027-01-15 08:00" },
    { kind: "marking", at: "helm / lamps / fuse", withOn: [], value: 7.5, when: "2027-01-15 08:00" },
  ]);
  expect(noteEdits(noWork, "x", { nowMin: 0, note: " " })).toEqual([]);
  expect(() => readingEdits(noWork, { kind: "ohm", at: "a", withOn: [], value: Number.NaN }, 0)).toThrow(
    RangeError,
  );
});

test("a clock that was set back gives nothing to a project that is over, and leaves nothing of one that ends", () => {
  const [yesterday, today] = ["2026-04-10 08:00", "2026-04-11 09:00"].map(at);
  const step = "survey / boat";
  const tick = (text: string, nowMin: number) => {
    const { figures } = workOut(sound(text).plan);
    const { facts, step: steps } = planWork(figures);
    const found = steps.get(step);
    if (found === undefined) throw new Error(step);
    return edited(text, tickEdits(figures, facts, found, { nowMin }));
  };
  // ticked today, finished by a clock that says yesterday: the tick is of the finished project
  const ticked = tick(tender, today ?? 0);
  const over = edited(ticked, finishEdits(sound(ticked).plan.work, "first", yesterday ?? 0));
  expect(byProject(sound(over).plan.work).now.workDone).toEqual([]);
  // and what is said after that is of the next one
  const { work } = sound(over).plan;
  const after = edited(over, [
    ...noteEdits(work, step, { nowMin: yesterday ?? 0, note: "wet" }),
    ...readingEdits(work, { kind: "voltage", at: "a", withOn: [], value: 12 }, yesterday ?? 0),
  ]);
  const { now } = byProject(sound(after).plan.work);
  expect(now.notes.map(({ when }) => when)).toEqual(["2026-04-11 09:01"]);
  expect(now.readings.map(({ when }) => when)).toEqual(["2026-04-11 09:01"]);
});
