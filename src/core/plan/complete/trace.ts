import type { Circuit, LooseEnd } from "../completed.js";
import type { Endpoint } from "../model/common.js";
import type { Plan } from "../model/plan.js";
import type { SingleRun } from "./expand.js";
import { piecesOf } from "./pieces.js";

/** Which circuit reaches what, followed from the batteries along the runs. */
export interface Trace {
  readonly circuits: Map<string, Circuit>;
  /** Gear, panel or converter → circuit that feeds it. */
  readonly circuitOf: Map<string, string>;
  /** By run name. */
  readonly carries: Map<string, string[]>;
  readonly looseEnds: LooseEnd[];
}

type Kind = "battery" | "charger" | "converter" | "panel" | "box" | "gear";

/** `house / feed`: what comes straight from a supply. */
const feedOf = (supply: string) => `${supply} / feed`;

/** Follows every circuit from the supplies outward; linear in runs and places. */
export function traceCircuits(
  plan: Plan,
  runs: readonly SingleRun[],
  nominalOf: ReadonlyMap<string, number>,
): Trace {
  return new Tracer(plan, runs, nominalOf).trace();
}

class Tracer {
  private readonly kinds = new Map<string, Kind>();
  private readonly waysOf = new Map<string, readonly string[]>();
  private readonly touching = new Map<string, { run: SingleRun; end: "from" | "to" }[]>();
  private readonly seen = new Set<string>();
  private readonly queue: { spot: string; circuit: string }[] = [];
  private readonly circuits = new Map<string, Circuit>();
  private readonly circuitOf = new Map<string, string>();
  private readonly atSpot = new Map<string, Set<string>>();
  private readonly carries = new Map<string, string[]>();
  private readonly looseEnds: LooseEnd[] = [];

  constructor(
    private readonly plan: Plan,
    private readonly runs: readonly SingleRun[],
    private readonly nominalOf: ReadonlyMap<string, number>,
  ) {
    for (const { name } of plan.batteries) this.kinds.set(name, "battery");
    for (const { name } of plan.chargers) this.kinds.set(name, "charger");
    for (const { name } of plan.converters) this.kinds.set(name, "converter");
    for (const { name, ways } of plan.panels) {
      this.kinds.set(name, "panel");
      this.waysOf.set(
        name,
        ways.map((way) => `${name} / ${way.name}`),
      );
    }
    for (const { name } of plan.boxes) this.kinds.set(name, "box");
    for (const gear of plan.gear) for (const piece of piecesOf(gear)) this.kinds.set(piece, "gear");
    for (const run of runs) {
      this.carries.set(run.name, []);
      if (run.run.legs === "return") continue;
      for (const end of ["from", "to"] as const) {
        const spot = this.spotOf(run[end]);
        const list = this.touching.get(spot);
        if (list) list.push({ run, end });
        else this.touching.set(spot, [{ run, end }]);
      }
    }
  }

  /** Where on the plan an end sits: a way, a side of a converter, or the place itself. */
  private spotOf({ place, port }: Endpoint): string {
    const kind = this.kinds.get(place);
    if (port !== undefined && (kind === "panel" || kind === "converter")) return `${place} / ${port}`;
    return place;
  }

  trace(): Trace {
    for (const battery of this.plan.batteries) {
      const id = feedOf(battery.name);
      this.circuits.set(id, {
        id,
        supply: battery.name,
        battery: battery.name,
        nominalV: this.nominalOf.get(battery.name) ?? 12,
      });
      this.arrive(battery.name, id);
    }
    for (let next = 0; next < this.queue.length; next += 1) {
      const { spot, circuit } = this.queue[next] ?? { spot: "", circuit: "" };
      for (const { run, end } of this.touching.get(spot) ?? []) this.follow(run, end, circuit);
    }
    this.findLooseEnds();
    return {
      circuits: this.circuits,
      circuitOf: this.circuitOf,
      carries: this.carries,
      looseEnds: this.looseEnds,
    };
  }

  private arrive(spot: string, circuit: string): void {
    const key = `${spot}\n${circuit}`;
    if (this.seen.has(key)) return;
    this.seen.add(key);
    const here = this.atSpot.get(spot);
    if (here) here.add(circuit);
    else this.atSpot.set(spot, new Set([circuit]));
    this.queue.push({ spot, circuit });
  }

  private follow(run: SingleRun, end: "from" | "to", circuit: string): void {
    if (!this.takes(run, end, circuit)) return;
    const list = this.carries.get(run.name) ?? [];
    if (list.includes(circuit)) return;
    const far = end === "from" ? run.to : run.from;
    const kind = this.kinds.get(far.place);
    if (kind === "gear") {
      const other = this.circuitOf.get(far.place);
      if (list.length > 0) {
        this.loose("way unclear", run.name, [...list, circuit]);
        return;
      }
      if (other !== undefined && other !== circuit) {
        this.loose("two circuits at one gear", far.place, [other, circuit]);
        return;
      }
    }
    list.push(circuit);
    if (kind === "gear") {
      this.circuitOf.set(far.place, circuit);
      this.arrive(far.place, circuit);
    } else if (kind === "panel") this.enterPanel(far.place, circuit);
    else if (kind === "converter") this.enterConverter(far, circuit);
    else if (kind === "box") this.arrive(far.place, circuit);
  }

  /** Does the run pick up this circuit at this end? */
  private takes(run: SingleRun, end: "from" | "to", circuit: string): boolean {
    const { place, port } = run[end];
    const named = (wanted: string) => wanted === circuit || circuit.endsWith(` / ${wanted}`);
    const wanted = run.run.carries;
    const kind = this.kinds.get(place);
    if (kind === "box") return port !== undefined ? named(port) : wanted.length === 0 || wanted.some(named);
    if (kind !== "panel" || port !== undefined) return true;
    const far = this.kinds.get((end === "from" ? run.to : run.from).place);
    const isFeed = circuit === this.circuitOf.get(place);
    if (wanted.length > 0) return !isFeed && wanted.some(named);
    return isFeed && (far === "panel" || far === "converter" || far === "battery");
  }

  private enterPanel(panel: string, circuit: string): void {
    if (this.circuitOf.has(panel)) return;
    this.circuitOf.set(panel, circuit);
    this.arrive(panel, circuit);
    const feed = this.circuits.get(circuit);
    for (const way of this.waysOf.get(panel) ?? []) {
      if (feed) this.circuits.set(way, { ...feed, id: way });
      this.arrive(panel, way);
      this.arrive(way, way);
    }
  }

  private enterConverter({ place, port }: Endpoint, circuit: string): void {
    if (port === "out" || this.circuitOf.has(place)) return;
    this.circuitOf.set(place, circuit);
    const id = feedOf(place);
    const battery = this.circuits.get(circuit)?.battery ?? "";
    this.circuits.set(id, { id, supply: place, battery, nominalV: this.nominalOf.get(place) ?? 12 });
    this.arrive(`${place} / out`, id);
  }

  private loose(kind: LooseEnd["kind"], at: string, others: readonly string[] = []): void {
    this.looseEnds.push({ kind, at, with: others });
  }

  private findLooseEnds(): void {
    for (const [name, kind] of this.kinds) {
      if (kind === "gear" && !this.circuitOf.has(name)) this.loose("gear not fed", name);
      if (kind === "panel" && !this.circuitOf.has(name)) this.loose("panel not fed", name);
      if (kind === "box" && !this.atSpot.has(name)) this.loose("box not fed", name);
      if (kind === "converter" && !this.circuitOf.has(name)) {
        const loop = this.loopThrough(name);
        this.loose(loop.length > 0 ? "converter loop" : "converter not fed", name, loop);
      }
    }
    for (const run of this.runs) {
      if (run.run.legs === "return" || this.isChargerRun(run)) continue;
      if (this.carries.get(run.name)?.length === 0) this.loose("run carries nothing", run.name);
    }
  }

  private isChargerRun(run: SingleRun): boolean {
    return this.kinds.get(run.from.place) === "charger" || this.kinds.get(run.to.place) === "charger";
  }

  /** Converters between this one's output and its own input, if its output leads back there. */
  private loopThrough(start: string): string[] {
    const cameFrom = new Map<string, string>();
    const open = [start];
    for (let next = 0; next < open.length; next += 1) {
      const here = open[next] ?? start;
      for (const { run, end } of this.touching.get(`${here} / out`) ?? []) {
        const far = end === "from" ? run.to : run.from;
        if (this.kinds.get(far.place) !== "converter" || far.port === "out" || cameFrom.has(far.place))
          continue;
        cameFrom.set(far.place, here);
        open.push(far.place);
      }
    }
    if (!cameFrom.has(start)) return [];
    const loop = [start];
    for (let at = cameFrom.get(start); at !== undefined && at !== start; at = cameFrom.get(at))
      loop.unshift(at);
    return loop;
  }
}
