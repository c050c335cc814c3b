import { useState } from "react";
import { type ListLine, shelveEdits, tickEdits, untickEdits } from "../../../core/parts/bought-edits.js";
import type { LayoutFigures } from "../../../core/parts/layout-types.js";
import type { Edit } from "../../../core/plan/edits/edit.js";
import type { Plan } from "../../../core/plan/model/plan.js";
import { usePlan, usePlanStore } from "../../app/context.js";
import { useRefusal } from "../../parts/use-refusal.js";

/** Ticks of the shopping list, which stand in the plan and go wherever it goes. `tick` is left out where nothing can be changed. */
export function useTicks({ cuts, parts }: LayoutFigures) {
  const store = usePlanStore();
  const refusalOf = useRefusal();
  const canChange = usePlan(({ reading, readOnly }) => reading.ok && !readOnly);
  const [refused, setRefused] = useState<string>();
  // the plan as it stands at the tap, which may be newer than what is drawn
  const make = (editsOf: (plan: Plan) => Edit[]) => {
    const { reading } = store.get();
    if (reading.ok) setRefused(refusalOf(store.edit(editsOf(reading.plan))));
  };
  const { list, bought } = parts;
  const tick = (line: ListLine) =>
    make((plan) => tickEdits(plan, { cuts: cuts.kinds, list, bought }, [line]));
  return {
    tick: canChange ? tick : undefined,
    untick: (lines: readonly ListLine[]) => make((plan) => untickEdits(plan, cuts.kinds, lines)),
    shelve: () => make(shelveEdits),
    refused,
  };
}
