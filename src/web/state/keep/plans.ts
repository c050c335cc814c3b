import type { ShelfDatabase } from "./database.js";
import { newStep } from "./history.js";
import type { MomentRecord, PlanRecord, StepAbout, StepRecord } from "./records.js";

/** A write counts only when it is on the disk, not when it is on its way there. */
const toDisk = { durability: "strict" } as const;

/** Plans of this browser, the last changed first. */
export async function listPlans(database: ShelfDatabase): Promise<PlanRecord[]> {
  const plans = await database.getAll("plans");
  return plans.sort((a, b) => b.changedAt - a.changedAt);
}

/** Puts a new plan on the shelf. */
export async function makePlan(
  database: ShelfDatabase,
  given: { readonly name: string; readonly text: string; readonly about: StepAbout; readonly at: number },
): Promise<PlanRecord> {
  const { name, text, about, at } = given;
  const plan: PlanRecord = {
    id: crypto.randomUUID(),
    name,
    madeAt: at,
    changedAt: at,
    head: 1,
    tip: 1,
    steps: 1,
  };
  const transaction = database.transaction(["plans", "steps"], "readwrite", toDisk);
  void transaction.objectStore("plans").add(plan);
  void transaction
    .objectStore("steps")
    .add(newStep({ plan: plan.id, no: 1, parent: 0, at, about, before: "", after: text }));
  await transaction.done;
  return plan;
}

export interface StoredPlan {
  readonly record: PlanRecord;
  readonly steps: readonly StepRecord[];
  readonly moments: readonly MomentRecord[];
}

const all = (id: string) => IDBKeyRange.bound([id, 0], [id, Number.MAX_SAFE_INTEGER]);

export async function loadPlan(database: ShelfDatabase, id: string): Promise<StoredPlan | undefined> {
  const transaction = database.transaction(["plans", "steps", "moments"]);
  const [record, steps, moments] = await Promise.all([
    transaction.objectStore("plans").get(id),
    transaction.objectStore("steps").getAll(all(id)),
    transaction.objectStore("moments").getAll(all(id)),
  ]);
  return record && { record, steps, moments };
}

/** Steps that were kept after a given one, by this tab or another, and the plan as it is now. */
export async function newerSteps(
  database: ShelfDatabase,
  id: string,
  after: number,
): Promise<StoredPlan | undefined> {
  const transaction = database.transaction(["plans", "steps", "moments"]);
  const range = IDBKeyRange.bound([id, after], [id, Number.MAX_SAFE_INTEGER], true);
  const [record, steps, moments] = await Promise.all([
    transaction.objectStore("plans").get(id),
    transaction.objectStore("steps").getAll(range),
    transaction.objectStore("moments").getAll(all(id)),
  ]);
  return record && { record, steps, moments };
}

/** `moved`: another tab was there first; nothing was written. */
export type Kept =
  | { readonly is: "kept"; readonly record: PlanRecord; readonly step?: StepRecord }
  | { readonly is: "moved" }
  | { readonly is: "gone" };

/** Keeps a new state on top of `head`, whole or not at all. `beside`: keeps it without showing it, whatever the head is. */
export async function keepStep(
  database: ShelfDatabase,
  id: string,
  given: {
    readonly head: number;
    readonly at: number;
    readonly about: StepAbout;
    readonly before: string;
    readonly after: string;
    readonly name: string;
    readonly beside?: boolean;
  },
): Promise<Kept> {
  const transaction = database.transaction(["plans", "steps"], "readwrite", toDisk);
  const plans = transaction.objectStore("plans");
  const record = await plans.get(id);
  if (record === undefined) return { is: "gone" };
  if (record.head !== given.head && !given.beside) return { is: "moved" };
  const no = record.steps + 1;
  const step = newStep({ ...given, plan: id, no, parent: given.head });
  const shown = given.beside ? {} : { head: no, tip: no, name: given.name };
  const changed: PlanRecord = { ...record, ...shown, steps: no, changedAt: given.at };
  void transaction.objectStore("steps").add(step);
  void plans.put(changed);
  await transaction.done;
  return { is: "kept", record: changed, step };
}

/** Shows another state: undo and redo. The way on from it stays known. */
export async function moveHead(
  database: ShelfDatabase,
  id: string,
  move: { readonly from: number; readonly to: number; readonly name: string; readonly at: number },
): Promise<Kept> {
  const transaction = database.transaction("plans", "readwrite", toDisk);
  const record = await transaction.store.get(id);
  if (record === undefined) return { is: "gone" };
  if (record.head !== move.from) return { is: "moved" };
  const changed: PlanRecord = { ...record, head: move.to, name: move.name, changedAt: move.at };
  void transaction.store.put(changed);
  await transaction.done;
  return { is: "kept", record: changed };
}

/** Notes that a state was written to a file outside the browser. */
export async function noteSaved(
  database: ShelfDatabase,
  id: string,
  saved: { readonly step: number; readonly at: number; readonly file: string },
): Promise<PlanRecord | undefined> {
  const transaction = database.transaction("plans", "readwrite", toDisk);
  const record = await transaction.store.get(id);
  if (record !== undefined) void transaction.store.put({ ...record, saved });
  await transaction.done;
  return record && { ...record, saved };
}

/** Gives a state a name; an empty name takes it away. */
export async function nameMoment(database: ShelfDatabase, moment: MomentRecord): Promise<void> {
  const transaction = database.transaction("moments", "readwrite", toDisk);
  if (moment.name === "") void transaction.store.delete([moment.plan, moment.step]);
  else void transaction.store.put(moment);
  await transaction.done;
}

/** Takes a plan and its whole history off the shelf. */
export async function removePlan(database: ShelfDatabase, id: string): Promise<void> {
  const transaction = database.transaction(["plans", "steps", "moments", "files"], "readwrite", toDisk);
  void transaction.objectStore("plans").delete(id);
  void transaction.objectStore("steps").delete(all(id));
  void transaction.objectStore("moments").delete(all(id));
  void transaction.objectStore("files").delete(id);
  await transaction.done;
}
