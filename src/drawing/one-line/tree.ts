import type { CompletePlan, CompleteRun } from "../../core/plan/completed.js";
import type { Endpoint } from "../../core/plan/model/common.js";

export type NodeKind = "battery" | "charger" | "converter" | "panel" | "way" | "box" | "gear" | "reference";

/** One thing of the diagram. Nodes stand in pre-order: a parent before its children, a branch before the next. */
export interface TreeNode {
  readonly kind: NodeKind;
  /** Name in the plan; for a way, `panel / way`; for a reference, what it points to. */
  readonly name: string;
  /** Index of the node it hangs on; -1: a root. */
  readonly parent: number;
  /** The run that reaches it; none for a root or a way. */
  readonly run?: CompleteRun;
  /** Of a battery: does it have a main fuse. */
  readonly hasMain?: boolean;
  /** Of a reference: what it points to. */
  readonly refers?: Reference;
}

/** What stands elsewhere: a thing by its name, or a run that is drawn above. */
export interface Reference {
  readonly as: "battery" | "output" | "way" | "drawn elsewhere" | "in run" | "unknown";
  readonly to: string;
}

/**
 * The plan as trees that grow from the batteries along the runs, then whatever no battery reaches. Each run is drawn once;
 * where a run meets something that stands elsewhere, a reference says so. Linear in runs and places.
 */
export function plantTrees(plan: CompletePlan): TreeNode[] {
  return new Planter(plan).plant();
}

class Planter {
  private readonly nodes: TreeNode[] = [];
  private readonly kinds = new Map<string, NodeKind>();
  private readonly runsAt = new Map<string, CompleteRun[]>();
  private readonly drawn = new Set<string>();
  private readonly reached = new Set<string>();
  private readonly stack: TreeNode[] = [];

  constructor(private readonly plan: CompletePlan) {
    const note = (kind: NodeKind, things: readonly { readonly name: string }[]) => {
      for (const { name } of things) this.kinds.set(name, kind);
    };
    note("battery", plan.batteries);
    note("charger", plan.chargers);
    note("converter", plan.converters);
    note("panel", plan.panels);
    note("box", plan.boxes);
    note("gear", plan.gear);
    for (const run of plan.runs) {
      for (const place of new Set([run.from.place, run.to.place])) {
        const list = this.runsAt.get(place);
        if (list) list.push(run);
        else this.runsAt.set(place, [run]);
      }
    }
  }

  plant(): TreeNode[] {
    for (const { name, main } of this.plan.batteries)
      this.grow({ kind: "battery", name, parent: -1, hasMain: main !== "none" });
    for (const kind of ["converter", "panel", "box", "gear"] as const)
      for (const [name, known] of this.kinds)
        if (known === kind && !this.reached.has(name)) this.grow({ kind, name, parent: -1 });
    return this.nodes;
  }

  private grow(root: TreeNode): void {
    this.stack.push(root);
    for (let visit = this.stack.pop(); visit !== undefined; visit = this.stack.pop()) {
      const index = this.nodes.push(visit) - 1;
      if (visit.kind !== "reference") this.reached.add(visit.name);
      this.stack.push(...this.childrenOf(visit, index).reverse());
    }
  }

  private childrenOf(visit: TreeNode, index: number): TreeNode[] {
    switch (visit.kind) {
      case "battery":
        return this.along(visit.name, index, () => true).sort((a, b) => tapOrder(a) - tapOrder(b));
      case "converter":
        return this.along(visit.name, index, (end) => end.port !== "in");
      case "panel":
        return this.panelChildren(visit.name, index);
      case "way":
        return this.wayChildren(visit.name, index);
      case "box": {
        const circuits = new Set(visit.run?.carries ?? []);
        return this.along(
          visit.name,
          index,
          (_, run) => visit.run === undefined || run.carries.some((one) => circuits.has(one)),
        );
      }
      case "gear":
        return this.along(visit.name, index, () => true);
      case "charger":
      case "reference":
        return [];
      default:
        return visit.kind satisfies never;
    }
  }

  /** The runs at a place that are still to draw, each with what stands at its far end. */
  private along(
    place: string,
    parent: number,
    takes: (end: Endpoint, run: CompleteRun) => boolean,
  ): TreeNode[] {
    const found: TreeNode[] = [];
    for (const run of this.runsAt.get(place) ?? []) {
      const here = run.from.place === place ? run.from : run.to;
      const far = here === run.from ? run.to : run.from;
      if (run.legs === "return" || this.drawn.has(run.name) || !takes(here, run)) continue;
      this.drawn.add(run.name);
      found.push(this.farEnd(far, run, parent));
    }
    return found;
  }

  private farEnd(far: Endpoint, run: CompleteRun, parent: number): TreeNode {
    const kind = this.kinds.get(far.place);
    const words = far.port === undefined ? far.place : `${far.place} / ${far.port}`;
    const reference = (as: Reference["as"], to = words): TreeNode => {
      const refers = { as, to };
      return { kind: "reference", name: refers.to, parent, run, refers };
    };
    if (kind === undefined) return reference("unknown");
    if (kind === "battery") return reference("battery", far.place);
    if (kind === "converter" && far.port === "out") return reference("output", far.place);
    if (kind === "panel" && far.port !== undefined) return reference("way");
    if (kind !== "box" && this.reached.has(far.place)) return reference("drawn elsewhere");
    this.reached.add(far.place);
    return { kind, name: far.place, parent, run };
  }

  private panelChildren(name: string, parent: number): TreeNode[] {
    const panel = this.plan.panels.find((one) => one.name === name);
    const ways = (panel?.ways ?? []).map(
      (way): TreeNode => ({ kind: "way", name: `${name} / ${way.name}`, parent }),
    );
    const own = new Set(ways.map((way) => way.name));
    // What leaves the panel on no way of its own: its feed led on to another panel or a converter.
    const onward = this.along(
      name,
      parent,
      (end, run) => end.port === undefined && !run.carries.some((one) => own.has(one)),
    );
    return [...ways, ...onward];
  }

  private wayChildren(way: string, parent: number): TreeNode[] {
    const [panel = "", port = ""] = way.split(" / ");
    const onWay = (end: Endpoint, run: CompleteRun) =>
      end.port === port || (end.port === undefined && run.carries.includes(way));
    const elsewhere = (this.runsAt.get(panel) ?? []).find((run) => {
      const end = run.from.place === panel ? run.from : run.to;
      return this.drawn.has(run.name) && run.legs !== "return" && onWay(end, run);
    });
    const found = this.along(panel, parent, onWay);
    if (elsewhere === undefined) return found;
    const refers = { as: "in run", to: elsewhere.name } as const;
    return [{ kind: "reference", name: refers.to, parent, refers }, ...found];
  }
}

/** What leaves after the main fuse and the master switch first, then what leaves before them. */
function tapOrder({ run }: TreeNode): number {
  if (run === undefined) return 0;
  return run.beforeMain ? 2 : run.beforeMaster ? 1 : 0;
}
