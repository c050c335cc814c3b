import { supplyVoltage } from "../../core/circuit/gear-trace.js";
import { lostSoFar } from "../../core/circuit/lost-so-far.js";
import type { BranchFigures, CornerFigures } from "../../core/circuit/results.js";
import { outLegId, returnLegId } from "../../core/circuit/topology/leg-ids.js";
import type { Figures } from "../../core/figures-types.js";
import type { CompleteRun } from "../../core/plan/completed.js";
import { runCutM } from "../../core/route/cut-length.js";
import type { TreeNode } from "../one-line/tree.js";

/** A fuse, breaker or switch in the line of a thing, in the order current passes it. */
export interface Device {
  readonly kind: "fuse" | "breaker" | "switch";
  readonly id: string;
  readonly ratingA?: number;
}

/** What flows and stands at a thing in one corner; a figure that is not known is left out. */
export interface AtSpot {
  readonly currentA?: number;
  /** Between its two legs [V]; of a box with several circuits the lowest. */
  readonly voltageV?: number;
  readonly dropShare?: number;
  /** Off while the rest is on; its figures are those of its own turn. */
  readonly inTurn?: true;
  readonly devices: readonly Device[];
  readonly run?: {
    readonly name: string;
    readonly size?: string;
    /** Length to cut [m]. */
    readonly cutM: number;
    readonly currentA?: number;
    readonly device?: Device;
  };
}

/** Looks up figures for the things of the map, by corner. */
export class SpotFigures {
  private readonly branchesOf = new Map<string, BranchFigures[]>();
  private readonly lost: ReadonlyMap<string, number>;
  private readonly ratings: ReadonlyMap<string, number>;
  private readonly kinds: ReadonlyMap<string, string>;
  private readonly sizes: ReadonlyMap<string, string>;
  private readonly gear;
  private readonly ways;
  private readonly batteries;
  private readonly panels;
  private readonly converters;

  constructor(
    private readonly figures: Figures,
    private readonly corner: CornerFigures,
  ) {
    const { plan, protection, sizes, paths } = figures;
    for (const branch of corner.branches) {
      const list = this.branchesOf.get(branch.of);
      if (list) list.push(branch);
      else this.branchesOf.set(branch.of, [branch]);
    }
    this.lost = corner.status === "solved" ? lostSoFar(corner, paths) : new Map();
    // a way on which nothing hangs has no fuse yet
    this.ratings = new Map(protection.flatMap(({ id, ratingA, spare }) => (spare ? [] : [[id, ratingA]])));
    this.kinds = new Map(protection.map(({ id, device }) => [id, device]));
    this.sizes = new Map(sizes.choices.map(({ id, size }) => [id, size.key]));
    this.gear = new Map(corner.gear.map((piece) => [piece.id, piece]));
    this.ways = new Map(
      plan.panels.flatMap(({ name, ways }) => ways.map((way) => [`${name} / ${way.name}`, way])),
    );
    this.batteries = new Map(plan.batteries.map((battery) => [battery.name, battery]));
    this.panels = new Map(plan.panels.map((panel) => [panel.name, panel]));
    this.converters = new Map(corner.converters.map((one) => [one.id, one]));
  }

  at(node: TreeNode): AtSpot {
    const run = node.run && { run: this.runAt(node.run) };
    return { devices: this.devicesOf(node), ...this.standing(node), ...run };
  }

  /** Branches that belong to a thing or to the run that reaches it. */
  branches(node: TreeNode): readonly BranchFigures[] {
    const own =
      node.kind === "box" || node.kind === "reference" ? [] : (this.branchesOf.get(node.name) ?? []);
    return node.run ? [...own, ...(this.branchesOf.get(node.run.name) ?? [])] : own;
  }

  private standing({ kind, name, run }: TreeNode): Omit<AtSpot, "devices" | "run"> {
    switch (kind) {
      case "battery": {
        const battery = this.corner.batteries.find(({ id }) => id === name);
        return battery ? { currentA: battery.currentA, voltageV: battery.terminalV } : {};
      }
      case "converter": {
        const converter = this.converters.get(name);
        return converter && !converter.off ? { currentA: converter.inputA, voltageV: converter.inputV } : {};
      }
      case "panel":
        return this.between(name, this.figures.plan.circuitOf.get(name), run);
      case "way": {
        const panel = name.split(" / ")[0] ?? "";
        const feed = this.figures.plan.runs.find(
          (one) => one.legs !== "out" && (one.to.place === panel || one.from.place === panel),
        );
        const currentA = this.corner.ways.find(({ id }) => id === name)?.currentA;
        const at = this.between(name, this.figures.plan.circuitOf.get(panel), feed);
        return { ...at, ...(currentA === undefined ? {} : { currentA }) };
      }
      case "box":
        return this.lowest(run);
      case "gear": {
        const piece = this.gear.get(name);
        if (!piece?.on) return {};
        const { currentA, voltageV, dropShare } = piece;
        return { currentA, voltageV, dropShare, ...(piece.inTurn ? { inTurn: true } : {}) };
      }
      case "charger":
      case "reference":
        return {};
      default:
        return kind satisfies never;
    }
  }

  /** After the last device of a panel or way, with the return of the run that feeds it. */
  private between(
    of: string,
    circuit: string | undefined,
    feed: CompleteRun | undefined,
  ): Pick<AtSpot, "currentA" | "voltageV"> {
    const supplyV =
      circuit === undefined ? undefined : supplyVoltage(this.figures.plan, this.corner, circuit);
    if (supplyV === undefined || circuit === undefined || !feed) return {};
    const last = this.branchesOf.get(of)?.at(-1);
    const outV = this.lost.get(last?.id ?? outLegId(feed, circuit));
    const backV = this.lost.get(returnLegId(feed, circuit));
    if (outV === undefined || backV === undefined) return {};
    return { voltageV: supplyV - outV - backV, ...(last ? { currentA: Math.abs(last.currentA) } : {}) };
  }

  private lowest(run: CompleteRun | undefined): Pick<AtSpot, "voltageV"> {
    const all = (run?.carries ?? []).flatMap((circuit) => {
      const supplyV = supplyVoltage(this.figures.plan, this.corner, circuit);
      const outV = run && this.lost.get(outLegId(run, circuit));
      const backV = run && this.lost.get(returnLegId(run, circuit));
      return supplyV === undefined || outV === undefined || backV === undefined
        ? []
        : [supplyV - outV - backV];
    });
    return all.length === 0 ? {} : { voltageV: Math.min(...all) };
  }

  private runAt(run: CompleteRun): NonNullable<AtSpot["run"]> {
    const size = this.sizes.get(run.group) ?? this.sizes.get(run.name) ?? run.size?.key;
    const legs = this.branchesOf.get(run.name)?.filter(({ id }) => id.endsWith(" / out")) ?? [];
    const device = run.protection && this.device(run.protection.device, this.runDeviceId(run));
    return {
      name: run.name,
      cutM: runCutM(run, this.figures.plan.source.shows),
      ...(size === undefined ? {} : { size }),
      ...(legs.length === 0
        ? {}
        : { currentA: legs.reduce((sum, { currentA }) => sum + Math.abs(currentA), 0) }),
      ...(device ? { device } : {}),
    };
  }

  private runDeviceId(run: CompleteRun): string {
    const [first = ""] = run.carries;
    return run.carries.length > 1 ? `${run.name} / ${first} / fuse` : `${run.name} / fuse`;
  }

  private device(kind: string, id: string): Device {
    const ratingA = this.ratings.get(id);
    const rating = ratingA === undefined ? {} : { ratingA };
    return { kind: (this.kinds.get(id) ?? kind) === "breaker" ? "breaker" : "fuse", id, ...rating };
  }

  private devicesOf({ kind, name }: TreeNode): Device[] {
    if (kind === "way") {
      const way = this.ways.get(name);
      if (!way) return [];
      return [
        ...(way.protection === "none" ? [] : [this.device(way.protection.device, `${name} / fuse`)]),
        ...(way.switch === "none" ? [] : [switchOf(`${name} / switch`, way.switch.ratingA)]),
      ];
    }
    const thing =
      kind === "battery" ? this.batteries.get(name) : kind === "panel" ? this.panels.get(name) : undefined;
    if (!thing) return [];
    const { main, master } = thing;
    return [
      ...(main === undefined || main === "none" ? [] : [this.device(main.device, `${name} / main`)]),
      ...(master ? [switchOf(`${name} / master`, master.ratingA)] : []),
    ];
  }
}

const switchOf = (id: string, ratingA: number | undefined): Device => ({
  kind: "switch",
  id,
  ...(ratingA === undefined ? {} : { ratingA }),
});
