import { workOutWhole } from "../core/layout-figures.js";
import { type LoadedPlan, loadPlan } from "./load.js";

/** Reads a plan and works everything out: the electrics, and what is cut, drilled and bought; findings of both. */
export function loadWhole(path: string): LoadedPlan & ReturnType<typeof workOutWhole> {
  const loaded = loadPlan(path);
  return { ...loaded, ...workOutWhole(loaded.plan) };
}
