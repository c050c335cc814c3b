import type { PrintAnswer, PrintOutcome, PrintRequest } from "./messages.js";

type Question = Omit<PrintRequest, "no">;

/** Has files made beside the page. It starts when first asked, and is let go with its view. */
export class Press {
  private worker: Worker | undefined;
  private count = 0;
  private readonly waiting = new Map<number, (outcome: PrintOutcome) => void>();

  ask(question: Question): Promise<PrintOutcome> {
    this.count += 1;
    const no = this.count;
    return new Promise((answer) => {
      this.waiting.set(no, answer);
      this.started().postMessage({ ...question, no } satisfies PrintRequest);
    });
  }

  close(): void {
    this.worker?.terminate();
    this.worker = undefined;
    this.waiting.clear();
  }

  private started(): Worker {
    if (this.worker) return this.worker;
    const worker = new Worker(new URL("./print-worker.ts", import.meta.url), { type: "module" });
    worker.onmessage = ({ data }: MessageEvent<PrintAnswer>) => {
      this.waiting.get(data.no)?.(data.outcome);
      this.waiting.delete(data.no);
    };
    worker.onerror = (event) => {
      event.preventDefault();
      const detail = event.message || "the worker could not start";
      for (const answer of this.waiting.values()) answer({ is: "fault", detail });
      this.close();
    };
    this.worker = worker;
    return worker;
  }
}
