import { workOut } from "../figures.js";
import { workOutLayout } from "../layout-figures.js";
import { boughtOnShelf, nothingBought } from "../parts/bought-edits.js";
import { stockEdits } from "../parts/stock-after.js";
import { stockLeft } from "../parts/stock-left.js";
import type { Edit } from "../plan/edits/edit.js";
import { editSound, type SoundPlan } from "../plan/edits/edit-sound.js";
import type { Plan } from "../plan/model/plan.js";
import { takeBuiltEdits } from "../work/take-built.js";
import { finishEdits } from "../work/work-edits.js";
import type { WorkInput } from "../work/work-input.js";

/** How a project is closed. */
export interface Closing {
  readonly name: string;
  /** Minutes since 1970 on the owner's clock. */
  readonly nowMin: number;
  readonly note?: string;
  /** What it used comes off the shelf; what was bought for it and is left goes on. */
  readonly shelf: boolean;
}

/** Edits that close the project in hand: the plan takes what was built, and the next project starts from there. */
export function closeEdits(
  sound: SoundPlan,
  input: WorkInput,
  { name, nowMin, note, shelf }: Closing,
): Edit[] {
  const { plan } = sound;
  const close = [...takeBuiltEdits(input), ...finishEdits(plan.work, name, nowMin, note)];
  if (!shelf) return close;
  const closed = editSound(sound, close);
  // what is wrong with them is told where they are made
  return closed.ok ? [...close, ...shelfEdits(plan, closed.plan)] : close;
}

/** Edits of the stock: `closed` is the plan in which what was built is no longer to be made. */
function shelfEdits(plan: Plan, closed: Plan): Edit[] {
  const shelved = boughtOnShelf(plan);
  const before = workOutLayout(workOut(shelved));
  const after = workOutLayout(workOut(closed));
  return [
    ...stockEdits(plan, stockLeft(shelved, before, after)),
    ...(nothingBought(plan) ? [] : [{ edit: "remove", at: "bought" } as const]),
  ];
}
