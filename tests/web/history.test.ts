// The history of a plan is read where it is kept, a few steps at a time, however long it is.
import { expect, test } from "vitest";
import { History, newStep } from "../../src/web/state/keep/history.js";
import { type Keeper, memoryKeeper } from "../../src/web/state/keep/keeper.js";
import { openKept } from "../../src/web/state/keep/open-kept.js";
import type { StepRecord } from "../../src/web/state/keep/records.js";
import { seeded } from "../bad/spoil.js";

const about = { did: "text" } as const;
/** The text of a state; each is another. */
const numbered = (no: number) => `# state ${no}\nname: Sedge\n`;

/** A plan of so many steps, one on the other, and how many steps were read of it. */
async function long(steps: number, name = "tender") {
  const kept = memoryKeeper({ id: "tender", name, text: numbered(1), about, at: 1 });
  for (let no = 1; no < steps; no += 1)
    await kept.keep({ head: no, at: no, about, before: numbered(no), after: numbered(no + 1), name });
  const read = { steps: 0 };
  const counted: Keeper = {
    ...kept,
    steps: async (from, to) => {
      const found = await kept.steps(from, to);
      read.steps += found.length;
      return found;
    },
  };
  return { kept, counted, read };
}

test("opening a plan of 10,000 steps reads a few of them, and so do undo and the log", async () => {
  const { counted, read } = await long(10_000);
  const opened = await openKept(counted);
  expect(opened?.text).toBe(numbered(10_000));
  expect(read.steps, "read to open").toBeLessThan(150);
  read.steps = 0;
  const history = opened?.history ?? new History(counted);
  for (let no = 9_999; no > 9_899; no -= 1) expect(await history.textOf(no)).toBe(numbered(no));
  expect(read.steps, "read for a hundred times undo").toBeLessThan(350);
  read.steps = 0;
  expect(await history.textOf(5_000)).toBe(numbered(5_000));
  expect(read.steps, "read for a state far back").toBeLessThan(150);
  read.steps = 0;
  const log = opened && (await history.newest(opened.record, 50));
  expect(log?.map(({ step }) => step.no)).toEqual(Array.from({ length: 50 }, (_, index) => 10_000 - index));
  expect(read.steps, "read for the log").toBe(50);
});

test("what was undone is told from what led to the state shown, and redo leads the way that was taken last", async () => {
  const next = seeded(7);
  const kept = memoryKeeper({ id: "tender", name: "tender", text: numbered(1), about, at: 1 });
  const parents = new Map<number, number>();
  const texts = new Map([[1, numbered(1)]]);
  for (let turn = 0; turn < 400; turn += 1) {
    const plan = await openKept(kept);
    if (!plan) throw new Error("the plan should be there");
    const { record, history } = plan;
    const text = texts.get(record.head) ?? "";
    const what = next();
    if (what < 0.55) {
      const beside = what < 0.05;
      const no = record.steps + 1;
      const after = numbered(no);
      const made = await kept.keep({
        ...{ head: record.head, at: no, about, before: text, after, name: "tender" },
        ...(beside ? { beside } : {}),
      });
      expect(made.is).toBe("kept");
      parents.set(no, record.head);
      texts.set(no, after);
    } else {
      const step = await history.step(record.head);
      const to = what < 0.85 ? step?.parent : (await history.next(record))?.no;
      if (to === undefined || to === 0) continue;
      const there = await history.textOf(to);
      expect(there).toBe(texts.get(to));
      await kept.move({ from: record.head, to, name: "tender", text: there ?? "", at: turn });
    }
    const now = (await kept.load())?.record;
    if (!now) throw new Error("the plan should be there");
    // by another way: from the newest state back to the one shown
    const back = [now.tip];
    while ((back.at(-1) ?? 0) > now.head) back.push(parents.get(back.at(-1) ?? 0) ?? 0);
    expect(back.at(-1), "redo ends at the tip").toBe(now.head);
    expect((await history.next(now))?.no).toBe(back.at(-2));
    const led = new Set<number>();
    for (let no: number | undefined = now.head; no !== undefined; no = parents.get(no)) led.add(no);
    const log = await history.newest(now, 30);
    for (const { step, undone } of log) expect(undone, `step ${step.no}`).toBe(!led.has(step.no));
  }
});

test("a step that is missing or damaged: the last sound state is shown, and the others still open", async () => {
  const { kept } = await long(200);
  const spoilt: Keeper = {
    ...kept,
    steps: async (from, to) =>
      (await kept.steps(from, to))
        .filter(({ no }) => no !== 150)
        .map((step): StepRecord => (step.no === 190 ? { ...step, sum: step.sum + 1 } : step)),
  };
  const opened = await openKept(spoilt);
  // 192 is the last that has a whole text behind the damage
  expect(opened?.brokenAfter).toBeUndefined();
  const history = opened?.history;
  expect(await history?.textOf(191)).toBeUndefined();
  expect(await history?.textOf(189)).toBeUndefined();
  expect(await history?.textOf(149)).toBe(numbered(149));
  expect(await history?.textOf(1)).toBe(numbered(1));
  const cut: Keeper = {
    ...spoilt,
    load: async () => {
      const stored = await kept.load();
      return stored && { ...stored, record: { ...stored.record, head: 191, tip: 191, steps: 191 } };
    },
  };
  const broken = await openKept(cut);
  expect(broken?.brokenAfter).toBe(149);
  expect(broken?.text).toBe(numbered(149));
});

test("whole texts take no more room than the changes beside them, however long the plan", () => {
  for (const lines of [1, 400, 16_000]) {
    const text = "a: line of a plan\n".repeat(lines);
    let whole = 0;
    let furthest = 0;
    let since = 0;
    for (let no = 2; no <= 513; no += 1) {
      const step = newStep({ plan: "p", no, parent: no - 1, at: 1, about, before: text, after: text });
      since = step.text === undefined ? since + 1 : 0;
      whole += step.text?.length ?? 0;
      furthest = Math.max(furthest, since);
    }
    expect(furthest, "no state is far from a whole text").toBeLessThan(512);
    // a step without one takes some 400 bytes; of the largest plans every 512th has one
    expect(whole / 512, "of whole texts, a step").toBeLessThanOrEqual(Math.max(400, text.length / 512));
  }
});
