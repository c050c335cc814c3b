import type { CompleteRun } from "../plan/completed.js";
import type { JointKind } from "../plan/model/common.js";
import { cureHours } from "../reference/cures.js";
import { supportRules } from "../reference/supports.js";
import type { ToolKey } from "../reference/tools.js";
import { workMinutes } from "../reference/work-times.js";
import type { GraphBuilder } from "./graph-builder.js";
import type { StepSize } from "./step.js";
import type { WorkInput } from "./work-input.js";

const heated: readonly JointKind[] = ["sealed butt", "solder sleeve", "soldered and sleeved"];

/** Conductors at one end of a run. */
export function coresOf(run: CompleteRun): number {
  const outs = run.legs === "return" ? 0 : Math.max(1, run.carries.length);
  const backs =
    run.legs === "out" || run.return === "hull"
      ? 0
      : run.return === "shared"
        ? 1
        : Math.max(1, run.carries.length);
  return outs + backs;
}

/** Steps of each cable: measure, cut, draw, make its ends, clip, label. */
export function addRuns(graph: GraphBuilder, { plan, sizes }: WorkInput): void {
  const places = new Set([...plan.panels, ...plan.boxes].map(({ name }) => name));
  const gear = new Map(plan.gear.map((piece) => [piece.name, piece]));
  for (const run of plan.runs) {
    const { name } = run;
    const cores = coresOf(run);
    const conductor = sizes.choices
      .filter((choice) => choice.run === run.group)
      .map((choice): StepSize => ({ what: "conductor", of: choice.id, key: choice.size.key }));
    const length: StepSize = { what: "length", of: name, m: run.lengthM };
    const at = [run.from.place, run.to.place];
    graph.add({
      id: `survey / ${name}`,
      kind: "survey",
      task: "survey run",
      at,
      minutes: workMinutes.surveyRun,
      sizes: [length],
      tools: ["tape"],
    });
    graph.wait(`survey / ${name}`, "survey / boat", "measure before cutting");
    graph.add({
      id: `cut / ${name}`,
      kind: "draw wire",
      task: "cut wire",
      at,
      minutes: workMinutes.cutWire * (run.sheathed ? 1 : cores),
      pieces: [name],
      sizes: [length, ...conductor],
      tools: ["cutter and stripper"],
      consumables: [{ what: "wire", count: run.sheathed ? 1 : cores }],
    });
    graph.wait(`cut / ${name}`, `survey / ${name}`, "measure before cutting");
    graph.add({
      id: `draw / ${name}`,
      kind: "draw wire",
      task: "draw wire",
      at,
      minutes: Math.round(workMinutes.drawWire + workMinutes.drawWirePerM * run.lengthM),
      pieces: [name],
      sizes: [length],
      tools: ["drawing line"],
      // both ends are taped where they come out, so that they can't fall back
      consumables: [{ what: "pulling tape", count: 2 }],
    });
    graph.wait(`draw / ${name}`, `cut / ${name}`, "cut before drawing");
    for (const end of ["start", "end"] as const) {
      const place = end === "start" ? run.from.place : run.to.place;
      addEnd(graph, run, end, place, cores);
      if (places.has(place)) {
        graph.wait(`draw / ${name}`, `deburr box / ${place}`, "hole before wire");
        graph.wait(`draw / ${name}`, `mount / ${place}`, "mount before wire");
      }
      const piece = gear.get(place);
      if (piece) graph.wait(`draw / ${name}`, `drill / ${piece.group}`, "hole before wire");
    }
    const spacingM = supportRules.find(
      (rule) => rule.rules === plan.source.rules && rule.what === (run.sheathed ? "sheathed" : "unsheathed"),
    )?.maxApartM;
    const clips = Math.max(1, Math.ceil(run.lengthM / (spacingM ?? 0.45)) - 1);
    graph.add({
      id: `secure / ${name}`,
      kind: "secure",
      task: "secure run",
      at,
      minutes: workMinutes.support * clips,
      pieces: [name],
      sizes: spacingM === undefined ? [] : [{ what: "spacing", of: name, m: spacingM }],
      tools: ["screwdriver"],
      consumables: [{ what: "clip", count: clips }],
    });
    graph.wait(`secure / ${name}`, `draw / ${name}`, "wire before clips");
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
}

function addEnd(
  graph: GraphBuilder,
  run: CompleteRun,
  end: "start" | "end",
  place: string,
  cores: number,
): void {
  const kind = end === "start" ? run.jointAtStart : run.jointAtEnd;
  const join = `join / ${run.name} / ${end}`;
  const soldered = kind === "soldered and sleeved";
  const crimped =
    kind.startsWith("crimped") || kind === "sealed butt" || kind === "push-on tab" || kind === "pin plug";
  const tools: ToolKey[] = soldered
    ? ["soldering iron", "cutter and stripper"]
    : crimped
      ? ["crimper", "cutter and stripper"]
      : kind === "solder sleeve"
        ? ["cutter and stripper"]
        : ["screwdriver", "cutter and stripper"];
  graph.add({
    id: join,
    kind: "join",
    task: "join end",
    at: [place],
    minutes: cores * (soldered ? workMinutes.solderConductor : workMinutes.joinConductor),
    pieces: [run.name],
    tools,
    consumables: [
      { what: "joint", count: cores },
      ...(soldered ? [{ what: "solder" as const, count: 1 }] : []),
    ],
    ...(crimped ? { caution: "crimp pull" as const } : soldered ? { caution: "solder" as const } : {}),
  });
  graph.wait(join, `draw / ${run.name}`, "wire before joint");
  if (heated.includes(kind)) {
    const shrink = `shrink / ${run.name} / ${end}`;
    graph.add({
      id: shrink,
      kind: "join",
      task: "shrink",
      at: [place],
      minutes: cores * workMinutes.shrinkSleeve,
      pieces: [run.name],
      tools: ["hot air"],
      consumables: [{ what: "sleeve", count: cores }],
      caution: "hot air",
    });
    graph.wait(shrink, join, "joint before shrinking");
  }
  const connect = `connect / ${run.name} / ${end}`;
  graph.add({
    id: connect,
    kind: "connect",
    task: "connect end",
    at: [place],
    minutes: cores * workMinutes.connectConductor,
    pieces: [run.name],
    tools: [kind === "crimped ring" || kind === "crimped fork" ? "spanner" : "screwdriver"],
    drawing: { sheet: "diagram", of: place },
  });
  graph.wait(connect, join, "joint before connecting");
  graph.wait(connect, `shrink / ${run.name} / ${end}`, "joint before connecting", {
    key: "shrunk sleeve cold",
    hours: cureHours["shrunk sleeve cold"],
  });
}
