/** A battery followed through an outing. Hours from the start. */
export interface BatteryTrace {
  readonly battery: string;
  readonly points: readonly {
    readonly atH: number;
    readonly charge: number;
    readonly terminalV: number;
    readonly currentA: number;
  }[];
  readonly usedAh: number;
  readonly chargeLeft: number;
  /** Hours until the owner's reserve, and until the battery stops; undefined: not within the outing (see `lastsH`). */
  readonly reserveAtH?: number;
  readonly cutOffAtH?: number;
  /** Usable capacity at this temperature and age, at the rated current [Ah]. */
  readonly usableAh: number;
}

export interface BrownOut {
  readonly gear: string;
  readonly atH: number;
  readonly voltageV: number;
  readonly minV: number;
}

export interface OutingFigures {
  readonly name: string;
  readonly lastsH: number;
  readonly startClockH?: number;
  readonly batteries: readonly BatteryTrace[];
  /** First time each piece of gear falls below its least voltage while it should be on, earliest first. */
  readonly brownOuts: readonly BrownOut[];
  /** Average current by gear, heaviest use first [Ah]. */
  readonly uses: readonly { readonly gear: string; readonly battery: string; readonly usedAh: number }[];
  /** What the outing repeated as it stands would give: hours until reserve from full, by battery. */
  readonly hoursToReserve: readonly { readonly battery: string; readonly hours: number }[];
}

export interface ChargingFigures {
  readonly charger: string;
  readonly battery: string;
  /** From the charge left after the longest outing [0…1]. */
  readonly fromCharge: number;
  readonly hours?: number;
  /** For a solar panel: days of the sun hours given. */
  readonly days?: number;
  readonly state: "works" | "too cold" | "unchecked";
}
