import { readPlan } from "../../core/plan/read-text.js";
import { withReader } from "./full-reader.js";
import { makePlan } from "./keep/plans.js";
import type { PlanRecord, StepAbout } from "./keep/records.js";
import { shelf, tabs } from "./shelf.js";

/** Puts a plan on the shelf and asks the browser not to clear it away. */
export async function putOnShelf(
  text: string,
  about: StepAbout,
  fallbackName: string,
): Promise<PlanRecord | undefined> {
  const state = await shelf();
  if (state.is !== "open") return undefined;
  void askToPersist();
  const read = await withReader(() => readPlan(text));
  const name = read.ok ? read.plan.name : fallbackName;
  const record = await makePlan(state.database, { name, text, about, at: Date.now() });
  tabs.tell({ plan: record.id });
  return record;
}

async function askToPersist(): Promise<void> {
  if (!navigator.storage?.persist || (await navigator.storage.persisted())) return;
  await navigator.storage.persist();
}
