import type { FiguresAnswer, FiguresOutcome, FiguresRequest, ReadText } from "./messages.js";
import { startFiguresWorker } from "./start-worker.js";

interface Asked {
  readonly of: ReadText;
  /** Is passed over when a newer one of its kind waits. */
  readonly latestOnly: boolean;
  readonly answer: (outcome: FiguresOutcome | undefined) => void;
}

const remembered = 6;

/** Has figures worked out beside the page, so that no view waits for them. One question at a time is under way. */
export class FigureMaker {
  private worker: Worker | undefined;
  private underWay: { readonly no: number; readonly asked: Asked } | undefined;
  private waiting: Asked[] = [];
  private count = 0;
  private readonly known = new Map<string, FiguresOutcome>();

  /** Figures of the plan as it is now. @returns undefined where a newer text has overtaken this one. */
  current(of: ReadText): Promise<FiguresOutcome | undefined> {
    const overtaken = this.waiting.filter(({ latestOnly }) => latestOnly);
    this.waiting = this.waiting.filter(({ latestOnly }) => !latestOnly);
    for (const { answer } of overtaken) answer(undefined);
    return this.ask(of, true);
  }

  /** Figures of a plan as it could be. */
  async whatIf(of: ReadText): Promise<FiguresOutcome> {
    return (await this.ask(of, false)) ?? { is: "fault", detail: "the question was dropped" };
  }

  /** What is known of a text without asking. */
  knownOf(text: string): FiguresOutcome | undefined {
    return this.known.get(text);
  }

  close(): void {
    this.worker?.terminate();
    this.worker = undefined;
    for (const { answer } of this.waiting) answer(undefined);
    this.underWay?.asked.answer(undefined);
    this.waiting = [];
    this.underWay = undefined;
  }

  private ask(of: ReadText, latestOnly: boolean): Promise<FiguresOutcome | undefined> {
    const known = this.known.get(of.text);
    if (known) return Promise.resolve(known);
    return new Promise((answer) => {
      this.waiting.push({ of, latestOnly, answer });
      this.next();
    });
  }

  private next(): void {
    if (this.underWay) return;
    const asked = this.waiting.shift();
    if (!asked) return;
    this.count += 1;
    this.underWay = { no: this.count, asked };
    const request: FiguresRequest = { no: this.count, plan: asked.of.plan };
    this.started().postMessage(request);
  }

  private started(): Worker {
    if (this.worker) return this.worker;
    const worker = startFiguresWorker();
    worker.onmessage = ({ data }: MessageEvent<FiguresAnswer>) => this.answered(data);
    worker.onerror = (event) => {
      event.preventDefault();
      this.worker = undefined;
      worker.terminate();
      const no = this.underWay?.no ?? 0;
      this.answered({ no, outcome: { is: "fault", detail: event.message || "the worker could not start" } });
    };
    this.worker = worker;
    return worker;
  }

  private answered({ no, outcome }: FiguresAnswer): void {
    if (this.underWay?.no !== no) return;
    const { asked } = this.underWay;
    this.underWay = undefined;
    if (outcome.is !== "fault") this.remember(asked.of.text, outcome);
    asked.answer(outcome);
    this.next();
  }

  private remember(text: string, outcome: FiguresOutcome): void {
    if (this.known.size >= remembered) {
      const oldest = this.known.keys().next().value;
      if (oldest !== undefined) this.known.delete(oldest);
    }
    this.known.set(text, outcome);
  }
}
