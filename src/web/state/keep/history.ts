import { changeBetween, makeChange } from "../text/change.js";
import { isMarked, markOf } from "../text/sum.js";
import type { PlanRecord, StepAbout, StepRecord } from "./records.js";

/** So many steps, and so many texts, are held here: those used last. All others are read when they are asked for. */
const heldSteps = 64;
const heldTexts = 8;
/** Steps that are read at once: whoever wants one wants those before it too, as a rule. */
const readAtOnce = 32;

/** Where steps are kept. */
export interface KeptSteps {
  /** Steps from one number to another, both of them too, as far as they are there. */
  steps(from: number, to: number): Promise<readonly StepRecord[]>;
  /** The last step made on that one, those kept beside left out. */
  lastChild(parent: number): Promise<StepRecord | undefined>;
}

/** What undo takes back, and what redo brings again. */
export interface Ways {
  readonly undo: StepAbout | undefined;
  readonly redo: StepAbout | undefined;
}

/** A step as the log shows it. `undone`: it is none of those that led to the state shown. */
export interface LoggedStep {
  readonly step: StepRecord;
  readonly undone: boolean;
}

/** The steps of one plan where they are kept, and how to get from them to texts. However many there are, a few of them are held. */
export class History {
  private readonly near = new Map<number, StepRecord>();
  private readonly texts = new Map<number, string>();

  constructor(private readonly kept: KeptSteps) {}

  /** Takes in a step that has just been kept, with the text it gives. */
  add(step: StepRecord, text: string): void {
    hold(this.near, step.no, step, heldSteps);
    hold(this.texts, step.no, text, heldTexts);
  }

  async step(no: number): Promise<StepRecord | undefined> {
    if (no < 1) return undefined;
    let found = this.near.get(no);
    if (found === undefined) {
      const read = await this.kept.steps(Math.max(1, no - readAtOnce + 1), no);
      for (const step of read) hold(this.near, step.no, step, heldSteps);
      found = read.at(-1)?.no === no ? read.at(-1) : undefined;
    }
    if (found) hold(this.near, no, found, heldSteps);
    return found;
  }

  /** The text of a state, or undefined where a step on the way is missing or damaged. */
  async textOf(no: number): Promise<string | undefined> {
    const wayBack: StepRecord[] = [];
    let text = this.texts.get(no);
    for (let at = no; text === undefined; ) {
      const step = await this.step(at);
      if (step === undefined || step.parent >= at) return undefined;
      wayBack.push(step);
      text = step.text ?? this.texts.get(step.parent);
      at = step.parent;
    }
    for (const step of wayBack.reverse()) {
      text = step.text ?? makeChange(text, step.change);
      if (text === undefined || !isMarked(step, text)) return undefined;
    }
    hold(this.texts, no, text, heldTexts);
    return text;
  }

  /**
   * The step redo leads to. Of several made on the state shown it is the last: whatever was shown after that was made, down to `tip`, hangs on it.
   */
  async next({ head, tip }: Pick<PlanRecord, "head" | "tip">): Promise<StepRecord | undefined> {
    return head < tip ? this.kept.lastChild(head) : undefined;
  }

  async waysAt(at: Pick<PlanRecord, "head" | "tip">): Promise<Ways> {
    const [step, next] = await Promise.all([this.step(at.head), this.next(at)]);
    return { undo: step && step.parent > 0 ? step.about : undefined, redo: next?.about };
  }

  /** The nearest step that fits, from one back to the beginning. */
  async findBack(from: number, fits: (step: StepRecord) => boolean): Promise<StepRecord | undefined> {
    for (let no = from; ; ) {
      const step = await this.step(no);
      if (step === undefined || fits(step)) return step;
      if (step.parent >= no) return undefined;
      no = step.parent;
    }
  }

  /** The last state of all that still gives a text. */
  async lastSound(steps: number): Promise<{ readonly text: string; readonly step: number }> {
    for (let step = steps; step > 0; step -= 1) {
      const text = await this.textOf(step);
      if (text !== undefined) return { text, step };
    }
    return { text: "", step: 0 };
  }

  /** So many of the steps, the last one first. */
  async newest({ head, steps }: PlanRecord, count: number): Promise<LoggedStep[]> {
    const read = await this.kept.steps(Math.max(1, steps - count + 1), steps);
    let way = head;
    return read.toReversed().map((step) => {
      const led = step.no === way;
      if (led) way = step.parent;
      return { step, undone: !led };
    });
  }
}

/** Puts a value last; what has not been used for longest gives way. */
function hold<Value>(held: Map<number, Value>, no: number, value: Value, most: number): void {
  held.delete(no);
  held.set(no, value);
  if (held.size <= most) return;
  const oldest = held.keys().next().value;
  if (oldest !== undefined) held.delete(oldest);
}

/** A whole text is kept with some steps, so that no state is far from one; with fewer where texts are long, so that they don't take more room than all else. */
function keepsWhole(no: number, length: number): boolean {
  const every = [64, 128, 256].find((each) => each * usualStepBytes >= length) ?? 512;
  return no % every === 0;
}

/** What a step without a whole text takes, or thereabouts. */
const usualStepBytes = 400;

/** The record of a new state. */
export function newStep(given: {
  readonly plan: string;
  readonly no: number;
  readonly parent: number;
  readonly at: number;
  readonly about: StepAbout;
  readonly before: string;
  readonly after: string;
  readonly beside?: boolean;
}): StepRecord {
  const { plan, no, parent, at, about, before, after } = given;
  return {
    plan,
    no,
    parent,
    at,
    about,
    change: changeBetween(before, after),
    ...markOf(after),
    ...(parent === 0 || keepsWhole(no, after.length) ? { text: after } : {}),
    ...(given.beside ? { beside: true as const } : {}),
  };
}
