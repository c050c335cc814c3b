import type { CompleteGear, CompletePlan } from "../plan/completed.js";
import { loadLaw } from "./solve/types.js";

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
