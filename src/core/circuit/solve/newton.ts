import type { Demand } from "./demand.js";
import type { LinearNetwork } from "./linear-network.js";
import type { NetworkNumbers } from "./types.js";

/** Where the curves of loads and converters are touched by their straight lines. One row a load or a converter. */
export interface OperatingPoint {
  readonly loadV: Float64Array;
  readonly inV: Float64Array;
  readonly outA: Float64Array;
}

/** Shares of the constant power of loads, and of the input power of converters, that are asked for (0…1). */
export interface Shares {
  readonly load: number;
  readonly converter: number;
}

/** `reversed`: solved, but a constant-current load would have to run backwards. */
export type NewtonEnd = "solved" | "reversed" | "none";

const maxIterations = 60;
/** Newton doubles the good digits a step: a last step of 1e-9 of the supply leaves rounding only. */
const closeEnough = 1e-9;
/** Near the point of greatest power rounding shakes the last digits; a step this small that shrinks no more is the end. */
const shaking = 1e-7;

/**
 * Newton's method on the laws of loads and converters, each step a whole solve of the network with tangents: I ≈ 2P/w − (P/w²)·V
 * for a constant power at V = w. From above (voltages without load) the steps fall toward the upper of the two solutions
 * without passing it, so no damping is needed; a step to zero volts or past the point of greatest power means that there is
 * none to be had from here.
 * @param point In: where to start. Out: the solution, or rubbish where there is none.
 * @param supplyV Greatest EMF, the measure of what is close [V].
 */
export function newton(
  network: NetworkNumbers,
  demand: Demand,
  shares: Shares,
  linear: LinearNetwork,
  point: OperatingPoint,
  supplyV: number,
): { end: NewtonEnd; iterations: number } {
  const { value } = network.loads;
  const { powerLoads, currentLoads, inputs, outputs } = demand;
  for (const i of currentLoads) linear.loadA[i] = value[i] as number;
  let before = Infinity;
  for (let iterations = 1; iterations <= maxIterations; iterations++) {
    for (let k = 0; k < powerLoads.length; k++) {
      const i = powerLoads[k] as number;
      const atV = point.loadV[i] as number;
      const currentA = (shares.load * (value[i] as number)) / atV;
      linear.loadS[i] = -currentA / atV;
      linear.loadA[i] = 2 * currentA;
    }
    drawInputLines(network, demand, shares.converter, linear, point);
    if (!linear.solve()) return { end: "none", iterations };

    let moved = 0;
    for (let k = 0; k < powerLoads.length; k++) {
      const i = powerLoads[k] as number;
      const toV = linear.loadV[i] as number;
      if (!(toV > 0)) return { end: "none", iterations };
      moved = Math.max(moved, Math.abs(toV - (point.loadV[i] as number)));
      point.loadV[i] = toV;
    }
    for (let k = 0; k < inputs.length; k++) {
      const i = inputs[k] as number;
      const toV = linear.inV[i] as number;
      if (!(toV > 0)) return { end: "none", iterations };
      moved = Math.max(moved, Math.abs(toV - (point.inV[i] as number)));
      point.inV[i] = toV;
    }
    for (let k = 0; k < outputs.length; k++) {
      const i = outputs[k] as number;
      const toA = linear.outA[i] as number;
      // A current has no supply to be measured against: compare with itself, in volts of the supply.
      const share = Math.abs(toA - (point.outA[i] as number)) / (1 + Math.abs(toA));
      moved = Math.max(moved, share * supplyV);
      point.outA[i] = toA;
    }
    if (moved <= closeEnough * supplyV || (moved <= shaking * supplyV && moved > 0.6 * before)) {
      for (let k = 0; k < currentLoads.length; k++)
        if (!((linear.loadV[currentLoads[k] as number] as number) > 0))
          return { end: "reversed", iterations };
      return { end: "solved", iterations };
    }
    before = moved;
  }
  return { end: "none", iterations: maxIterations };
}

/** Input current (E·i/η + standby) / V as a plane through the point (V = w, i = i₀). */
function drawInputLines(
  network: NetworkNumbers,
  { inputs, outputs }: Demand,
  share: number,
  linear: LinearNetwork,
  point: OperatingPoint,
): void {
  const { outputV, efficiency, standbyW } = network.converters;
  linear.inShare.fill(0);
  for (let k = 0; k < outputs.length; k++) {
    const i = outputs[k] as number;
    linear.inShare[i] =
      (share * (outputV[i] as number)) / ((efficiency[i] as number) * (point.inV[i] as number));
  }
  for (let k = 0; k < inputs.length; k++) {
    const i = inputs[k] as number;
    const atV = point.inV[i] as number;
    const standbyA = (share * (standbyW[i] as number)) / atV;
    const passedA = (linear.inShare[i] as number) * (point.outA[i] as number);
    linear.inS[i] = -(passedA + standbyA) / atV;
    linear.inA[i] = passedA + 2 * standbyA;
  }
}
