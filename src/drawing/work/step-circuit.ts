import type { Figures } from "../../core/figures-types.js";
import type { CompletePlan } from "../../core/plan/completed.js";
import type { Shows } from "../../core/plan/model/plan.js";
import type { DrawnWords } from "../../words/drawn/english.js";
import { oneLineDiagram } from "../one-line/diagram.js";
import type { Shape } from "../shapes.js";

const roomMm = { left: 0, bottom: 0, widthMm: 190, heightMm: 150 } as const;

/** One line from the battery to the gear of what a run carries; undefined where that would not go on one drawing. */
export function circuitOfRun(
  figures: Figures,
  run: string,
  shows: Shows,
  words: DrawnWords,
): readonly Shape[] | undefined {
  const plan = planOfRuns(figures.plan, new Set([run]));
  if (plan.runs.length === 0) return undefined;
  const [drawn, ...more] = oneLineDiagram({ ...figures, plan }, shows, roomMm, words);
  return more.length === 0 ? drawn : undefined;
}

/** The plan with nothing in it but what some runs carry, and the way there from the battery. */
export function planOfRuns(plan: CompletePlan, names: ReadonlySet<string>): CompletePlan {
  const wanted = new Set(plan.runs.flatMap(({ name, carries }) => (names.has(name) ? carries : [])));
  // a way of a panel hangs on what feeds the panel, and that may be a way of another
  for (const circuit of wanted) {
    const [panel = ""] = circuit.split(" / ");
    const { supply } = plan.circuits.get(circuit) ?? {};
    for (const feed of [plan.circuitOf.get(panel), supply && plan.circuitOf.get(supply)])
      if (feed !== undefined && feed !== "") wanted.add(feed);
  }
  const runs = plan.runs.filter(({ carries }) => carries.some((circuit) => wanted.has(circuit)));
  const places = new Set(runs.flatMap(({ from, to }) => [from.place, to.place]));
  const there = <T extends { readonly name: string }>(things: readonly T[]) =>
    things.filter((thing) => places.has(thing.name));
  return {
    ...plan,
    runs,
    batteries: there(plan.batteries),
    chargers: there(plan.chargers),
    converters: there(plan.converters),
    boxes: there(plan.boxes),
    gear: there(plan.gear),
    panels: there(plan.panels).map((panel) => ({
      ...panel,
      ways: panel.ways.filter((way) => wanted.has(`${panel.name} / ${way.name}`)),
    })),
  };
}
