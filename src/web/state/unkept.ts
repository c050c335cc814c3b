import { type Keeper, memoryKeeper } from "./keep/keeper.js";
import type { StepAbout } from "./keep/records.js";
import type { ReadOnly } from "./plan-state.js";

interface Unkept {
  readonly keeper: Keeper;
  readonly readOnly?: ReadOnly;
}

const held = new Map<string, Unkept>();
let count = 0;

/** Holds a plan in this tab only: a file that is looked at, or any plan where the browser refuses to keep things. @returns its id. */
export function holdUnkept(
  given: { readonly name: string; readonly text: string; readonly about: StepAbout },
  readOnly?: ReadOnly,
): string {
  count += 1;
  const id = `here-${count}`;
  const keeper = memoryKeeper({ ...given, id, at: Date.now() });
  held.set(id, { keeper, ...(readOnly ? { readOnly } : {}) });
  return id;
}

export function keeperOfUnkept(id: string): Unkept | undefined {
  return held.get(id);
}
