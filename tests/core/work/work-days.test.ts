import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { workOut } from "../../../src/core/figures.js";
import { editSound } from "../../../src/core/plan/edits/edit-sound.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { nextStep, planWork } from "../../../src/core/work/plan-work.js";
import { workDays } from "../../../src/core/work/work-days.js";
import { tickEdits } from "../../../src/core/work/work-edits.js";

/** The example tender, an invented boat, whose owner has told no free hours: evenings from 19:00 are assumed. */
const text = readFileSync("examples/tender.yaml", "utf8");
// 2026-03-09 was a Monday (the language's own calendar, `Date`)
const mondayMin = Date.UTC(2026, 2, 9) / 60_000;
const eveningMin = mondayMin + 19 * 60;

function sound(of: string) {
  const read = readPlan(of);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return { ...read, text: of };
}

test("every step that is left stands under the day it begins on, once, with its minutes", () => {
  const work = planWork(workOut(sound(text).plan).figures, {}, eveningMin);
  const days = workDays(work);
  expect(days.length).toBeGreaterThan(3);
  expect(days.flatMap(({ steps }) => steps)).toEqual(work.order.steps);
  for (const { day, steps, done } of days) {
    expect(done).toBe(0);
    for (const { startMin } of steps)
      expect(new Date((mondayMin + startMin) * 60_000).getUTCDate()).toBe(9 + day);
  }
  const minutes = [...work.step.values()].reduce((sum, step) => sum + step.minutes, 0);
  expect(days.reduce((sum, { leftMin }) => sum + leftMin, 0)).toBe(minutes);
});

test("ticks count on their own date only, and what is ticked is no longer left", () => {
  let plan = sound(text);
  const tick = (nowMin: number) => {
    const { figures } = workOut(plan.plan);
    const work = planWork(figures, {}, nowMin);
    const next = nextStep(work);
    if (next === undefined) throw new RangeError("nothing to tick");
    const made = editSound(plan, tickEdits(figures, work.facts, next.step, { nowMin }));
    if (!made.ok) throw new RangeError(JSON.stringify(made.problem));
    plan = made as typeof plan & typeof made;
  };
  const daysAt = (nowMin: number) => workDays(planWork(workOut(plan.plan).figures, {}, nowMin));
  const all = daysAt(eveningMin).reduce((sum, { steps }) => sum + steps.length, 0);
  tick(eveningMin + 30);
  tick(eveningMin + 40);
  const [today, ...later] = daysAt(eveningMin + 40);
  expect([today?.day, today?.done]).toEqual([0, 2]);
  expect(later.every(({ done }) => done === 0)).toBe(true);
  expect([today, ...later].reduce((sum, day) => sum + (day?.steps.length ?? 0), 0)).toBe(all - 2);
  expect(daysAt(eveningMin + 24 * 60).map(({ done }) => done)).not.toContain(2);
});
