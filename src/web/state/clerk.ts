interface Numbered<Outcome> {
  readonly no: number;
  readonly outcome: Outcome;
}

/** Has long work done beside the page: a worker that starts when first asked, and answers every question by its number. */
export class Clerk<Question extends object, Outcome> {
  private worker: Worker | undefined;
  private count = 0;
  private readonly waiting = new Map<number, (outcome: Outcome) => void>();

  /**
   * @param start Starts the worker.
   * @param fault The outcome that says that the worker itself failed.
   */
  constructor(
    private readonly start: () => Worker,
    private readonly fault: (detail: string) => Outcome,
  ) {}

  ask(question: Question): Promise<Outcome> {
    this.count += 1;
    const no = this.count;
    return new Promise((answer) => {
      this.waiting.set(no, answer);
      this.started().postMessage({ ...question, no });
    });
  }

  close(): void {
    this.worker?.terminate();
    this.worker = undefined;
    this.waiting.clear();
  }

  private started(): Worker {
    if (this.worker) return this.worker;
    const worker = this.start();
    worker.onmessage = ({ data }: MessageEvent<Numbered<Outcome>>) => {
      this.waiting.get(data.no)?.(data.outcome);
      this.waiting.delete(data.no);
    };
    worker.onerror = (event) => {
      event.preventDefault();
      const detail = event.message || "the worker could not start";
      for (const answer of this.waiting.values()) answer(this.fault(detail));
      this.close();
    };
    this.worker = worker;
    return worker;
  }
}
