import { workMinutes } from "../reference/work-times.js";
import type { GraphBuilder } from "./graph-builder.js";
import type { EntryHole, WorkFacts, WorkInput } from "./work-input.js";

/** Steps of boxes and panels: mark, drill, deburr, fill, mount, seal the entries, close. */
export function addBoxes(graph: GraphBuilder, { plan }: WorkInput, facts: WorkFacts): void {
  const ticked = new Set(
    [plan.source.work, ...plan.source.work.projects].flatMap(({ workDone }) =>
      workDone.map(({ step }) => step),
    ),
  );
  const panels = new Set(plan.panels.map(({ name }) => name));
  for (const { name, holes: own } of [...plan.boxes, ...plan.panels]) {
    const isPanel = panels.has(name);
    const runs = plan.runs.filter(({ from, to }) => from.place === name || to.place === name);
    const holes: readonly EntryHole[] | undefined = facts.entries?.get(name);
    const pieces = runs.map((run) => run.name);
    const spares = (holes ?? []).filter(({ run }) => /^spare \d+$/.test(run));
    const count = holes?.length ?? runs.length;
    if (count === 0) continue;
    const at = [name];
    const sizes = (holes ?? []).map(({ run, holeMm, on }) => ({
      what: "hole" as const,
      of: run,
      mm: holeMm,
      ...(on === undefined ? {} : { face: on }),
    }));
    const drawing = { sheet: "template" as const, of: name };
    // a box that is drilled already is not drilled again; a step that was ticked when it was not stays on record
    const drilled = own !== undefined;
    const about = { kind: "cut box" as const, at, pieces: drilled ? [] : pieces, drawing };
    const cut = (step: Parameters<GraphBuilder["add"]>[0]): void => {
      if (!drilled || ticked.has(step.id)) graph.add(step);
    };
    cut({
      ...about,
      id: `mark box / ${name}`,
      task: "mark box",
      minutes: workMinutes.markBox,
      tools: ["punch", "tape"],
      consumables: [{ what: "masking tape", count: 1 }],
    });
    graph.wait(`mark box / ${name}`, "survey / boat", "measure before cutting");
    cut({
      ...about,
      id: `drill box / ${name}`,
      task: "drill box",
      minutes: workMinutes.cutBoxHole * count,
      sizes,
      tools: ["drill with step bit", "drill with twist bit"],
      caution: "drilling",
    });
    graph.wait(`drill box / ${name}`, `mark box / ${name}`, "mark before drilling");
    cut({
      ...about,
      id: `deburr box / ${name}`,
      task: "deburr box",
      minutes: workMinutes.deburrBox,
      tools: ["deburring tool"],
    });
    graph.wait(`deburr box / ${name}`, `drill box / ${name}`, "drill before deburring");
    const contents = facts.contents?.get(name) ?? [];
    if (contents.length > 0) {
      graph.add({
        id: `fill / ${name}`,
        kind: "mount",
        task: "fill box",
        at,
        minutes: workMinutes.fitContent * contents.length,
        pieces: contents,
        tools: ["screwdriver"],
        consumables: [{ what: "screw", count: 2 * contents.length }],
        drawing,
      });
      graph.wait(`fill / ${name}`, `deburr box / ${name}`, "box holes before contents");
      graph.wait(`mount / ${name}`, `fill / ${name}`, "box holes before contents");
    }
    graph.add({
      id: `mount / ${name}`,
      kind: "mount",
      task: isPanel ? "mount panel" : "mount box",
      at,
      minutes: isPanel ? workMinutes.mountPanel : workMinutes.mountBox,
      pieces: [name],
      tools: ["screwdriver"],
      consumables: [{ what: "screw", count: 4 }],
    });
    graph.wait(`mount / ${name}`, `deburr box / ${name}`, "box holes before contents");
    graph.add({
      id: `seal entries / ${name}`,
      kind: "seal",
      task: "seal entries",
      at,
      minutes: workMinutes.joinConductor * count,
      pieces,
      sizes: (holes ?? []).flatMap(({ run, gland }) =>
        gland === undefined ? [] : [{ what: "gland" as const, of: run, size: gland }],
      ),
      tools: ["spanner"],
      consumables: [
        { what: "gland", count: count - spares.length },
        { what: "plug", count: spares.length },
      ],
    });
    for (const run of runs) graph.wait(`seal entries / ${name}`, `draw / ${run.name}`, "wire before joint");
    graph.add({
      id: `close / ${name}`,
      kind: "close up",
      task: isPanel ? "close panel" : "close box",
      at,
      minutes: workMinutes.closeBox,
      tools: ["screwdriver"],
    });
    graph.wait(`close / ${name}`, `seal entries / ${name}`, "prove before closing");
    for (const run of runs) graph.wait(`close / ${name}`, `label / ${run.name}`, "label before closing");
  }
}
