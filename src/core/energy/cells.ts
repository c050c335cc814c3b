import type { BatteryModel } from "./battery-model.js";

/** The charge of one battery cut into stretches in which its EMF and resistance may be taken as those of the middle. */
export interface ChargeCells {
  /** Bounds of the stretches, falling from 1 to 0; stretch i lies between bounds i and i + 1. */
  readonly bounds: readonly number[];
  readonly emfV: readonly number[];
  readonly ohm: readonly number[];
}

/** EMF may differ by this share of nominal from one end of a stretch to the other: currents are off by half of it at most, and even out. */
const emfShare = 0.006;
const chargeStep = 0.1;
/** Bounds lie on this grid; every row of the tables does too. */
const grid = 200;

/** Cuts the charge so that each stretch spans at most 0.6 % of nominal in EMF and a tenth of the charge, and neither bends in it. */
export function chargeCells(model: BatteryModel, nominalV: number): ChargeCells {
  const bends = new Set(model.bends.map((charge) => Math.round(charge * grid)));
  const bounds = [1];
  let from = 1;
  let fromV = model.emfV(from);
  for (let index = grid - 1; index > 0; index -= 1) {
    const charge = index / grid;
    const next = (index - 1) / grid;
    const full = fromV - model.emfV(next) > emfShare * nominalV || from - next > chargeStep * (1 + 1e-9);
    if (full || bends.has(index)) {
      bounds.push(charge);
      from = charge;
      fromV = model.emfV(from);
    }
  }
  bounds.push(0);
  const middles = bounds.slice(1).map((low, index) => (low + (bounds[index] ?? low)) / 2);
  return { bounds, emfV: middles.map(model.emfV), ohm: middles.map(model.ohm) };
}

/** The stretch a charge lies in; a bound belongs to the stretch below it. */
export function cellOf({ bounds }: ChargeCells, charge: number): number {
  const firstBelow = bounds.findIndex((bound) => bound < charge);
  return firstBelow < 0 ? bounds.length - 2 : Math.max(0, firstBelow - 1);
}
