import { FullYamlMissing } from "../../core/plan/source/full.js";
import { bringReader } from "./full-reader.js";

interface Turn {
  /** Must be able to begin anew where it throws `FullYamlMissing`. */
  readonly work: () => void;
  /** The reader it wants can't be fetched. */
  readonly failed: () => void;
}

/**
 * Does one thing after the other: at once, as a rule. What wants the full YAML reader while that is still on its way waits for it, and
 * what is asked for meanwhile waits behind it, so that all comes in the order in which it was asked for.
 */
export class Turns {
  private readonly waiting: Turn[] = [];
  private running: Promise<void> | undefined;

  /** @param changed Something has begun to wait, or nothing waits any more. */
  constructor(private readonly changed: () => void) {}

  /** Does anything wait? */
  get wait(): boolean {
    return this.waiting.length > 0;
  }

  take(work: Turn["work"], failed: Turn["failed"]): void {
    if (!this.wait) {
      try {
        work();
        return;
      } catch (error) {
        if (!(error instanceof FullYamlMissing)) throw error;
      }
    }
    this.waiting.push({ work, failed });
    this.running ??= this.run();
    this.changed();
  }

  /** When nothing waits any more. */
  async over(): Promise<void> {
    await this.running;
  }

  private async run(): Promise<void> {
    // without it each thing says for itself what it could not do
    await bringReader().catch(() => undefined);
    for (let next = this.waiting[0]; next !== undefined; next = this.waiting[0]) {
      try {
        next.work();
      } catch (error) {
        if (!(error instanceof FullYamlMissing)) throw error;
        next.failed();
      } finally {
        this.waiting.shift();
      }
    }
    this.running = undefined;
    this.changed();
  }
}
