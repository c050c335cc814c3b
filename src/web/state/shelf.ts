import { NoDatabase, openShelf, type ShelfDatabase } from "./keep/database.js";
import { removePlan } from "./keep/plans.js";
import { Tabs } from "./keep/tabs.js";

/** Where plans are kept, or why nothing can be. */
export type ShelfState =
  | { readonly is: "open"; readonly database: ShelfDatabase }
  | { readonly is: "closed"; readonly reason: NoDatabase["reason"] | "taken over" };

let opening: Promise<ShelfState> | undefined;
let taken = false;
export const tabs = new Tabs();

/** Event: another tab has a newer version of the page, and keeps what this one no longer can. */
export const takenOver = "skiffloom-taken-over";

/** Has another tab taken over? */
export const isTakenOver = (): boolean => taken;

/** Opens the browser's database once for this tab, and anew where the browser has closed it. Never throws. */
export function shelf(): Promise<ShelfState> {
  if (taken) return Promise.resolve({ is: "closed", reason: "taken over" });
  opening ??= open();
  return opening;
}

async function open(): Promise<ShelfState> {
  try {
    const database = await openShelf((how) => {
      opening = undefined;
      if (how === "closed") return;
      taken = true;
      dispatchEvent(new Event(takenOver));
    });
    return { is: "open", database };
  } catch (error) {
    if (error instanceof NoDatabase) return { is: "closed", reason: error.reason };
    throw error;
  }
}

export async function takeOffShelf(id: string): Promise<void> {
  const state = await shelf();
  if (state.is !== "open") return;
  await removePlan(state.database, id);
  tabs.tell({ plan: id });
  // a channel does not speak to its own tab
  dispatchEvent(new Event("skiffloom-shelf"));
}
