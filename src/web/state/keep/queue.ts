import { readPlan } from "../../../core/plan/read-text.js";
import { faultReason } from "../../fault.js";
import { withReader } from "../full-reader.js";
import type { Keeping, Notice } from "../plan-state.js";
import { mergeTexts } from "../text/merge.js";
import type { History, Ways } from "./history.js";
import type { Keeper } from "./keeper.js";
import type { Kept } from "./kept.js";
import type { MomentRecord, PlanRecord, StepAbout } from "./records.js";

export interface QueueChange {
  readonly record: PlanRecord;
  readonly ways: Ways;
  readonly keeping: Keeping;
  /** The text to show, once nothing is waiting any more. */
  readonly text?: string;
  readonly notice?: Notice;
  readonly moments?: readonly MomentRecord[];
  /** Something was written that other tabs should see. */
  readonly wrote?: boolean;
}

export interface QueueParts {
  readonly keeper: Keeper;
  readonly history: History;
  readonly now: () => number;
  readonly record: PlanRecord;
  readonly text: string;
  readonly ways: Ways;
  readonly changed: (change: QueueChange) => void;
}

interface KeepJob {
  readonly do: "keep";
  readonly before: string;
  readonly after: string;
  readonly about: StepAbout;
  readonly name: string;
}

type Job = KeepJob | { readonly do: "undo" | "redo" | "follow" };

/**
 * Keeps one thing after the other. Each state goes on top of the newest one that is kept; where another tab was first, both
 * changes are merged, or, where they touch the same lines, this one is kept beside the other.
 */
export class Queue {
  private record: PlanRecord;
  private ways: Ways;
  /** Text of the newest kept state. */
  private text: string;
  private readonly jobs: Job[] = [];
  private running: Promise<void> | undefined;
  private failed: string | undefined;
  /** Removed by another tab: what is typed from then on is on screen only. */
  private gone = false;
  /** Steps there were when this tab last looked, or kept one itself. */
  private knownSteps: number;

  constructor(private readonly parts: QueueParts) {
    this.record = parts.record;
    this.text = parts.text;
    this.ways = parts.ways;
    this.knownSteps = parts.record.steps;
  }

  keep(given: Omit<KeepJob, "do">): void {
    this.add({ do: "keep", ...given });
  }

  undo(): void {
    this.add({ do: "undo" });
  }

  redo(): void {
    this.add({ do: "redo" });
  }

  async follow(): Promise<void> {
    this.add({ do: "follow" });
    await this.settled();
  }

  retry(): void {
    this.failed = undefined;
    this.start();
  }

  async settled(): Promise<void> {
    while (this.running) await this.running;
  }

  recordChanged(record: PlanRecord): void {
    this.record = record;
    this.tell({});
  }

  private add(job: Job): void {
    this.jobs.push(job);
    this.failed = undefined;
    this.tell({});
    this.start();
  }

  private start(): void {
    this.running ??= this.run().finally(() => {
      this.running = undefined;
      // a job may have come between the last look at the list and here
      if (this.jobs.length > 0 && this.failed === undefined) this.start();
    });
  }

  private async run(): Promise<void> {
    for (let job = this.jobs[0]; job !== undefined; job = this.jobs[0]) {
      try {
        await this.doJob(job);
      } catch (error) {
        this.failed = faultReason(error);
        this.tell({});
        return;
      }
    }
  }

  private async doJob(job: Job): Promise<void> {
    switch (job.do) {
      case "keep":
        return this.doKeep(job);
      case "undo":
      case "redo":
        return this.doMove(job.do);
      case "follow": {
        const before = this.record.head;
        const moments = await this.refresh();
        if (moments === undefined) return this.lose();
        const notice = this.record.head === before ? {} : { notice: { about: "other tab" } as const };
        return this.done({ ...notice, moments });
      }
      default:
        return job satisfies never;
    }
  }

  private async doKeep(job: KeepJob): Promise<void> {
    for (;;) {
      const onTop = await withReader(() => this.onTop(job));
      const kept = await this.parts.keeper.keep({
        head: this.record.head,
        at: this.parts.now(),
        about: job.about,
        before: this.text,
        ...(onTop ?? { after: job.after, name: job.name, beside: true }),
      });
      if (kept.is === "moved") {
        await this.refresh();
        continue;
      }
      // what is typed here stays on screen
      if (kept.is === "gone") this.text = job.after;
      if (!this.took(kept)) return;
      const step = kept.is === "kept" ? kept.step : undefined;
      if (step) this.parts.history.add(step, onTop?.after ?? job.after);
      if (onTop === undefined)
        return this.done({ notice: { about: "both kept", mine: step?.no ?? 0 }, wrote: true });
      const merged = this.text !== job.before;
      this.text = onTop.after;
      this.ways = { undo: job.about, redo: undefined };
      return this.done({ wrote: true, ...(merged ? { notice: { about: "merged" } } : {}) });
    }
  }

  /** What the job gives on top of the newest kept state, or undefined where the two do not go together. */
  private onTop({ before, after, name }: KeepJob): { after: string; name: string } | undefined {
    if (before === this.text) return { after, name };
    const merged = mergeTexts(before, after, this.text);
    if (merged === undefined) return undefined;
    const read = readPlan(merged);
    return read.ok ? { after: merged, name: read.plan.name } : undefined;
  }

  private async doMove(direction: "undo" | "redo"): Promise<void> {
    const { head, tip, name } = this.record;
    const { history } = this.parts;
    const to =
      direction === "undo" ? (await history.step(head))?.parent : (await history.next({ head, tip }))?.no;
    const text = to === undefined || to === 0 ? undefined : await history.textOf(to);
    if (to === undefined || text === undefined) return this.done({});
    // all that is read is read before it is written: what failed can then be tried again
    const ways = await history.waysAt({ head: to, tip });
    const read = await withReader(() => readPlan(text));
    const kept = await this.parts.keeper.move({
      from: head,
      to,
      name: read.ok ? read.plan.name : name,
      text,
      at: this.parts.now(),
    });
    if (kept.is === "moved") {
      await this.refresh();
      return this.done({ notice: { about: "undo moved" } });
    }
    if (!this.took(kept)) return;
    this.text = text;
    this.ways = ways;
    this.done({ wrote: true });
  }

  private took(kept: Kept): boolean {
    if (kept.is !== "kept") {
      this.lose();
      return false;
    }
    this.record = kept.record;
    if (kept.record.steps === this.knownSteps + (kept.step ? 1 : 0)) this.knownSteps = kept.record.steps;
    // another tab has kept a step beside, which does not move the head
    else this.jobs.push({ do: "follow" });
    return true;
  }

  private lose(): void {
    const notice: Notice | undefined = this.gone ? undefined : { about: "gone" };
    this.gone = true;
    this.done(notice ? { notice } : {});
  }

  /** @returns undefined where the plan is gone. */
  private async refresh(): Promise<readonly MomentRecord[] | undefined> {
    const { keeper, history } = this.parts;
    const newer = await keeper.load();
    if (newer === undefined) return undefined;
    const { head } = newer.record;
    const [text, ways] = await Promise.all([history.textOf(head), history.waysAt(newer.record)]);
    if (text === undefined) {
      // it may have been removed between the two looks
      if ((await keeper.load()) === undefined) return undefined;
      throw new RangeError(`the text of step ${head} can't be put together`);
    }
    // whoever hears of the text reads it on the spot
    await withReader(() => readPlan(text));
    this.record = newer.record;
    this.knownSteps = newer.record.steps;
    this.text = text;
    this.ways = ways;
    return newer.moments;
  }

  private done(change: Omit<QueueChange, "record" | "ways" | "keeping" | "text">): void {
    this.jobs.shift();
    this.tell(change);
  }

  private tell(change: Omit<QueueChange, "record" | "ways" | "keeping" | "text">): void {
    const idle = this.jobs.length === 0;
    const lasting = this.parts.keeper.lasting && !this.gone;
    const keeping: Keeping =
      this.failed !== undefined
        ? { is: "failed", reason: this.failed }
        : { is: idle ? (lasting ? "kept" : "unkept") : "keeping" };
    const { record, ways } = this;
    this.parts.changed({ ...change, record, ways, keeping, ...(idle ? { text: this.text } : {}) });
  }
}
