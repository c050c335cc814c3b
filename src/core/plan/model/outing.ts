/** A stretch of time in which something is on. Times in hours from the start of the outing. */
export interface OnPeriod {
  /** Gear, way (`panel / way`) or panel by name. */
  readonly what: string;
  readonly fromH: number;
  readonly toH: number;
  /** Share of the time it runs, 0…1: a pump 2 min in each hour is 2/60. */
  readonly duty: number;
  /** Share of its full draw, 0…1: a motor at half. */
  readonly level: number;
}

export interface Outing {
  readonly name: string;
  /** Clock time it starts, hours after midnight; for the chart only. */
  readonly startClockH?: number;
  readonly lastsH: number;
  readonly airC?: number;
  /** State of charge when leaving, 0…1. */
  readonly startCharge?: number;
  readonly on: readonly OnPeriod[];
}

/** A condition to solve the network at, besides the three every plan gets. */
export interface Corner {
  readonly name: string;
  readonly charge?: number;
  readonly batteryV?: number;
  readonly copperC?: number;
  /** Gear that is on; undefined: everything that may be on together. */
  readonly on?: readonly string[];
}
