import { readPlan } from "../../core/plan/read-text.js";
import { withReader } from "./full-reader.js";
import { makePlan } from "./keep/plans.js";
import type { PlanRecord, StepAbout } from "./keep/records.js";
import { shelf, tabs } from "./shelf.js";
import { holdUnkept } from "./unkept.js";

/**
 * Takes a plan in: on the shelf, or, where the browser keeps nothing or has no room, in this tab only.
 * @param name Where the text itself tells none.
 */
export async function takeIn(
  text: string,
  about: StepAbout,
  name: string,
): Promise<{ readonly id: string; readonly kept: boolean }> {
  const read = await withReader(() => readPlan(text));
  const given = { name: read.ok ? read.plan.name : name, text, about };
  const record = await putOnShelf(given);
  return record ? { id: record.id, kept: true } : { id: holdUnkept(given), kept: false };
}

async function putOnShelf(given: {
  readonly name: string;
  readonly text: string;
  readonly about: StepAbout;
}): Promise<PlanRecord | undefined> {
  const state = await shelf();
  if (state.is !== "open") return undefined;
  void askToPersist().catch(() => undefined);
  try {
    const record = await makePlan(state.database, { ...given, at: Date.now() });
    tabs.tell({ plan: record.id });
    return record;
  } catch {
    // no room, or the browser has closed its database: the mark beside the plan's name says that it is not kept
    return undefined;
  }
}

async function askToPersist(): Promise<void> {
  if (!navigator.storage?.persist || (await navigator.storage.persisted())) return;
  await navigator.storage.persist();
}
