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
  /** Gear (index) that falls out, in order, where something is under its least voltage. */
  readonly cutOut: readonly number[];
}

/** @throws RangeError if a group has no size or a device no rating. */
export function solveCorner(
  network: CircuitNetwork,
  chosen: Chosen,
  state: CornerState,
  turns: readonly Turn[],
): SolvedCorner {
  const numbers = network.numbersAt(chosen, state);
  const solution = network.solve(numbers);
  const troubled = solution.status === "collapsed" || solution.underVoltage.length > 0;
  return {
    state,
    numbers,
    solution,
    turns: turns.map((turn) => ({
      gear: turn.gear,
      solution: network.solve({ ...numbers, loads: network.loadsAt(turn.state) }),
    })),
    cutOut: troubled ? network.solve(numbers, { cutOut: true }).cutOut : [],
  };
}
