import type { CornerState, Turn } from "./corners.js";
import type { CircuitNetwork } from "./network.js";
import type { Chosen } from "./parts.js";
import type { NetworkNumbers, Solution } from "./solve/types.js";

/** A corner solved: all that may be on together, and each yielding piece of gear in its own turn. */
export interface SolvedCorner {
  readonly state: CornerState;
  readonly numbers: NetworkNumbers;
  readonly solution: Solution;
  readonly turns: readonly { readonly gear: readonly string[]; readonly solution: Solution }[];
}

/** @throws RangeError if a group has no size or a device no rating. */
export function solveCorner(
  network: CircuitNetwork,
  chosen: Chosen,
  state: CornerState,
  turns: readonly Turn[],
): SolvedCorner {
  const numbers = network.numbersAt(chosen, state);
  return {
    state,
    numbers,
    solution: network.solve(numbers),
    turns: turns.map((turn) => ({
      gear: turn.gear,
      solution: network.solve({ ...numbers, loads: network.loadsAt(turn.state) }),
    })),
  };
}

/** Gear (index) that falls out, in order, where something is under its least voltage. */
export function cutOutAt(network: CircuitNetwork, { numbers, solution }: SolvedCorner): readonly number[] {
  const isTroubled = solution.status === "collapsed" || solution.underVoltage.length > 0;
  return isTroubled ? network.solve(numbers, { cutOut: true }).cutOut : [];
}
