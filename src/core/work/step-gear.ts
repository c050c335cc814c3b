import type { CompleteGear } from "../plan/completed.js";
import { coldCure, cureHours } from "../reference/cures.js";
import type { ToolKey } from "../reference/tools.js";
import { workMinutes } from "../reference/work-times.js";
import type { GraphBuilder } from "./graph-builder.js";
import { groupedBy } from "./grouped.js";
import { isBedded, leakTests } from "./leak-tests.js";
import { plannedHoles } from "./planned-holes.js";
import type { CautionKey, StepSize } from "./step.js";
import type { WorkFacts, WorkInput } from "./work-input.js";

const drillOf: Readonly<Record<string, ToolKey>> = {
  "twist drill": "drill with twist bit",
  "step drill": "drill with step bit",
  "hole saw": "drill with hole saw",
};

/** Steps of gear, an entry at a time where it has a count: mark, drill, seal the edge, mount or bed, all as it is sold. */
export function addGear(graph: GraphBuilder, input: WorkInput, facts: WorkFacts): void {
  const { plan } = input;
  const coated = plan.source.craft.hullMaterial === "wood" || plan.source.craft.hullMaterial === "glass";
  for (const [group, pieces] of groupedBy(plan.gear, ({ group }) => group)) {
    const [first] = pieces;
    if (!first) continue;
    const names = pieces.map(({ name }) => name);
    const bedded = isBedded(first);
    addHoles(graph, facts, group, names, first);
    if (coated && bedded) addEdge(graph, group, names);
    addFixing(graph, input, group, pieces, bedded);
  }
  // holes that take no gear
  for (const { hole, there } of plannedHoles(plan).filter(
    (one) => !plan.gear.some(({ name }) => name === one.hole),
  )) {
    if (there) continue;
    addHoles(graph, facts, hole, [hole], undefined);
    if (coated) addEdge(graph, hole, [hole]);
  }
  addLeakTests(graph, input, facts);
  leanOn(graph, facts);
}

function addHoles(
  graph: GraphBuilder,
  { holes }: WorkFacts,
  group: string,
  names: readonly string[],
  first: CompleteGear | undefined,
): void {
  const known = names.flatMap((name) => {
    const hole = holes?.get(name);
    return hole === undefined ? [] : [{ name, hole }];
  });
  const drawing = { sheet: "marks" as const, of: known[0]?.hole.face ?? group };
  graph.add({
    id: `mark / ${group}`,
    kind: "mark",
    task: "mark gear",
    at: names,
    pieces: names,
    minutes: workMinutes.markGear * names.length,
    sizes: known.flatMap(({ hole }) => hole.mark ?? []),
    tools: ["tape", "punch"],
    consumables: [{ what: "masking tape", count: names.length }],
    drawing,
  });
  graph.wait(`mark / ${group}`, "survey / boat", "measure before cutting");
  const ownMm = first?.hole?.sizeM === undefined ? undefined : first.hole.sizeM * 1000;
  const sizes = names.flatMap((name): StepSize[] => {
    const hole = holes?.get(name);
    const mm = hole?.cutMm ?? ownMm;
    return [
      ...(mm === undefined ? [] : [{ what: "hole" as const, of: name, mm }]),
      ...(hole?.pilotMm === undefined ? [] : [{ what: "pilot" as const, of: name, mm: hole.pilotMm }]),
      ...(hole?.behind === undefined ? [] : [{ what: "behind" as const, of: name, words: hole.behind }]),
    ];
  });
  const caution: CautionKey = first?.surroundings === "bilge" ? "hole below water" : "behind the hole";
  const told = known[0]?.hole.tool ?? first?.hole?.tool ?? "";
  graph.add({
    id: `drill / ${group}`,
    kind: "drill",
    task: "drill gear",
    at: names,
    pieces: names,
    minutes: workMinutes.drillGear * names.length,
    sizes,
    tools: [drillOf[told] ?? drillFor(ownMm)],
    caution,
    drawing,
  });
  graph.wait(`drill / ${group}`, `mark / ${group}`, "mark before drilling");
}

function addEdge(graph: GraphBuilder, group: string, names: readonly string[]): void {
  graph.add({
    id: `seal edge / ${group}`,
    kind: "seal",
    task: "seal edge",
    at: names,
    pieces: names,
    minutes: workMinutes.edgeSeal * names.length,
    consumables: [{ what: "edge sealer", count: 1 }],
    inOneGo: true,
    caution: "sealant",
  });
  graph.wait(`seal edge / ${group}`, `drill / ${group}`, "drill before sealing");
}

function addFixing(
  graph: GraphBuilder,
  { plan }: WorkInput,
  group: string,
  pieces: readonly CompleteGear[],
  bedded: boolean,
): void {
  const names = pieces.map(({ name }) => name);
  const fix = bedded ? `bed / ${group}` : `mount / ${group}`;
  graph.add({
    id: fix,
    kind: bedded ? "seal" : "mount",
    task: bedded ? "bed gear" : "mount gear",
    at: names,
    minutes: (bedded ? workMinutes.seal : workMinutes.mountGear) * names.length,
    pieces: names,
    tools: bedded ? ["sealant gun", "screwdriver"] : ["screwdriver"],
    consumables: [
      { what: "screw", count: 2 * names.length },
      { what: "sealant", count: bedded ? 1 : 0 },
    ],
    inOneGo: bedded,
    ...(bedded ? { caution: "sealant" as const } : {}),
  });
  graph.wait(fix, `drill / ${group}`, "hole before wire");
  graph.wait(fix, `seal edge / ${group}`, "edge before sealant", {
    key: "edge sealer",
    hours: cureHours["edge sealer"],
  });
  for (const run of plan.runs.filter(
    ({ from, to }) => names.includes(to.place) || names.includes(from.place),
  )) {
    const end = names.includes(run.to.place) ? "end" : "start";
    if (bedded) {
      // its leads are joined while it hangs out of its hole; once bedded no hand gets behind it
      graph.wait(fix, `join / ${run.name} / ${end}`, "joint before sealant");
      graph.wait(fix, `shrink / ${run.name} / ${end}`, "joint before sealant");
    } else graph.wait(`join / ${run.name} / ${end}`, fix, "gear before joint");
  }
}

/** Water comes to a hole once what seals it has cured, or is screwed down where nothing cures. */
function addLeakTests(graph: GraphBuilder, { plan }: WorkInput, facts: WorkFacts): void {
  const cold = (facts.garageC ?? plan.ambient.airC) < coldCure.belowC ? coldCure.times : 1;
  for (const { of, holes } of leakTests(plan)) {
    const id = `leak test / ${of}`;
    graph.add({
      id,
      kind: "prove live",
      task: "leak test",
      at: holes,
      pieces: holes,
      minutes: workMinutes.leakTest,
      readings: ["leak"],
      tools: ["hose"],
      caution: "leak",
    });
    const told = holes.flatMap((hole) => facts.holes?.get(hole)?.cureHours ?? []);
    graph.wait(id, `bed / ${of}`, "cured before wet", {
      key: "sealant before wet",
      hours: Math.max(cureHours["sealant before wet"], ...told) * cold,
    });
    graph.wait(id, `mount / ${of}`, "cured before wet");
    graph.wait(id, `drill / ${of}`, "cured before wet");
    graph.wait(id, `seal edge / ${of}`, "cured before wet", {
      key: "edge sealer",
      hours: cureHours["edge sealer"],
    });
  }
}

/** A mark that is measured from another is set out after it, where all marks of the other entry come before. */
function leanOn(graph: GraphBuilder, { holes, markOrder = [] }: WorkFacts): void {
  const place = new Map(markOrder.map((name, at) => [name, at]));
  const groupOf = new Map<string, string>();
  for (const id of graph.ids(({ task }) => task === "mark gear"))
    for (const name of graph.piecesOf(id)) groupOf.set(name, id);
  const spans = groupedBy([...groupOf], ([, id]) => id);
  const first = (id: string) =>
    Math.min(...(spans.get(id) ?? []).map(([name]) => place.get(name) ?? Infinity));
  const last = (id: string) =>
    Math.max(...(spans.get(id) ?? []).map(([name]) => place.get(name) ?? Infinity));
  for (const [name, id] of groupOf)
    for (const { from } of holes?.get(name)?.mark?.readings ?? []) {
      const other = groupOf.get(from);
      if (other !== undefined && other !== id && last(other) < first(id))
        graph.wait(id, other, "mark leaned on");
    }
}

function drillFor(holeMm: number | undefined): ToolKey {
  if (holeMm === undefined || holeMm <= 10) return "drill with twist bit";
  return holeMm <= 30 ? "drill with step bit" : "drill with hole saw";
}
