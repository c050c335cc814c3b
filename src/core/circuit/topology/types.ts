import type { ConductorSize, JointKind, Protection } from "../../plan/model/common.js";

/** What current must pass between two nodes, before sizes and ratings are known. */
export type PartPlan =
  | {
      readonly kind: "conductor";
      /** Set of conductors that share one size: the run as written, or its returns apart. */
      readonly sizeGroup: string;
      /** What is pulled: along the way, and the slack at both ends. */
      readonly lengthM: number;
      /** Along the way alone. */
      readonly wayM: number;
      readonly inEngineSpace: boolean;
    }
  /** Gear leads: their size is the maker's. */
  | { readonly kind: "lead"; readonly size: ConductorSize; readonly lengthM: number }
  /** Fuse in those leads, as it comes from the maker: it guards nothing of ours, and drops its share. */
  | { readonly kind: "lead fuse"; readonly ratingA: number }
  | { readonly kind: "joint"; readonly joint: JointKind }
  | { readonly kind: "protection"; readonly device: string }
  | { readonly kind: "switch"; readonly ratingA: number }
  /** The metal of the boat used as a conductor. */
  | { readonly kind: "hull" };

export interface TopologyBranch {
  /** `fore trunk / helm / lamps / out`, `fore trunk / return`, `helm / lamps / fuse`. */
  readonly id: string;
  /** Run, way, panel, battery or gear it belongs to. */
  readonly of: string;
  readonly leg: "out" | "return";
  /** Circuits whose current it is there for; a shared return names several. */
  readonly circuits: readonly string[];
  readonly from: number;
  readonly to: number;
  readonly parts: readonly PartPlan[];
}

/** A fuse or breaker, wherever it is written in the plan. */
export interface Device {
  /** `house / main`, `helm / main`, `helm / lamps / fuse`, `shore lead / fuse`. */
  readonly id: string;
  readonly of: string;
  readonly at: "battery" | "panel" | "way" | "run";
  readonly protection: Protection;
}

export interface TopologyGear {
  readonly id: string;
  readonly circuit: string;
  /** Terminals of the gear, behind its own leads. */
  readonly plus: number;
  readonly minus: number;
}

export interface TopologySource {
  readonly battery: string;
  readonly plus: number;
  readonly minus: number;
}

export interface TopologyConverter {
  readonly id: string;
  readonly inPlus: number;
  readonly inMinus: number;
  readonly outPlus: number;
  readonly outMinus: number;
}

/** The circuit of a plan: who is joined to whom, with what between. Indices are into `nodes`. */
export interface Topology {
  readonly nodes: readonly string[];
  readonly branches: readonly TopologyBranch[];
  readonly sources: readonly TopologySource[];
  readonly gear: readonly TopologyGear[];
  readonly converters: readonly TopologyConverter[];
  readonly devices: readonly Device[];
}
