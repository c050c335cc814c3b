import type { CompletePlan, CompleteRun, CompleteWay } from "../../plan/completed.js";
import type { Protection, Switch } from "../../plan/model/common.js";
import { switchDrop } from "../../reference/contacts.js";
import { hasOneReturn, outLegId, returnLegId } from "./leg-ids.js";
import { Nodes, Points } from "./nodes.js";
import type { Device, PartPlan, Topology, TopologyBranch, TopologyConverter, TopologyGear } from "./types.js";

/** Name of the set of conductors that share one size. */
export const outGroup = (run: CompleteRun) => run.group;
/** Returns are chosen apart only where the owner gives them a size of their own, or where single wires share one return. */
export function returnGroup(run: CompleteRun): string {
  const apart =
    run.returnSize !== undefined || (run.return === "shared" && !run.sheathed && run.carries.length > 1);
  return apart || run.legs === "return" ? `${run.group} / return` : run.group;
}

function switchPart({ ratingA }: Switch, master = false): PartPlan {
  const usualA = master ? switchDrop.usualMasterRatingA : switchDrop.usualRatingA;
  return { kind: "switch", ratingA: ratingA ?? usualA };
}

/** Lays the completed plan out as nodes and branches. Runs that nothing flows through (loose ends, chargers) are left out. */
export function buildTopology(plan: CompletePlan): Topology {
  return new Builder(plan).build();
}

class Builder {
  private readonly nodes = new Nodes();
  private readonly points: Points;
  private readonly branches: TopologyBranch[] = [];
  private readonly devices: Device[] = [];
  private readonly chargers: ReadonlySet<string>;

  constructor(private readonly plan: CompletePlan) {
    this.points = new Points(plan);
    this.chargers = new Set(plan.chargers.map(({ name }) => name));
  }

  build(): Topology {
    const sources = this.plan.batteries.map((battery) => {
      const { name, main, master } = battery;
      const feed = [`${name} / feed`];
      if (main !== "none") {
        this.device(`${name} / main`, name, "battery", main);
        this.out(`${name} / main`, name, feed, this.points.batteryPost(name), this.points.batteryMain(name), [
          { kind: "protection", device: `${name} / main` },
        ]);
      }
      if (master) {
        this.out(
          `${name} / master`,
          name,
          feed,
          this.points.batteryMain(name),
          this.points.batteryOut(name),
          [switchPart(master, true)],
        );
      }
      return {
        battery: name,
        plus: this.nodes.at(this.points.batteryPost(name)),
        minus: this.nodes.at(`${name} -`),
      };
    });
    for (const panel of this.plan.panels) this.addPanel(panel);
    for (const run of this.plan.runs) this.addRun(run);
    const gear = this.plan.gear.flatMap((piece) => this.addGear(piece));
    const converters = this.plan.converters.map(
      ({ name, isolated }): TopologyConverter => ({
        id: name,
        inPlus: this.nodes.at(`${name} in +`),
        inMinus: this.nodes.at(isolated ? `${name} in -` : `${name} -`),
        outPlus: this.nodes.at(`${name} out +`),
        outMinus: this.nodes.at(isolated ? `${name} out -` : `${name} -`),
      }),
    );
    return {
      nodes: this.nodes.names,
      branches: this.branches,
      sources,
      gear,
      converters,
      devices: this.devices,
    };
  }

  private device(id: string, of: string, at: Device["at"], protection: Protection): void {
    this.devices.push({ id, of, at, protection });
  }

  private out(
    id: string,
    of: string,
    circuits: readonly string[],
    from: string,
    to: string,
    parts: readonly PartPlan[],
  ): void {
    this.branch(id, of, "out", circuits, from, to, parts);
  }

  private branch(
    id: string,
    of: string,
    leg: "out" | "return",
    circuits: readonly string[],
    from: string,
    to: string,
    parts: readonly PartPlan[],
  ): void {
    if (from === to) return;
    this.branches.push({ id, of, leg, circuits, from: this.nodes.at(from), to: this.nodes.at(to), parts });
  }

  private addPanel(panel: CompletePlan["panels"][number]): void {
    const { name, main, master } = panel;
    const circuit = this.plan.circuitOf.get(name);
    if (circuit === undefined) return;
    if (main !== undefined && main !== "none") {
      const id = `${name} / main`;
      this.device(id, name, "panel", main);
      this.out(id, name, [circuit], this.points.panelIn(name), this.points.panelLive(name), [
        { kind: "protection", device: id },
      ]);
    }
    if (master) {
      this.out(`${name} / master`, name, [circuit], this.points.panelLive(name), this.points.panelBus(name), [
        switchPart(master, true),
      ]);
    }
    for (const way of panel.ways) this.addWay(way, name);
  }

  private addWay(way: CompleteWay, panel: string): void {
    const id = `${panel} / ${way.name}`;
    let at = way.alwaysLive ? this.points.panelLive(panel) : this.points.panelBus(panel);
    const wayOut = `${id} +`;
    if (way.protection !== "none") {
      const device = `${id} / fuse`;
      this.device(device, id, "way", way.protection);
      const next = way.switch === "none" ? wayOut : `${id} fused +`;
      this.out(device, id, [id], at, next, [{ kind: "protection", device }]);
      at = next;
    }
    if (way.switch !== "none") this.out(`${id} / switch`, id, [id], at, wayOut, [switchPart(way.switch)]);
    else if (way.protection === "none")
      this.out(`${id} / link`, id, [id], at, wayOut, [{ kind: "joint", joint: "crimped ring" }]);
  }

  private addRun(run: CompleteRun): void {
    if (this.chargers.has(run.from.place) || this.chargers.has(run.to.place)) return;
    if (run.legs !== "return") for (const circuit of run.carries) this.addOutLeg(run, circuit);
    if (run.legs !== "out") this.addReturns(run);
  }

  private addOutLeg(run: CompleteRun, circuit: string): void {
    const leg = `${run.name} / ${circuit}`;
    let at = this.points.positive(run.from, run.to, true, circuit, run);
    const end = this.points.positive(run.to, run.from, false, circuit, run);
    if (run.protection) {
      const device = run.carries.length === 1 ? `${run.name} / fuse` : `${leg} / fuse`;
      this.device(device, run.name, "run", run.protection);
      this.out(device, run.name, [circuit], at, `${leg} fused +`, [{ kind: "protection", device }]);
      at = `${leg} fused +`;
    }
    if (run.switch) {
      this.out(`${leg} / switch`, run.name, [circuit], at, `${leg} switched +`, [switchPart(run.switch)]);
      at = `${leg} switched +`;
    }
    this.out(
      outLegId(run, circuit),
      run.name,
      [circuit],
      at,
      end,
      this.conductorParts(run, outGroup(run), run.lengthM, run.pulledM),
    );
  }

  private addReturns(run: CompleteRun): void {
    const parts = this.conductorParts(run, returnGroup(run), run.returnLengthM, run.returnPulledM);
    const between = (circuits: readonly string[], as: readonly PartPlan[]) => {
      const circuit = circuits[0] ?? "";
      this.branch(
        returnLegId(run, circuit),
        run.name,
        "return",
        circuits,
        this.points.negative(run.to, circuit),
        this.points.negative(run.from, circuit),
        as,
      );
    };
    if (run.return === "hull") between(run.carries, [{ kind: "hull" }]);
    else if (hasOneReturn(run)) between(run.carries, parts);
    else for (const circuit of run.carries) between([circuit], parts);
  }

  private conductorParts(run: CompleteRun, sizeGroup: string, wayM: number, lengthM: number): PartPlan[] {
    return [
      { kind: "joint", joint: run.jointAtStart },
      { kind: "conductor", sizeGroup, lengthM, wayM, inEngineSpace: run.inEngineSpace },
      { kind: "joint", joint: run.jointAtEnd },
    ];
  }

  private addGear(piece: CompletePlan["gear"][number]): TopologyGear[] {
    const circuit = this.plan.circuitOf.get(piece.name);
    if (circuit === undefined) return [];
    const { name, leads } = piece;
    const place = { place: name };
    const joint = { plus: `${name} at joint +`, minus: this.points.negative(place, circuit) };
    if (!leads || !(leads.lengthM > 0)) {
      return [{ id: name, circuit, plus: this.nodes.at(joint.plus), minus: this.nodes.at(joint.minus) }];
    }
    const lead: PartPlan = { kind: "lead", size: leads.size, lengthM: leads.lengthM };
    const fuse: PartPlan[] = leads.fuseA === undefined ? [] : [{ kind: "lead fuse", ratingA: leads.fuseA }];
    this.out(`${name} / lead / out`, name, [circuit], joint.plus, `${name} +`, [lead, ...fuse]);
    this.branch(`${name} / lead / return`, name, "return", [circuit], `${name} -`, joint.minus, [lead]);
    return [{ id: name, circuit, plus: this.nodes.at(`${name} +`), minus: this.nodes.at(`${name} -`) }];
  }
}
