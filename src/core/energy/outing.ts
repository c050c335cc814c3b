import type { Chemistry } from "../plan/model/supply.js";

/** An outing in plain numbers, made by the adapter from the plan. Times in hours from the start. */
export interface OutingInput {
  readonly name: string;
  readonly lastsH: number;
  readonly startClockH?: number;
  readonly batteries: readonly OutingBattery[];
  readonly gear: readonly OutingGear[];
  /** Solves the network; called as seldom as the figures allow, and never twice with the same question. */
  readonly draw: Draw;
}

export interface OutingBattery {
  readonly id: string;
  readonly chemistry: Chemistry;
  readonly nominalV: number;
  /** When new, at 25 °C, over `ratedHours` [Ah]. */
  readonly capacityAh: number;
  readonly ratedHours: number;
  readonly peukertExponent: number;
  readonly ageYears: number;
  /** When new and full, at 25 °C [Ω]. */
  readonly internalOhm: number;
  /** Share of the charge one keeps, 0…1. */
  readonly reserveShare: number;
  /** Terminal voltage at which it, or its electronics, stops [V]. */
  readonly cutOffV: number;
  /** Charge when leaving, 0…1 of what it holds at this temperature and age. */
  readonly startCharge: number;
  /** Of the battery itself [°C]. */
  readonly temperatureC: number;
}

export interface OutingGear {
  readonly id: string;
  /** The battery it lives on in the end, through a converter or not; one of `batteries`. */
  readonly battery: string;
  /** Behind a converter: its voltage does not follow the battery's. */
  readonly regulated: boolean;
  /** Voltage below which it stops working; 0 where there is none [V]. */
  readonly minV: number;
  readonly periods: readonly GearPeriod[];
}

/** A stretch in which a piece of gear is on. Where stretches overlap, the higher level and the higher duty count. */
export interface GearPeriod {
  readonly fromH: number;
  readonly toH: number;
  /** Share of the time it runs, 0…1. */
  readonly duty: number;
  /** Share of its full draw while it runs, 0…1. */
  readonly level: number;
}

/** What the network is solved for. Index i of `batteries` and `levels` is that of the outing's battery and gear. */
export interface CircuitState {
  readonly batteries: readonly {
    readonly emfV: number;
    readonly ohm: number;
    /** False: it has stopped and must be left out of the circuit. */
    readonly connected: boolean;
  }[];
  /** 0…1 of each piece of gear's full draw; 0 is off. Not to be kept or changed. */
  readonly levels: Float64Array;
}

/** How the network answers. A collapsed network answers with the last state that exists. */
export interface CircuitAnswer {
  /** Out of each battery; negative where it is charged [A]. */
  readonly batteryA: ArrayLike<number>;
  /** What each piece of gear takes from its battery; behind a converter its share of the converter's input [A]. */
  readonly gearA: ArrayLike<number>;
  /** At each piece of gear's terminals, 0 where nothing feeds it [V]. */
  readonly gearV: ArrayLike<number>;
}

export type Draw = (state: CircuitState) => CircuitAnswer;
