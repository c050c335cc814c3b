import type { CompletePlan } from "../../plan/completed.js";
import type { Endpoint } from "../../plan/model/common.js";

/** Numbers the points of the circuit by name. Points that metal makes one get one name. */
export class Nodes {
  readonly names: string[] = [];
  private readonly indexOf = new Map<string, number>();

  at(name: string): number {
    const known = this.indexOf.get(name);
    if (known !== undefined) return known;
    const index = this.names.length;
    this.indexOf.set(name, index);
    this.names.push(name);
    return index;
  }
}

/** How far behind the supply's devices a run is taken: before the main, before the master, or behind both. */
export interface Tap {
  readonly beforeMain: boolean;
  readonly beforeMaster: boolean;
}

/** Names of the points at each place, both poles. A stage without a device is one point with the stage before. */
export class Points {
  private readonly batteries: ReadonlyMap<string, CompletePlan["batteries"][number]>;
  private readonly panels: ReadonlyMap<string, CompletePlan["panels"][number]>;
  private readonly boxes: ReadonlyMap<string, CompletePlan["boxes"][number]>;
  private readonly converters: ReadonlyMap<string, CompletePlan["converters"][number]>;

  constructor(plan: CompletePlan) {
    this.batteries = new Map(plan.batteries.map((thing) => [thing.name, thing]));
    this.panels = new Map(plan.panels.map((thing) => [thing.name, thing]));
    this.boxes = new Map(plan.boxes.map((thing) => [thing.name, thing]));
    this.converters = new Map(plan.converters.map((thing) => [thing.name, thing]));
  }

  batteryPost(name: string): string {
    return `${name} +`;
  }

  batteryMain(name: string): string {
    return this.batteries.get(name)?.main === "none" ? this.batteryPost(name) : `${name} main +`;
  }

  batteryOut(name: string): string {
    return this.batteries.get(name)?.master === undefined ? this.batteryMain(name) : `${name} master +`;
  }

  panelIn(name: string): string {
    return `${name} +`;
  }

  panelLive(name: string): string {
    const main = this.panels.get(name)?.main;
    return main === undefined || main === "none" ? this.panelIn(name) : `${name} main +`;
  }

  panelBus(name: string): string {
    return this.panels.get(name)?.master === undefined ? this.panelLive(name) : `${name} bus +`;
  }

  /** Positive point at one end of a run for one circuit; `other` is the run's other end. */
  positive(end: Endpoint, other: Endpoint, isStart: boolean, circuit: string, tap: Tap): string {
    const { place, port } = end;
    if (this.batteries.has(place)) {
      if (tap.beforeMain) return this.batteryPost(place);
      return tap.beforeMaster ? this.batteryMain(place) : this.batteryOut(place);
    }
    if (this.panels.has(place)) {
      if (circuit.startsWith(`${place} / `)) return `${circuit} +`;
      const incoming = !isStart || this.batteries.has(other.place) || other.port === "out";
      if (incoming) return this.panelIn(place);
      return tap.beforeMaster ? this.panelLive(place) : this.panelBus(place);
    }
    if (this.converters.has(place)) return port === "out" ? `${place} out +` : `${place} in +`;
    if (this.boxes.has(place)) return `${place} | ${circuit} +`;
    return `${place} at joint +`;
  }

  /** Negative point at one end of a run for one circuit. */
  negative({ place, port }: Endpoint, circuit: string): string {
    const box = this.boxes.get(place);
    if (box) return box.returns === "joined" ? `${place} -` : `${place} | ${circuit} -`;
    if (this.batteries.has(place) || this.panels.has(place)) return `${place} -`;
    const converter = this.converters.get(place);
    if (converter) return converter.isolated ? `${place} ${port === "out" ? "out" : "in"} -` : `${place} -`;
    return `${place} at joint -`;
  }
}
