import { useSyncExternalStore } from "react";
import { isViewId, type ViewId } from "./view-ids.js";

/** Where one is. It stands in the address after `#`, so that reload, back and a bookmark lead to the same place. */
export type Place =
  | { readonly at: "start" }
  /** The questions a new plan begins with. */
  | { readonly at: "new" }
  | {
      readonly at: "plan";
      readonly plan: string;
      readonly view: ViewId;
      /** What is selected, by its name in the plan: it lies open as a slip. */
      readonly selected?: string;
    };

function readPlace(hash: string): Place {
  const [, kind, plan, view, selected] = hash.replace(/^#/, "").split("/");
  if (kind === "new") return { at: "new" };
  if (kind !== "plan" || !plan) return { at: "start" };
  const chosen = view !== undefined && isViewId(view) ? view : "circuits";
  const name = selected === undefined ? "" : decoded(selected);
  return { at: "plan", plan, view: chosen, ...(name === "" ? {} : { selected: name }) };
}

export function writePlace(place: Place): string {
  if (place.at !== "plan") return place.at === "start" ? "#/" : "#/new";
  const end = place.selected === undefined ? "" : `/${encodeURIComponent(place.selected)}`;
  return `#/plan/${place.plan}/${place.view}${end}`;
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return "";
  }
}

/** Goes to a place. `replace`: without a step that Back would return to. */
export function goTo(place: Place, how: "push" | "replace" = "push"): void {
  const hash = writePlace(place);
  if (hash === location.hash) return;
  if (how === "replace") history.replaceState(null, "", hash);
  else history.pushState(null, "", hash);
  dispatchEvent(new Event("skiffloom-place"));
}

function subscribe(listener: () => void): () => void {
  const events = ["popstate", "hashchange", "skiffloom-place"];
  for (const name of events) addEventListener(name, listener);
  return () => {
    for (const name of events) removeEventListener(name, listener);
  };
}

export function usePlace(): Place {
  const hash = useSyncExternalStore(subscribe, () => location.hash);
  return readPlace(hash);
}

/** Name of what is selected, and how to select something else (`undefined`: nothing). */
export function useSelection(): readonly [string | undefined, (name: string | undefined) => void] {
  const place = usePlace();
  const selected = place.at === "plan" ? place.selected : undefined;
  const select = (name: string | undefined) => {
    if (place.at !== "plan") return;
    const { plan, view } = place;
    goTo({ at: "plan", plan, view, ...(name === undefined ? {} : { selected: name }) }, "replace");
  };
  return [selected, select];
}
