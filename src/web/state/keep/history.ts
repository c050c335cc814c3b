import { changeBetween, makeChange } from "../text/change.js";
import { textSum } from "../text/sum.js";
import type { StepAbout, StepRecord } from "./records.js";

/** A whole text is kept with every so many-th step, so that no state is far from one. */
const wholeEvery = 50;

/** All steps of one plan in memory, and how to get from them to texts. */
export class History {
  private readonly byNo = new Map<number, StepRecord>();
  private readonly texts = new Map<number, string>();

  constructor(steps: readonly StepRecord[] = []) {
    for (const step of steps) this.add(step);
  }

  get steps(): readonly StepRecord[] {
    return [...this.byNo.values()];
  }

  add(step: StepRecord): void {
    this.byNo.set(step.no, step);
  }

  step(no: number): StepRecord | undefined {
    return this.byNo.get(no);
  }

  /** The text of a state, or undefined where a step on the way is missing or damaged. */
  textOf(no: number): string | undefined {
    const way: StepRecord[] = [];
    let text = this.texts.get(no);
    for (let at = no; text === undefined; ) {
      const step = this.byNo.get(at);
      if (step === undefined) return undefined;
      way.unshift(step);
      text = step.text ?? this.texts.get(step.parent);
      if (step.parent >= at) return undefined;
      at = step.parent;
    }
    for (const step of way) {
      text = step.text ?? makeChange(text, step.change);
      if (text === undefined || text.length !== step.length || textSum(text) !== step.sum) return undefined;
    }
    this.remember(no, text);
    return text;
  }

  /** Which state redo leads to: the child of `head` on the way to `tip`. */
  next(head: number, tip: number): number | undefined {
    for (let at = tip; at > head; at = this.byNo.get(at)?.parent ?? 0) {
      if (this.byNo.get(at)?.parent === head) return at;
    }
    return undefined;
  }

  /** Steps from the beginning to a state, that state included. */
  wayTo(no: number): StepRecord[] {
    const way: StepRecord[] = [];
    for (let step = this.byNo.get(no); step !== undefined; step = this.byNo.get(step.parent)) {
      way.unshift(step);
      if (step.parent >= step.no) break;
    }
    return way;
  }

  private remember(no: number, text: string): void {
    if (this.texts.size >= 8) {
      const oldest = this.texts.keys().next().value;
      if (oldest !== undefined) this.texts.delete(oldest);
    }
    this.texts.set(no, text);
  }
}

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
    length: after.length,
    sum: textSum(after),
    ...(parent === 0 || no % wholeEvery === 0 ? { text: after } : {}),
    ...(given.beside ? { beside: true as const } : {}),
  };
}
