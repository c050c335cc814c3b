import { useEffect, useRef } from "react";
import type { Edit } from "../../../core/plan/edits/edit.js";
import type { PlanStore } from "../../state/plan-store.js";
import type { PreviewAnswer, PreviewRequest } from "./preview-worker.js";

/**
 * Figures follow what is in the hand: they are worked out beside the page for where it is, as soon as the last answer is there, and shown
 * as figures of an edit that is not made. The hand never waits for them.
 */
class Preview {
  private worker: Worker | undefined;
  private wanted: (() => readonly Edit[]) | undefined;
  private underWay: PreviewRequest | undefined;
  private count = 0;

  constructor(private readonly store: PlanStore) {}

  ask(edits: () => readonly Edit[]): void {
    this.wanted = edits;
    this.next();
  }

  /** What is under way is no longer wanted; the plan's own figures show again. */
  stop(): void {
    this.wanted = undefined;
    this.count += 1;
    if (this.store.get().triedOut) this.store.tryOut(undefined);
  }

  close(): void {
    this.stop();
    this.worker?.terminate();
    this.worker = undefined;
    this.underWay = undefined;
  }

  private next(): void {
    if (this.underWay || !this.wanted) return;
    const edits = this.wanted();
    this.wanted = undefined;
    if (edits.length === 0) return;
    this.count += 1;
    this.underWay = { no: this.count, text: this.store.get().text, edits };
    this.started().postMessage(this.underWay);
  }

  private started(): Worker {
    if (this.worker) return this.worker;
    const worker = new Worker(new URL("./preview-worker.ts", import.meta.url), { type: "module" });
    worker.onmessage = ({ data }: MessageEvent<PreviewAnswer>) => this.answered(data);
    worker.onerror = (event) => {
      // the figures shown stay those of the plan as it is written; the fault itself is told when the edit is made
      event.preventDefault();
      this.worker?.terminate();
      this.worker = undefined;
      this.underWay = undefined;
    };
    this.worker = worker;
    return worker;
  }

  private answered({ no, figures }: PreviewAnswer): void {
    const asked = this.underWay;
    this.underWay = undefined;
    const current = asked?.no === no && no === this.count && asked.text === this.store.get().text;
    if (current && figures) this.store.tryOut({ edits: asked.edits, figures });
    this.next();
  }
}

export function usePreview(store: PlanStore): Pick<Preview, "ask" | "stop"> {
  const preview = useRef<Preview>(undefined);
  preview.current ??= new Preview(store);
  const { current } = preview;
  useEffect(() => () => current.close(), [current]);
  return current;
}
