import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { History } from "../../src/web/state/keep/history.js";
import { memoryKeeper } from "../../src/web/state/keep/keeper.js";
import { Queue } from "../../src/web/state/keep/queue.js";

const text = readFileSync("examples/tender.yaml", "utf8");
const about = { did: "text" } as const;

/** Lets that many microtasks pass. */
async function turns(count: number): Promise<void> {
  for (let turn = 0; turn < count; turn += 1) await Promise.resolve();
}

test.each([0, 1, 2, 3, 4, 5, 6, 7, 8])(
  "an edit that comes %i turns after the one before was kept is kept too, with nothing else to wake the queue",
  async (delay) => {
    const keeper = memoryKeeper({ id: "tender", name: "tender", text, about, at: 1 });
    const stored = await keeper.load();
    if (stored === undefined) throw new Error("the plan should be there");
    const edited = `${text}# first\n`;
    const again = `${edited}# second\n`;
    let state = "";
    let next: (() => void) | undefined;
    const queue = new Queue({
      keeper,
      history: new History(stored.steps),
      now: () => 2,
      record: stored.record,
      text,
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
