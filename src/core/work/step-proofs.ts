import { chargerRuns } from "../proving/sheet/places.js";
import { gearRoleFacts } from "../reference/gear-roles.js";
import { workMinutes } from "../reference/work-times.js";
import type { GraphBuilder } from "./graph-builder.js";
import { groupedBy } from "./grouped.js";
import type { WorkInput } from "./work-input.js";

/** Battery and proofs: dead tests first, the battery last of all that is connected, then each way, and lids only after that. */
export function addProofs(graph: GraphBuilder, { plan, protection }: WorkInput): void {
  for (const battery of plan.batteries) {
    const { name } = battery;
    graph.add({
      id: `mount / ${name}`,
      kind: "mount",
      task: "mount battery",
      at: [name],
      minutes: workMinutes.mountBattery,
      pieces: [name],
      tools: ["screwdriver"],
      consumables: [{ what: "screw", count: 4 }],
      caution: "heavy battery",
    });
  }
  addSupplies(graph, plan);
  const connected = graph.ids(
    ({ kind, at }) => kind === "connect" && !at.some((place) => isBattery(plan.batteries, place)),
  );
  const proofs = ["continuity", "polarity", "insulation"] as const;
  for (const proof of proofs) {
    graph.add({
      id: `prove ${proof}`,
      kind: "prove dead",
      task: `prove ${proof}`,
      at: plan.panels.map(({ name }) => name),
      pieces: proof === "insulation" ? [] : plan.gear.map(({ name }) => name),
      minutes:
        workMinutes.reading * Math.max(1, proof === "insulation" ? plan.panels.length * 2 : plan.gear.length),
      readings: [proof],
      tools: ["meter"],
    });
    graph.wait(`prove ${proof}`, connected, "connect before proving");
  }
  for (const { name, chemistry } of plan.batteries) {
    const own = plan.runs.filter(({ from, to }) => from.place === name || to.place === name);
    const main = protection.find(({ id }) => id === `${name} / main`);
    graph.add({
      id: `battery on / ${name}`,
      kind: "battery on",
      task: "battery on",
      at: [name],
      minutes: workMinutes.batteryOn,
      pieces: own.map((run) => run.name),
      sizes: main ? [{ what: "rating", of: main.id, a: main.ratingA }] : [],
      readings: [`battery / ${name}`],
      tools: ["spanner", "meter"],
      consumables: [{ what: "fuse", count: main ? 1 : 0 }],
      inOneGo: true,
      caution:
        chemistry === "lifepo4"
          ? "lithium"
          : plan.source.craft.petrolOnBoard
            ? "petrol vapour"
            : "battery short",
    });
    graph.wait(`battery on / ${name}`, `mount / ${name}`, "battery last");
    graph.wait(`battery on / ${name}`, connected, "battery last");
    for (const proof of proofs) graph.wait(`battery on / ${name}`, `prove ${proof}`, "dead before live");
    for (const run of own) {
      const end = run.from.place === name ? "start" : "end";
      // an end that hangs on the post is live: it is connected with the battery, after all dead tests
      graph.wait(
        `connect / ${run.name} / ${end}`,
        proofs.map((proof) => `prove ${proof}`),
        "battery last",
      );
      graph.wait(`battery on / ${name}`, `connect / ${run.name} / ${end}`, "battery last");
    }
  }
  const powered = plan.batteries.map(({ name }) => `battery on / ${name}`);
  const gearOf = groupedBy(plan.gear, ({ name }) => plan.circuitOf.get(name) ?? "");
  for (const [circuit, gear] of gearOf) {
    if (circuit === "") continue;
    const pump = gear.some(({ role }) => gearRoleFacts.rows[role].movesWater);
    const id = `prove / ${circuit}`;
    const fuse = protection.find((figures) => figures.of === circuit);
    graph.add({
      id,
      kind: "prove live",
      task: pump ? "prove pump" : "prove way",
      at: [circuit],
      minutes: workMinutes.reading * (4 + 2 * gear.length),
      pieces: gear.map(({ name }) => name),
      sizes: fuse ? [{ what: "rating", of: fuse.id, a: fuse.ratingA }] : [],
      readings: [`way / ${circuit}`],
      tools: ["meter"],
      consumables: [{ what: "fuse", count: fuse ? 1 : 0 }],
      inOneGo: true,
      caution: pump ? "pump dry" : "first power",
    });
    graph.wait(id, powered, "battery last");
    if (gear.some(({ role }) => role === "navigation light")) {
      graph.add({
        id: `seen / ${circuit}`,
        kind: "prove live",
        task: "see navigation lights",
        at: [circuit],
        minutes: workMinutes.seenFromOutside,
        readings: [`seen / ${circuit}`],
        caution: "navigation lights",
      });
      graph.wait(`seen / ${circuit}`, id, "dead before live");
    }
  }
  const live = graph.ids(({ kind, task }) => kind === "prove live" && task !== "leak test");
  for (const close of graph.ids(({ kind }) => kind === "close up"))
    graph.wait(close, [...live, ...powered], "prove before closing");
  addUncover(graph, plan);
}

/** Chargers that stay aboard, and converters: mounted before they are connected; the poles of a charger's lead proven before it meets anything. */
function addSupplies(graph: GraphBuilder, plan: WorkInput["plan"]): void {
  const kinds = new Map(plan.chargers.map(({ name, kind }) => [name, kind]));
  for (const name of [...kinds.keys(), ...plan.converters.map((one) => one.name)]) {
    const ends = plan.runs.flatMap(({ name: run, from, to }) => [
      ...(from.place === name ? [`${run} / start`] : []),
      ...(to.place === name ? [`${run} / end`] : []),
    ]);
    if (ends.length === 0) continue;
    graph.add({
      id: `mount / ${name}`,
      kind: "mount",
      task: "mount supply",
      at: [name],
      minutes: workMinutes.mountSupply,
      pieces: [name],
      tools: ["screwdriver"],
      consumables: [{ what: "screw", count: 4 }],
      ...(kinds.get(name) === "mains" ? { caution: "mains charger" as const } : {}),
    });
    for (const end of ends) graph.wait(`connect / ${end}`, `mount / ${name}`, "gear before joint");
    if (kinds.get(name) === "solar") addCover(graph, name, ends);
  }
  for (const { name, kind } of plan.chargers) {
    const leads = chargerRuns(plan, name).map((run) => run.name);
    if (leads.length === 0) continue;
    const id = `prove polarity / ${name}`;
    graph.add({
      id,
      kind: "prove dead",
      task: "prove charger polarity",
      at: [name],
      minutes: workMinutes.reading * leads.length,
      pieces: leads,
      readings: [`polarity / ${name}`],
      tools: ["meter"],
      caution: kind === "solar" ? "solar panel" : "charger lead",
    });
    for (const end of leads.flatMap((lead) => [`${lead} / start`, `${lead} / end`])) {
      graph.wait(id, `join / ${end}`, "connect before proving");
      graph.wait(id, `shrink / ${end}`, "connect before proving");
      graph.wait(`connect / ${end}`, id, "polarity before charger");
    }
    for (const battery of plan.batteries)
      graph.wait(`battery on / ${battery.name}`, id, "polarity before charger");
  }
}

/** A solar panel is live in any light: it is covered first of all that is done to it. Common practice, no source; makers' orders differ. */
function addCover(graph: GraphBuilder, name: string, ends: readonly string[]): void {
  graph.add({
    id: `cover / ${name}`,
    kind: "mount",
    task: "cover panel",
    at: [name],
    minutes: workMinutes.coverPanel,
    caution: "panel covered",
  });
  const handled = [`mount / ${name}`, ...ends.flatMap((end) => [`join / ${end}`, `connect / ${end}`])];
  for (const id of [...handled, `prove polarity / ${name}`])
    graph.wait(id, `cover / ${name}`, "covered before working");
}

/** With all proven, light falls on it again: readings are told for a boat that nothing charges. */
function addUncover(graph: GraphBuilder, plan: WorkInput["plan"]): void {
  const proven = graph.ids(
    ({ kind, task }) => kind === "battery on" || (kind === "prove live" && task !== "leak test"),
  );
  for (const { name } of plan.chargers.filter(({ kind }) => kind === "solar")) {
    const [covered] = graph.ids(({ id }) => id === `cover / ${name}`);
    if (covered === undefined) continue;
    const id = `uncover / ${name}`;
    graph.add({
      id,
      kind: "battery on",
      task: "uncover panel",
      at: [name],
      minutes: workMinutes.coverPanel,
      caution: "panel last",
    });
    graph.wait(id, covered, "panel last");
    graph.wait(id, proven, "panel last");
  }
}

const isBattery = (batteries: readonly { readonly name: string }[], place: string) =>
  batteries.some(({ name }) => name === place);
