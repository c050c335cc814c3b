import type { JointKind } from "../plan/model/common.js";

/** Tables of what the circuit does, with the plan's ids. Nothing here is ever written into the plan. */

/** A stretch of one leg between two nodes: its conductor with the joints at its ends, or a device. */
export type Part =
  | {
      readonly kind: "conductor";
      readonly lengthM: number;
      readonly sizeKey: string;
      readonly ohmPerMAt20C: number;
      readonly ohm: number;
    }
  | { readonly kind: "joint"; readonly joint: JointKind; readonly ohm: number }
  | { readonly kind: "protection"; readonly ratingA: number; readonly ohm: number }
  | { readonly kind: "switch"; readonly ohm: number };

export interface BranchFigures {
  /** `fore trunk / lamps / out`, `fore trunk / return`, `helm / lamps / fuse`. */
  readonly id: string;
  /** Run, way, panel, battery or gear it belongs to. */
  readonly of: string;
  readonly currentA: number;
  readonly dropV: number;
  readonly heatW: number;
  readonly parts: readonly Part[];
}

export interface GearFigures {
  readonly id: string;
  readonly on: boolean;
  readonly currentA: number;
  /** At its terminals [V]. */
  readonly voltageV: number;
  /** Lost between its source (battery or converter) and its terminals, both legs [V]. */
  readonly dropV: number;
  /** `dropV` as a share of the source's nominal voltage. */
  readonly dropShare: number;
  readonly source: string;
  readonly underVoltage: boolean;
  /** Off while the rest is on, because its one-at-a-time group has a stronger one; its figures are those of its own turn. */
  readonly inTurn?: true;
}

export interface WayFigures {
  /** `helm / lamps`. */
  readonly id: string;
  readonly currentA: number;
}

export interface BatteryFigures {
  readonly id: string;
  readonly emfV: number;
  readonly currentA: number;
  readonly terminalV: number;
}

export interface ConverterFigures {
  readonly id: string;
  readonly inputV: number;
  readonly inputA: number;
  readonly outputA: number;
  readonly lossW: number;
  readonly off: boolean;
  readonly over: boolean;
}

export interface CornerFigures {
  /** `nominal`, `worst drop`, `highest voltage`, or a corner of the plan's own. */
  readonly name: string;
  readonly status: "solved" | "collapsed";
  readonly copperC: number;
  /** Where collapsed: share of the power that could still be carried. */
  readonly carriedShare?: number;
  readonly weakestGear?: string;
  /** Gear cut out by under-voltage, in order. */
  readonly cutOut: readonly string[];
  readonly gear: readonly GearFigures[];
  readonly branches: readonly BranchFigures[];
  readonly ways: readonly WayFigures[];
  readonly batteries: readonly BatteryFigures[];
  readonly converters: readonly ConverterFigures[];
}
