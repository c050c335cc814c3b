import { workMinutes } from "../reference/work-times.js";
import { GraphBuilder } from "./graph-builder.js";
import type { WorkGraph } from "./step.js";
import { addBoxes } from "./step-boxes.js";
import { addGear } from "./step-gear.js";
import { addProofs } from "./step-proofs.js";
import { addRuns } from "./step-runs.js";
import type { WorkFacts, WorkInput } from "./work-input.js";

/**
 * Every step of fitting a plan out, from the survey to the last lid, and what must wait for what with the reason of the trade. The steps
 * stand in the plan's order, not yet in an order to work by: see `orderOf`.
 */
export function workSteps(input: WorkInput, facts: WorkFacts = {}): WorkGraph {
  const graph = new GraphBuilder();
  graph.add({
    id: "survey / boat",
    kind: "survey",
    task: "survey boat",
    at: [],
    minutes: workMinutes.surveyBoat,
    tools: ["tape"],
    consumables: [{ what: "pencil", count: 1 }],
  });
  addBoxes(graph, input, facts);
  addRuns(graph, input, facts);
  addGear(graph, input, facts);
  addProofs(graph, input);
  return graph.done();
}
