import type { CompleteRun } from "../plan/completed.js";
import type { JointKind } from "../plan/model/common.js";
import { cureHours } from "../reference/cures.js";
import type { ToolKey } from "../reference/tools.js";
import { workMinutes } from "../reference/work-times.js";
import type { GraphBuilder } from "./graph-builder.js";
import type { StepSize } from "./step.js";
import { endKey, type WorkFacts } from "./work-input.js";

const heated: readonly JointKind[] = ["sealed butt", "solder sleeve", "soldered and sleeved"];
/** Joints met so far by id: the piece for one is counted where it is first met. */
export type MadeJoints = Set<string>;

interface End {
  readonly run: CompleteRun;
  readonly end: "start" | "end";
  readonly place: string;
  readonly cores: number;
  readonly facts: WorkFacts;
  readonly joints: MadeJoints;
  /** Fuse or breaker of the run's own that goes in here. */
  readonly fuse?: Extract<StepSize, { readonly what: "rating" }>;
}

/** Steps of one end of a cable: make it, shrink what shrinks, connect it. */
export function addEnd(graph: GraphBuilder, { run, end, place, cores, facts, joints, fuse }: End): void {
  const kind = end === "start" ? run.jointAtStart : run.jointAtEnd;
  const known = facts.ends?.get(endKey(run.name, end)) ?? [];
  const join = `join / ${run.name} / ${end}`;
  const soldered = kind === "soldered and sleeved";
  const crimped =
    kind.startsWith("crimped") || kind === "sealed butt" || kind === "push-on tab" || kind === "pin plug";
  graph.add({
    id: join,
    kind: "join",
    task: "join end",
    at: [place],
    minutes: cores * (soldered ? workMinutes.solderConductor : workMinutes.joinConductor),
    pieces: [run.name],
    sizes: known.map(({ size }) => size),
    tools: toolsOf(kind, crimped),
    consumables: [
      { what: "joint", count: known.length === 0 ? cores : newJoints(known, joints) },
      { what: "solder", count: soldered ? 1 : 0 },
    ],
    drawing: { sheet: "diagram", of: place },
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
      consumables: [{ what: "sleeve", count: kind === "soldered and sleeved" ? cores : 0 }],
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
    sizes: fuse === undefined ? [] : [fuse],
    consumables: [{ what: "fuse", count: fuse === undefined ? 0 : 1 }],
    tools: [kind === "crimped ring" || kind === "crimped fork" ? "spanner" : "screwdriver"],
    drawing: { sheet: "diagram", of: place },
  });
  graph.wait(connect, join, "joint before connecting");
  graph.wait(connect, `shrink / ${run.name} / ${end}`, "joint before connecting", {
    key: "shrunk sleeve cold",
    hours: cureHours["shrunk sleeve cold"],
  });
}

function toolsOf(kind: JointKind, crimped: boolean): readonly ToolKey[] {
  if (kind === "soldered and sleeved") return ["soldering iron", "cutter and stripper"];
  if (crimped) return ["crimper", "cutter and stripper"];
  return kind === "solder sleeve" ? ["cutter and stripper"] : ["screwdriver", "cutter and stripper"];
}

function newJoints(known: readonly { readonly joint?: string }[], joints: MadeJoints): number {
  let count = 0;
  for (const { joint } of known) {
    if (joint === undefined) count += 1;
    else if (!joints.has(joint)) {
      joints.add(joint);
      count += 1;
    }
  }
  return count;
}
