import { useEffect } from "react";
import { tickEdits } from "../../../core/parts/bought-edits.js";
import type { LayoutFigures } from "../../../core/parts/layout-types.js";
import type { Plan } from "../../../core/plan/model/plan.js";
import { usePlanStore } from "../../app/context.js";
import type { PlanStore } from "../../state/plan-store.js";
import { smallStorage } from "../../state/preferences.js";

const keyOf = (plan: string) => `skiffloom basket ${plan}`;

function kept(plan: string): string[] {
  try {
    const found: unknown = JSON.parse(smallStorage()?.getItem(keyOf(plan)) ?? "[]");
    return Array.isArray(found) ? found.filter((item) => typeof item === "string") : [];
  } catch {
    return [];
  }
}

function keepRest(plan: string, rest: readonly string[]): void {
  try {
    if (rest.length === 0) smallStorage()?.removeItem(keyOf(plan));
    else smallStorage()?.setItem(keyOf(plan), JSON.stringify(rest));
  } catch {
    // refused or full: what is in the plan already is not put in again
  }
}

/**
 * Ticks that an earlier form of the page kept in this browser alone go into the plan, once it is known how much of each thing the list asks
 * for. What it does not ask for has no amount, and waits here until it does.
 * @param layout As it belongs to the plan as it is now; undefined while there is none.
 */
export function useOldTicks(layout: LayoutFigures | undefined): void {
  const store = usePlanStore();
  useEffect(() => {
    if (layout) void takeIn(store, layout);
  }, [store, layout]);
}

async function takeIn(store: PlanStore, { cuts, parts }: LayoutFigures): Promise<void> {
  const { record, reading, readOnly } = store.get();
  const ticks = kept(record.id);
  if (ticks.length === 0 || !reading.ok || readOnly) return;
  const asked = [
    ...parts.wire
      .filter(({ buy }) => buy.length > 0)
      .map(({ item }) => ({ key: `wire\n${item}`, wire: true, item })),
    ...parts.list.lines
      .filter(({ toBuy }) => toBuy > 0)
      .map(({ kind, item }) => ({ key: `${kind}\n${item}`, wire: false, item })),
  ].filter(({ key }) => ticks.includes(key));
  if (asked.length === 0) return;
  const lines = asked.filter((line) => !isBought(reading.plan, parts, line));
  const { list, bought } = parts;
  const edits = tickEdits(reading.plan, { cuts: cuts.kinds, list, bought }, lines);
  if (edits.length > 0 && !store.edit(edits).ok) return;
  await store.settled();
  const { is } = store.get().keeping;
  if (is !== "kept") return;
  const taken = new Set(asked.map(({ key }) => key));
  keepRest(
    record.id,
    ticks.filter((key) => !taken.has(key)),
  );
}

function isBought(
  { boughtParts, boughtWire }: Plan,
  { bought }: LayoutFigures["parts"],
  { wire, item }: { readonly wire: boolean; readonly item: string },
): boolean {
  if (!wire) return boughtParts.some((one) => one.item === item);
  // of wire the plan may be newer than what was worked out of it
  return bought.wire.some((one) => one.item === item) || boughtWire.length > bought.wire.length;
}
