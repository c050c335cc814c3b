import { loadLaw, type NetworkNumbers } from "../circuit/solve/types.js";
import type { TwoPoles } from "./two-poles.js";

/** Piece of its curve a load is on: its law above the knee, a resistance under it, nothing backwards. */
const piece = { law: 0, resistance: 1, none: 2 } as const;
/** A voltage that rises so far over the sound boat's is no solution: nothing but the load's own falling curve drives it. */
export const risenShare = 1.25;
/** A load that left its law so often stays a resistance: there is no point above the knee to work at. */
const mostReturns = 3;

/**
 * Loads of one state, each on a piece of its bent curve: its own law above the knee, a resistance under it (I = P·V/knee²), nothing backwards.
 */
export class BentLoads {
  private readonly pieceOf: Uint8Array;
  /** Voltage each is straightened at, and its voltage in the sound boat; 0: not known yet [V]. */
  private readonly atV: Float64Array;
  private readonly soundV: Float64Array;
  /** How often each went back to its law. */
  private readonly returns: Uint8Array;

  /** @param kneeV By load. */
  constructor(
    private readonly loads: NetworkNumbers["loads"],
    private readonly poles: TwoPoles,
    private readonly kneeV: Float64Array,
  ) {
    const count = loads.value.length;
    this.pieceOf = new Uint8Array(count).fill(piece.none);
    this.atV = new Float64Array(count);
    this.soundV = new Float64Array(count);
    this.returns = new Uint8Array(count);
  }

  /** Begins at a sound boat's solution. */
  restart(x: Float64Array): void {
    this.returns.fill(0);
    for (let i = 0; i < this.pieceOf.length; i++) {
      const v = this.poles.across(x, i);
      this.soundV[i] = v;
      this.atV[i] = v;
      this.pieceOf[i] = v >= (this.kneeV[i] as number) ? piece.law : v > 0 ? piece.resistance : piece.none;
    }
  }

  /** Puts each load into the matrix and the right side, as a straight line through the point it is at. */
  assemble(values: Float64Array, right: Float64Array, loadValue: Float64Array): void {
    const { law } = this.loads;
    for (let i = 0; i < loadValue.length; i++) {
      const value = loadValue[i] as number;
      if (law[i] === loadLaw.resistance) {
        this.poles.stamp(values, i, 1 / value);
        continue;
      }
      const v = this.atV[i] as number;
      const { perValue, slopePerValue } = this.shape(i, v);
      const slope = slopePerValue * value;
      this.poles.stamp(values, i, slope);
      this.poles.drive(right, i, slope * v - perValue * value);
    }
  }

  /** What load i would take more at this voltage for one unit more of its value [A per W, A or Ω]. */
  perValue(i: number, value: number, v: number): number {
    if (this.loads.law[i] === loadLaw.resistance)
      return value < Number.POSITIVE_INFINITY ? -v / (value * value) : 0;
    return v > 0 ? this.shape(i, v).perValue : 0;
  }

  /** Current per unit of value, and its slope, of a load of constant power or current at a voltage, on the piece of its curve it is on. */
  private shape(i: number, v: number): { perValue: number; slopePerValue: number } {
    const knee = this.kneeV[i] as number;
    const power = this.loads.law[i] === loadLaw.power;
    switch (this.pieceOf[i]) {
      case piece.law:
        return power ? { perValue: 1 / v, slopePerValue: -1 / (v * v) } : { perValue: 1, slopePerValue: 0 };
      case piece.resistance: {
        const s = power ? 1 / (knee * knee) : 1 / knee;
        return { perValue: s * v, slopePerValue: s };
      }
      default:
        return { perValue: 0, slopePerValue: 0 };
    }
  }

  /**
   * Takes each load one piece of its curve further, never two: where a falling curve meets no supply, Newton's own steps swing for
   * ever. From the resistance back to its law it starts at the sound boat's voltage, above any solution. True: something changed.
   */
  follow(x: Float64Array): boolean {
    const { law } = this.loads;
    let changed = false;
    for (let i = 0; i < this.pieceOf.length; i++) {
      if (law[i] === loadLaw.resistance) continue;
      const v = this.poles.across(x, i);
      const was = this.pieceOf[i] as number;
      const now = this.pieceAt(i, was, v);
      if (was === piece.none && this.soundV[i] === 0 && v > 0) this.soundV[i] = v;
      const back = was === piece.resistance && now === piece.law;
      if (back) this.returns[i] = (this.returns[i] as number) + 1;
      this.atV[i] = back ? Math.max(v, this.soundV[i] as number) : v;
      this.pieceOf[i] = now;
      changed ||= now !== was;
    }
    return changed;
  }

  private pieceAt(i: number, was: number, v: number): number {
    const knee = this.kneeV[i] as number;
    const soundV = this.soundV[i] as number;
    if (was === piece.law)
      return v < knee || (soundV > 0 && v > risenShare * soundV) ? piece.resistance : piece.law;
    if (was === piece.none && soundV === 0)
      return v >= knee ? piece.law : v > 0 ? piece.resistance : piece.none;
    if (!(v > 0)) return piece.none;
    return was === piece.resistance && v > knee && (this.returns[i] as number) < mostReturns
      ? piece.law
      : piece.resistance;
  }
}
