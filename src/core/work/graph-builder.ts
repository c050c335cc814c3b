import type { CureKey } from "../reference/cures.js";
import type { Precedence, PrecedenceReason, Step } from "./step.js";

type Loose = Pick<Step, "id" | "kind" | "task" | "at" | "minutes"> & Partial<Step>;

/** Collects steps and what must wait for what. A precedence that names a step that does not exist is left out: nothing waits for it. */
export class GraphBuilder {
  private readonly steps = new Map<string, Step>();
  private readonly waits: Precedence[] = [];

  add(step: Loose): string {
    this.steps.set(step.id, {
      pieces: [],
      sizes: [],
      readings: [],
      tools: [],
      inOneGo: false,
      ...step,
      consumables: (step.consumables ?? []).filter(({ count }) => count > 0),
    });
    return step.id;
  }

  has(id: string): boolean {
    return this.steps.has(id);
  }

  wait(
    after: string,
    before: string | readonly string[],
    reason: PrecedenceReason,
    cure?: { readonly key: CureKey; readonly hours: number },
  ): void {
    for (const id of typeof before === "string" ? [before] : before)
      this.waits.push({ before: id, after, reason, ...(cure && { cure }) });
  }

  piecesOf(id: string): readonly string[] {
    return this.steps.get(id)?.pieces ?? [];
  }

  ids(holds: (step: Step) => boolean): string[] {
    return [...this.steps.values()].filter(holds).map(({ id }) => id);
  }

  done(): { steps: Step[]; precedences: Precedence[] } {
    const seen = new Set<string>();
    const precedences = this.waits.filter(({ before, after, reason, cure }) => {
      const key = JSON.stringify([before, after, cure ? reason : ""]);
      if (!this.has(before) || !this.has(after) || before === after || seen.has(key)) return false;
      seen.add(key);
      return true;
    });
    return { steps: [...this.steps.values()], precedences };
  }
}
