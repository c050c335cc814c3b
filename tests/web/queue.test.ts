import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { readPlan } from "../../src/core/plan/read.js";
import { type Keeper, memoryKeeper } from "../../src/web/state/keep/keeper.js";
import { type OpenedPlan, openKept } from "../../src/web/state/keep/open-kept.js";
import { Queue, type QueueChange } from "../../src/web/state/keep/queue.js";
import type { PlanRecord } from "../../src/web/state/keep/records.js";
import { seeded } from "../bad/spoil.js";

const text = readFileSync("examples/tender.yaml", "utf8");
const about = { did: "text" } as const;

/** The plan as a tab reads it. */
async function opened(keeper: Keeper): Promise<OpenedPlan> {
  const plan = await openKept(keeper);
  if (plan === undefined) throw new Error("the plan should be there");
  return plan;
}

/** Lets that many microtasks pass. */
async function turns(count: number): Promise<void> {
  for (let turn = 0; turn < count; turn += 1) await Promise.resolve();
}

test.each([0, 1, 2, 3, 4, 5, 6, 7, 8])(
  "an edit that comes %i turns after the one before was kept is kept too, with nothing else to wake the queue",
  async (delay) => {
    const keeper = memoryKeeper({ id: "tender", name: "tender", text, about, at: 1 });
    const plan = await opened(keeper);
    const edited = `${text}# first\n`;
    const again = `${edited}# second\n`;
    let state = "";
    let next: (() => void) | undefined;
    const queue = new Queue({
      ...plan,
      keeper,
      now: () => 2,
      changed: ({ keeping }) => {
        state = keeping.is;
        if (keeping.is !== "unkept" || next === undefined) return;
        const add = next;
        next = undefined;
        void turns(delay).then(add);
      },
    });
    next = () => queue.keep({ before: edited, after: again, about, name: "tender" });
    queue.keep({ before: text, after: edited, about, name: "tender" });
    await new Promise((done) => setTimeout(done, 5));
    expect(state).toBe("unkept");
    expect((await keeper.load())?.record.steps).toBe(3);
  },
);

/** A keeper whose every answer takes its time, as a browser's database does: others come between. */
function slow(keeper: Keeper, next: () => number): Keeper {
  const waiting = async <T>(work: () => Promise<T>): Promise<T> => {
    await turns(Math.floor(next() * 12));
    const answer = await work();
    await turns(Math.floor(next() * 12));
    return answer;
  };
  return {
    ...keeper,
    load: () => waiting(() => keeper.load()),
    steps: (from, to) => waiting(() => keeper.steps(from, to)),
    lastChild: (parent) => waiting(() => keeper.lastChild(parent)),
    keep: (step) => waiting(() => keeper.keep(step)),
    move: (move) => waiting(() => keeper.move(move)),
  };
}

/** One tab: what it shows, and its queue on the keeper that all tabs share. */
async function openTab(keeper: Keeper, next: () => number) {
  const slowly = slow(keeper, next);
  const plan = await opened(slowly);
  const { history, record, ways } = plan;
  const tab = { text, record, ways, notices: [] as string[], history };
  const queue = new Queue({
    ...plan,
    keeper: slowly,
    now: () => 2,
    changed: (change: QueueChange) => {
      tab.record = change.record;
      tab.ways = change.ways;
      if (change.text !== undefined) tab.text = change.text;
      if (change.notice) tab.notices.push(change.notice.about);
    },
  });
  const type = (after: string) => {
    const read = readPlan(after);
    queue.keep({ before: tab.text, after, about, name: read.ok ? read.plan.name : "" });
    tab.text = after;
  };
  return { tab, queue, type };
}

test.each(Array.from({ length: 25 }, (_, seed) => seed))(
  "three tabs at one plan, seed %i: each edit is kept once, every state can be put together, and all tabs end with one text",
  async (seed) => {
    const next = seeded(seed);
    const keeper = memoryKeeper({ id: "tender", name: "tender", text, about, at: 1 });
    const tabs = await Promise.all([0, 1, 2].map(() => openTab(keeper, next)));
    let edits = 0;
    for (let turn = 0; turn < 40; turn += 1) {
      const at = tabs[Math.floor(next() * tabs.length)];
      const what = next();
      if (what < 0.55) {
        edits += 1;
        // few lines, so that edits meet on one of them
        const line = Math.floor(next() * 4);
        at?.type(
          at.tab.text
            .split("\n")
            .map((each, row) => (row === line ? `# e${edits}` : each))
            .join("\n"),
        );
      } else if (what < 0.7) at?.queue.undo();
      else if (what < 0.8) at?.queue.redo();
      else void at?.queue.follow();
      await turns(Math.floor(next() * 60));
    }
    for (const { queue } of tabs) await queue.settled();
    for (const { queue } of tabs) await queue.follow();
    const { record, history, ways } = await opened(keeper);
    expect(record.steps).toBe(edits + 1);
    const all = Array.from({ length: record.steps }, (_, index) => index + 1);
    const texts = await Promise.all(all.map((no) => history.textOf(no)));
    expect(texts).not.toContain(undefined);
    for (let edit = 1; edit <= edits; edit += 1)
      expect(
        texts.some((each) => each?.includes(`# e${edit}\n`)),
        `edit ${edit}`,
      ).toBe(true);
    for (const { tab } of tabs) {
      expect(tab.text).toBe(await history.textOf(record.head));
      expect(tab.record.steps, "steps each tab knows of").toBe(edits + 1);
      expect(tab.ways, "what each tab offers to undo and redo").toEqual(ways);
    }
    const seen = await Promise.all(all.map((no) => tabs[0]?.tab.history.textOf(no)));
    expect(seen, "states as a tab that was open all along puts them together").toEqual(texts);
  },
);

test("a plan that another tab removed: it is said once, nothing counts as kept, and what is typed stays", async () => {
  const keeper = memoryKeeper({ id: "tender", name: "tender", text, about, at: 1 });
  const removed: Keeper = {
    ...keeper,
    lasting: true,
    load: async () => undefined,
    keep: async () => ({ is: "gone" }),
  };
  const plan = await opened(keeper);
  const told: QueueChange[] = [];
  const queue = new Queue({
    ...plan,
    keeper: removed,
    now: () => 2,
    changed: (change) => told.push(change),
  });
  await queue.follow();
  queue.keep({ before: text, after: `${text}# one\n`, about, name: "tender" });
  queue.keep({ before: `${text}# one\n`, after: `${text}# two\n`, about, name: "tender" });
  await queue.settled();
  expect(told.flatMap(({ notice }) => notice?.about ?? [])).toEqual(["gone"]);
  expect(told.at(-1)).toMatchObject({ keeping: { is: "unkept" }, text: `${text}# two\n` });
});

test("where another tab gave the plan a name, an edit merged with it keeps that name", async () => {
  const keeper = memoryKeeper({ id: "tender", name: "tender", text, about, at: 1 });
  const [first, second] = await Promise.all([openTab(keeper, () => 0), openTab(keeper, () => 0)]);
  first?.type(text.replace(/^name: .*$/m, "name: Aster"));
  await first?.queue.settled();
  second?.type(`${text}# mine\n`);
  await second?.queue.settled();
  const record: PlanRecord | undefined = (await keeper.load())?.record;
  expect(record?.name).toBe("Aster");
});
