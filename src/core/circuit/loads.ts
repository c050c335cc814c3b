import type { CompleteGear, CompletePlan } from "../plan/completed.js";
import { reals, wholes } from "./columns.js";
import { type LoadTable, loadLaw } from "./solve/types.js";
import type { Topology } from "./topology/types.js";

/** How a piece of gear draws, for the solver: a law and its value (W, A or Ω). */
export interface LoadNumbers {
  readonly law: number;
  readonly value: number;
}

/** Voltage its figure was given at, else its supply's nominal [V]. */
export function ratedV(piece: CompleteGear, plan: CompletePlan): number {
  const nominalV = plan.circuits.get(plan.circuitOf.get(piece.name) ?? "")?.nominalV ?? 12;
  return piece.draw.kind === "resistance" ? nominalV : (piece.draw.atV ?? nominalV);
}

/** Current at its rated voltage [A]. */
export function nominalCurrentA(piece: CompleteGear, plan: CompletePlan): number {
  const { draw } = piece;
  if (draw.kind === "current") return draw.currentA;
  if (draw.kind === "power") return draw.powerW / ratedV(piece, plan);
  return ratedV(piece, plan) / draw.resistanceOhm;
}

/** A running motor is taken at constant current; its start is judged apart (protection, start drop). */
export function loadNumbers(piece: CompleteGear, plan: CompletePlan, level: number): LoadNumbers {
  const ratedA = nominalCurrentA(piece, plan);
  if (piece.behaviour === "resistance") {
    const ohm = ratedV(piece, plan) / ratedA;
    return { law: loadLaw.resistance, value: level > 0 ? ohm / level : Number.POSITIVE_INFINITY };
  }
  if (piece.behaviour === "power") return { law: loadLaw.power, value: ratedA * ratedV(piece, plan) * level };
  return { law: loadLaw.current, value: ratedA * level };
}

/** A topology's gear as loads of the solver, looked up once. */
export class GearLoads {
  /** In the topology's order. */
  readonly pieces: readonly (CompleteGear | undefined)[];
  private readonly full: readonly LoadNumbers[];
  private readonly plus: Int32Array;
  private readonly minus: Int32Array;

  constructor(plan: CompletePlan, { gear }: Topology) {
    const byName = new Map(plan.gear.map((piece) => [piece.name, piece]));
    this.pieces = gear.map(({ id }) => byName.get(id));
    this.full = this.pieces.map((piece) =>
      piece ? loadNumbers(piece, plan, 1) : { law: loadLaw.current, value: 0 },
    );
    this.plus = wholes(gear, ({ plus }) => plus);
    this.minus = wholes(gear, ({ minus }) => minus);
  }

  /** @param on Share of its draw by name; what is not in it is off. */
  table(on: ReadonlyMap<string, number>): LoadTable {
    const count = this.pieces.length;
    const levels = reals(this.pieces, (piece) => (piece && on.get(piece.name)) ?? 0);
    const table = {
      plus: this.plus,
      minus: this.minus,
      law: new Uint8Array(count),
      value: new Float64Array(count),
      minV: reals(this.pieces, (piece, at) => ((levels[at] ?? 0) > 0 ? (piece?.minV ?? 0) : 0)),
    };
    this.set(table, levels);
    return table;
  }

  /** Writes laws and values for these levels (0…1 of the full draw, in the topology's order) into a table. */
  set({ law, value }: LoadTable, levels: Float64Array): void {
    for (let at = 0; at < value.length; at += 1) {
      const level = levels[at] ?? 0;
      const full = this.full[at];
      law[at] = full?.law ?? loadLaw.current;
      const fullValue = full?.value ?? 0;
      if (full?.law === loadLaw.resistance)
        value[at] = level > 0 ? fullValue / level : Number.POSITIVE_INFINITY;
      else value[at] = fullValue * level;
    }
  }
}
