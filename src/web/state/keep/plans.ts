import { begunIn } from "./begun.js";
import type { ShelfDatabase } from "./database.js";
import { newStep } from "./history.js";
import { type HeadMove, headMoved, type Kept, type StepToKeep, stepKept } from "./kept.js";
import type { MomentRecord, PlanRecord, StepAbout, StepRecord } from "./records.js";

/** A write counts only when it is on the disk, not when it is on its way there. */
const toDisk = { durability: "strict" } as const;

/** Until a write is on the disk, or has failed: then by the transaction's own reason, which its requests do not know. */
async function onDisk(
  transaction: { readonly done: Promise<void> },
  ...requests: readonly Promise<unknown>[]
): Promise<void> {
  const [ended] = await Promise.allSettled([transaction.done, ...requests]);
  if (ended.status === "rejected") throw ended.reason;
}

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
    begun: begunIn(text),
  };
  const transaction = database.transaction(["plans", "steps"], "readwrite", toDisk);
  const first = newStep({ plan: plan.id, no: 1, parent: 0, at, about, before: "", after: text });
  await onDisk(
    transaction,
    transaction.objectStore("plans").add(plan),
    transaction.objectStore("steps").add(first),
  );
  return plan;
}

/** A plan as it is kept, its steps apart: of those there may be many thousand. */
export interface StoredPlan {
  readonly record: PlanRecord;
  readonly moments: readonly MomentRecord[];
}

const between = (id: string, from: number, to: number) => IDBKeyRange.bound([id, from], [id, to]);
const all = (id: string) => between(id, 0, Number.MAX_SAFE_INTEGER);

export async function loadPlan(database: ShelfDatabase, id: string): Promise<StoredPlan | undefined> {
  const transaction = database.transaction(["plans", "moments"]);
  const [record, moments] = await Promise.all([
    transaction.objectStore("plans").get(id),
    transaction.objectStore("moments").getAll(all(id)),
  ]);
  return record && { record, moments };
}

/** Steps from one number to another, both of them too, as far as they are there. */
export async function stepsBetween(
  database: ShelfDatabase,
  id: string,
  from: number,
  to: number,
): Promise<StepRecord[]> {
  return database.getAll("steps", between(id, from, to));
}

/** The last step that was made on that one, those kept beside left out. */
export async function lastChild(
  database: ShelfDatabase,
  id: string,
  parent: number,
): Promise<StepRecord | undefined> {
  const children = database.transaction("steps").store.index("children");
  let cursor = await children.openCursor(IDBKeyRange.only([id, parent]), "prev");
  while (cursor?.value.beside) cursor = await cursor.continue();
  return cursor?.value;
}

/** Keeps a new state, whole or not at all. */
export async function keepStep(database: ShelfDatabase, id: string, given: StepToKeep): Promise<Kept> {
  const transaction = database.transaction(["plans", "steps"], "readwrite", toDisk);
  const kept = stepKept(await transaction.objectStore("plans").get(id), given);
  if (kept.is !== "kept") return kept;
  await onDisk(
    transaction,
    ...(kept.step ? [transaction.objectStore("steps").add(kept.step)] : []),
    transaction.objectStore("plans").put(kept.record),
  );
  return kept;
}

export async function moveHead(database: ShelfDatabase, id: string, move: HeadMove): Promise<Kept> {
  const transaction = database.transaction("plans", "readwrite", toDisk);
  const kept = headMoved(await transaction.store.get(id), move);
  if (kept.is !== "kept") return kept;
  await onDisk(transaction, transaction.store.put(kept.record));
  return kept;
}

/** Notes that a state was written to a file outside the browser. */
export async function noteSaved(
  database: ShelfDatabase,
  id: string,
  saved: { readonly step: number; readonly at: number; readonly file: string },
): Promise<PlanRecord | undefined> {
  const transaction = database.transaction("plans", "readwrite", toDisk);
  const record = await transaction.store.get(id);
  if (record === undefined) return undefined;
  const changed = { ...record, saved };
  await onDisk(transaction, transaction.store.put(changed));
  return changed;
}

/** Gives a state a name; an empty name takes it away. */
export async function nameMoment(database: ShelfDatabase, moment: MomentRecord): Promise<void> {
  const transaction = database.transaction("moments", "readwrite", toDisk);
  const { store } = transaction;
  await onDisk(
    transaction,
    moment.name === "" ? store.delete([moment.plan, moment.step]) : store.put(moment),
  );
}

/** Takes a plan and its whole history off the shelf. */
export async function removePlan(database: ShelfDatabase, id: string): Promise<void> {
  const transaction = database.transaction(["plans", "steps", "moments", "files"], "readwrite", toDisk);
  await onDisk(
    transaction,
    transaction.objectStore("plans").delete(id),
    transaction.objectStore("steps").delete(all(id)),
    transaction.objectStore("moments").delete(all(id)),
    transaction.objectStore("files").delete(id),
  );
}
