import type { CompleteRun } from "../plan/completed.js";
import { supportRules } from "../reference/supports.js";
import { workMinutes } from "../reference/work-times.js";
import type { GraphBuilder } from "./graph-builder.js";
import type { StepSize } from "./step.js";
import { addEnd, type MadeJoints } from "./step-ends.js";
import type { HeldStretch, WorkFacts, WorkInput } from "./work-input.js";

/** Conductors at one end of a run. */
function coresOf(run: CompleteRun): number {
  const outs = run.legs === "return" ? 0 : Math.max(1, run.carries.length);
  const backs =
    run.legs === "out" || run.return === "hull"
      ? 0
      : run.return === "shared"
        ? 1
        : Math.max(1, run.carries.length);
  return outs + backs;
}

/** Steps of each cable: measure, cut, draw, make its ends, label; then clips along each stretch. */
export function addRuns(graph: GraphBuilder, input: WorkInput, facts: WorkFacts): void {
  const { plan, sizes } = input;
  const places = new Set([...plan.panels, ...plan.boxes].map(({ name }) => name));
  const gear = new Map(plan.gear.map((piece) => [piece.name, piece]));
  const joints: MadeJoints = new Set();
  for (const { name, edge } of plan.source.waypoints) {
    if (edge !== "grommet" || !plan.runs.some(({ along }) => along?.includes(name))) continue;
    graph.add({
      id: `grommet / ${name}`,
      kind: "seal",
      task: "fit grommet",
      at: [name],
      minutes: workMinutes.fitGrommet,
      pieces: [name],
      consumables: [{ what: "grommet", count: 1 }],
    });
  }
  for (const run of plan.runs) {
    const { name } = run;
    const cores = coresOf(run);
    const at = [run.from.place, run.to.place];
    const length: StepSize = { what: "length", of: name, m: run.lengthM };
    const conductor = sizes.choices
      .filter((choice) => choice.run === run.group || choice.run === name)
      .map((choice): StepSize => ({ what: "conductor", of: choice.id, key: choice.size.key }));
    const cuts = facts.cuts?.get(name);
    const pieces = cuts?.length ?? (run.sheathed ? 1 : cores);
    graph.add({
      id: `survey / ${name}`,
      kind: "survey",
      task: "survey run",
      at,
      minutes: workMinutes.surveyRun,
      pieces: [name],
      sizes: [length],
      tools: ["tape"],
    });
    graph.wait(`survey / ${name}`, "survey / boat", "measure before cutting");
    graph.add({
      id: `cut / ${name}`,
      kind: "draw wire",
      task: "cut wire",
      at,
      minutes: workMinutes.cutWire * pieces,
      pieces: [name],
      // the kind of wire in the cut list says its size
      sizes: cuts ?? [length, ...conductor],
      tools: ["cutter and stripper"],
      consumables: [{ what: "wire", count: pieces }],
    });
    graph.wait(`cut / ${name}`, `survey / ${name}`, "measure before cutting");
    graph.add({
      id: `draw / ${name}`,
      kind: "draw wire",
      task: "draw wire",
      at: [run.from.place, ...(run.along ?? []), run.to.place],
      minutes: Math.round(workMinutes.drawWire + workMinutes.drawWirePerM * run.lengthM),
      pieces: [name],
      sizes: [length, ...throughOf(name, facts)],
      tools: ["drawing line"],
      // both ends are taped where they come out, so that they can't fall back
      consumables: [{ what: "pulling tape", count: 2 }],
    });
    graph.wait(`draw / ${name}`, `cut / ${name}`, "cut before drawing");
    for (const point of run.along ?? [])
      graph.wait(`draw / ${name}`, `grommet / ${point}`, "hole before wire");
    const device = input.protection.find(({ of, id }) => of === name && id === `${name} / fuse`);
    const own = device && { what: "rating" as const, of: device.id, a: device.ratingA };
    // by the battery, where it must be; else where the run starts
    const fuseEnd = plan.batteries.some((battery) => battery.name === run.to.place) ? "end" : "start";
    for (const end of ["start", "end"] as const) {
      const place = end === "start" ? run.from.place : run.to.place;
      const fuse = end === fuseEnd ? own : undefined;
      addEnd(graph, { run, end, place, cores, facts, joints, ...(fuse && { fuse }) });
      if (places.has(place)) {
        graph.wait(`draw / ${name}`, `deburr box / ${place}`, "hole before wire");
        graph.wait(`draw / ${name}`, `mount / ${place}`, "mount before wire");
      }
      const piece = gear.get(place);
      if (piece) graph.wait(`draw / ${name}`, `drill / ${piece.group}`, "hole before wire");
    }
    graph.add({
      id: `label / ${name}`,
      kind: "label",
      task: "label run",
      at,
      minutes: workMinutes.label * 2,
      pieces: [name],
      tools: ["label printer"],
      consumables: [{ what: "label", count: 2 }],
    });
    graph.wait(`label / ${name}`, `draw / ${name}`, "wire before clips");
  }
  for (const [at, { run, through }] of (facts.pulls ?? []).entries())
    for (const later of (facts.pulls ?? []).slice(at + 1))
      if (later.through.some((passage) => through.includes(passage)))
        graph.wait(`draw / ${later.run}`, `draw / ${run}`, "largest end first");
  for (const stretch of facts.stretches ?? ownStretches(input)) addClips(graph, stretch, places);
}

function throughOf(name: string, { pulls }: WorkFacts): StepSize[] {
  const pull = pulls?.find(({ run }) => run === name);
  return pull === undefined || pull.through.length === 0
    ? []
    : [{ what: "through", of: name, passages: pull.through }];
}

/** Without routes each run is a stretch of its own, with as many clips as the rule's distance asks for. */
function ownStretches({ plan }: WorkInput): HeldStretch[] {
  return plan.runs.map((run): HeldStretch => {
    const what = run.sheathed ? "sheathed" : "unsheathed";
    const rule = supportRules.find((one) => one.rules === plan.source.rules && one.what === what);
    const most = rule?.maxApartM;
    return {
      leg: run.name,
      ofRun: true,
      at: [run.from.place, run.to.place],
      runs: [run.name],
      supports: most === undefined ? 1 : Math.max(1, Math.ceil(run.lengthM / most) - 1),
      ...(most === undefined ? {} : { apartM: most }),
    };
  });
}

function addClips(graph: GraphBuilder, stretch: HeldStretch, places: ReadonlySet<string>): void {
  const { leg, ofRun, at, runs, supports, apartM } = stretch;
  if (supports === 0 || runs.length === 0) return;
  const id = `secure / ${ofRun ? "" : "leg "}${leg}`;
  graph.add({
    id,
    kind: "secure",
    task: "secure run",
    at,
    minutes: workMinutes.support * supports,
    pieces: runs,
    sizes: apartM === undefined ? [] : [{ what: "spacing", of: leg, m: apartM }],
    tools: ["screwdriver"],
    consumables: [{ what: "clip", count: supports }],
  });
  for (const run of runs) graph.wait(id, `draw / ${run}`, "wire before clips");
  for (const place of at) if (places.has(place)) graph.wait(`close / ${place}`, id, "prove before closing");
}
