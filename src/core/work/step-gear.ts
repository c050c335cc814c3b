import type { CompleteGear } from "../plan/completed.js";
import { coldCure, cureHours } from "../reference/cures.js";
import type { ToolKey } from "../reference/tools.js";
import { workMinutes } from "../reference/work-times.js";
import type { GraphBuilder } from "./graph-builder.js";
import { groupedBy } from "./grouped.js";
import type { CautionKey } from "./step.js";
import type { WorkFacts, WorkInput } from "./work-input.js";

const drillOf: Readonly<Record<string, ToolKey>> = {
  "twist drill": "drill with twist bit",
  "step drill": "drill with step bit",
  "hole saw": "drill with hole saw",
};

/** Steps of gear, an entry at a time where it has a count: mark, drill, seal the edge, mount or bed, all as it is sold. */
export function addGear(graph: GraphBuilder, { plan }: WorkInput, facts: WorkFacts): void {
  const groups = groupedBy(plan.gear, ({ group }) => group);
  const cold = (facts.garageC ?? plan.ambient.airC) < coldCure.belowC ? coldCure.times : 1;
  for (const [group, pieces] of groups) {
    const [first] = pieces;
    if (!first) continue;
    const names = pieces.map(({ name }) => name);
    const bedded = isBedded(first);
    const holeMm = first.hole?.sizeM === undefined ? undefined : first.hole.sizeM * 1000;
    const sizes = holeMm === undefined ? [] : [{ what: "hole" as const, of: group, mm: holeMm }];
    const drawing = { sheet: "marks" as const, of: group };
    graph.add({
      id: `mark / ${group}`,
      kind: "mark",
      task: "mark gear",
      at: names,
      pieces: names,
      minutes: workMinutes.markGear * names.length,
      tools: ["tape", "punch"],
      consumables: [{ what: "masking tape", count: names.length }],
      drawing,
    });
    graph.wait(`mark / ${group}`, "survey / boat", "measure before cutting");
    const caution: CautionKey = first.surroundings === "bilge" ? "hole below water" : "behind the hole";
    graph.add({
      id: `drill / ${group}`,
      kind: "drill",
      task: "drill gear",
      at: names,
      pieces: names,
      minutes: workMinutes.drillGear * names.length,
      sizes,
      tools: [drillOf[first.hole?.tool ?? ""] ?? drillFor(holeMm)],
      caution,
      drawing,
    });
    graph.wait(`drill / ${group}`, `mark / ${group}`, "mark before drilling");
    const coated = plan.source.craft.hullMaterial === "wood" || plan.source.craft.hullMaterial === "glass";
    if (coated && bedded) {
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
        ...(bedded ? [{ what: "sealant" as const, count: 1 }] : []),
      ],
      inOneGo: bedded,
      ...(bedded ? { caution: "sealant" as const } : {}),
    });
    graph.wait(fix, `drill / ${group}`, "hole before wire");
    graph.wait(fix, `seal edge / ${group}`, "edge before sealant", {
      key: "edge sealer",
      hours: cureHours["edge sealer"],
    });
    const runs = plan.runs.filter((run) => names.includes(run.to.place) || names.includes(run.from.place));
    for (const run of runs) {
      const end = names.includes(run.to.place) ? "end" : "start";
      if (bedded) {
        // its leads are joined while it hangs out of its hole; once bedded no hand gets behind it
        graph.wait(fix, `join / ${run.name} / ${end}`, "joint before sealant");
        graph.wait(fix, `shrink / ${run.name} / ${end}`, "joint before sealant");
      } else graph.wait(`join / ${run.name} / ${end}`, fix, "gear before joint");
    }
    if (!bedded) continue;
    graph.add({
      id: `leak test / ${group}`,
      kind: "prove live",
      task: "leak test",
      at: names,
      pieces: names,
      minutes: workMinutes.leakTest,
      readings: [`leak / ${group}`],
      tools: ["hose"],
      caution: "leak",
    });
    graph.wait(`leak test / ${group}`, fix, "cured before wet", {
      key: "sealant before wet",
      hours: cureHours["sealant before wet"] * cold,
    });
  }
}

/** Gear that water reaches is bedded in sealant, unless its plan names another seal. */
export function isBedded(piece: CompleteGear): boolean {
  if (piece.hole?.seal !== undefined) return piece.hole.seal === "sealant";
  return piece.surroundings === "wet" || piece.surroundings === "bilge";
}

function drillFor(holeMm: number | undefined): ToolKey {
  if (holeMm === undefined || holeMm <= 10) return "drill with twist bit";
  return holeMm <= 30 ? "drill with step bit" : "drill with hole saw";
}
