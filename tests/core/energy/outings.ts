import type {
  CircuitState,
  Draw,
  GearPeriod,
  OutingBattery,
  OutingInput,
} from "../../../src/core/energy/outing.js";

/** An invented AGM battery with no rate effect, at the temperature its tables are for. */
export const house: OutingBattery = {
  id: "house",
  chemistry: "agm",
  nominalV: 12,
  capacityAh: 50,
  ratedHours: 20,
  peukertExponent: 1,
  ageYears: 0,
  internalOhm: 0.008,
  reserveShare: 0.5,
  cutOffV: 10.5,
  startCharge: 1,
  temperatureC: 25,
};

export interface Piece {
  readonly id: string;
  readonly law: "current" | "power";
  /** A or W at full level. */
  readonly value: number;
  /** Of its own pair of wires [Ω]. */
  readonly wireOhm?: number;
  readonly minV?: number;
  readonly battery?: string;
  readonly regulated?: boolean;
  readonly periods?: readonly GearPeriod[];
}

export const always = (lastsH: number): readonly GearPeriod[] => [
  { fromH: 0, toH: lastsH, duty: 1, level: 1 },
];

/** A network of our own for tests: gear on its own wires straight to its battery, solved by repetition. Counts its solves. */
export function outing(
  lastsH: number,
  pieces: readonly Piece[],
  batteries: readonly OutingBattery[] = [house],
): OutingInput & { readonly solves: CircuitState[] } {
  const solves: CircuitState[] = [];
  const batteryOf = pieces.map(({ battery = "house" }) => batteries.findIndex(({ id }) => id === battery));
  const draw: Draw = (state) => {
    solves.push({ batteries: state.batteries, levels: state.levels.slice() });
    const gearA = new Float64Array(pieces.length);
    const gearV = new Float64Array(pieces.length);
    const batteryA = new Float64Array(batteries.length);
    for (let round = 0; round < 40; round += 1) {
      const terminalV = state.batteries.map(({ emfV, ohm, connected }, index) =>
        connected ? emfV - (batteryA[index] ?? 0) * ohm : 0,
      );
      batteryA.fill(0);
      for (const [index, { law, value, wireOhm = 0 }] of pieces.entries()) {
        const battery = batteryOf[index] ?? 0;
        const level = state.levels[index] ?? 0;
        const atPostV = terminalV[battery] ?? 0;
        gearV[index] = atPostV - (gearA[index] ?? 0) * wireOhm;
        gearA[index] =
          atPostV > 0 ? (level * value) / (law === "power" ? Math.max(1, gearV[index] ?? 1) : 1) : 0;
        batteryA[battery] = (batteryA[battery] ?? 0) + (gearA[index] ?? 0);
      }
    }
    return { batteryA, gearA, gearV };
  };
  return {
    name: "an outing",
    lastsH,
    batteries,
    gear: pieces.map(({ id, battery = "house", minV = 0, regulated = false, periods = always(lastsH) }) => ({
      id,
      battery,
      minV,
      regulated,
      periods,
    })),
    draw,
    solves,
  };
}
