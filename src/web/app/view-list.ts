import { type ComponentType, type LazyExoticComponent, lazy } from "react";
import type { ViewId } from "./view-ids.js";

type Load = () => Promise<{ readonly View: ComponentType }>;

/** Each view is a module that exports `View`; it arrives when it is first opened. A view left out here says plainly that it is not made yet. */
const loads: Partial<Readonly<Record<ViewId, Load>>> = {
  survey: () => import("../views/boat/survey-view.js"),
  layout: () => import("../views/boat/layout-view.js"),
  boxes: () => import("../views/boxes/boxes-view.js"),
  build: () => import("../views/build/build-view.js"),
  proof: () => import("../views/proof/proof-view.js"),
  circuits: () => import("../views/circuits/circuits-view.js"),
  findings: () => import("../views/findings/findings-view.js"),
  gear: () => import("../views/lists/lists-view.js"),
  log: () => import("../views/log/log-view.js"),
  tape: () => import("../views/tape/tape-view.js"),
  terms: () => import("../views/terms/terms-view.js"),
  outing: () => import("../views/outing/outing-view.js"),
  parts: () => import("../views/parts/parts-view.js"),
  print: () => import("../views/print/print-view.js"),
  text: () => import("../views/text/text-view.js"),
};

const missing: Load = () => import("../views/not-yet.js");
const made = new Map<ViewId, LazyExoticComponent<ComponentType>>();

/** The component of a view. */
export function viewOf(id: ViewId): LazyExoticComponent<ComponentType> {
  const known = made.get(id);
  if (known) return known;
  const component = lazy(async () => ({ default: (await (loads[id] ?? missing)()).View }));
  made.set(id, component);
  return component;
}

/** A view whose module could not be loaded is asked for anew. */
export function forgetView(id: ViewId): void {
  made.delete(id);
}
