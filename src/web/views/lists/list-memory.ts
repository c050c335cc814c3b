import type { PlanStore } from "../../state/plan-store.js";
import type { CellProblem } from "./check-cell.js";
import type { Draft } from "./new-things.js";

/** The order of lines as they were when they were sorted; a line that changes stays where it is until the next time. */
export interface SortedBy {
  readonly column: string;
  readonly direction: "ascending" | "descending";
  readonly keys: readonly string[];
}

/** What a list holds that the plan does not: lines not ready, cells not taken over, and the order lines were last put in. */
export interface ListMemory {
  readonly drafts: readonly Draft[];
  readonly problems: ReadonlyMap<string, CellProblem>;
  readonly sorted: SortedBy | undefined;
  /** Number of the next draft. */
  readonly next: number;
  /** Lines that have another key by now: a draft that has come into the plan, a station that has moved. */
  readonly became?: ReadonlyMap<string, string>;
}

const nothing: ListMemory = { drafts: [], problems: new Map(), sorted: undefined, next: 1 };
const kept = new WeakMap<PlanStore, Map<string, ListMemory>>();

/** What was typed stays while the plan is open, though one goes to another view and back. */
export function memoryOf(store: PlanStore, list: string): ListMemory {
  return kept.get(store)?.get(list) ?? nothing;
}

export function remember(store: PlanStore, list: string, memory: ListMemory): void {
  const lists = kept.get(store) ?? new Map<string, ListMemory>();
  kept.set(store, lists.set(list, memory));
}

export const cellKey = (row: string, column: string): string => `${row}\n${column}`;
