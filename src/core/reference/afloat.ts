/** How high an open boat should stand. Lengths in m, angles in degrees. No stability assessment: see docs/methods/float.md. */
const stability = "ISO 12217 (small craft, stability)";

export const afloat = {
  /** Least height of the sheer of a loaded open boat over still water; between the two lengths in proportion. */
  freeboard: {
    source: {
      title: "Rules for the Marking of Free-Board (Load-line) for Ferry Boats, Maharashtra",
      place: "rule 3: 12 in up to 20 ft of length, 18 in from 40 ft on",
      status: "published",
    },
    rows: [
      { lengthM: 6.096, leastM: 0.3048 },
      { lengthM: 12.192, leastM: 0.4572 },
    ],
  },
  /** Least height of the lowest place over which water comes in, as a share of the boat's length. */
  height: {
    source: {
      title: stability,
      place: "basic required downflooding height of design category D, LH/20",
      status: "memory",
    },
    lengthShare: 1 / 20,
  },
  /** Least height of an open hole in the hull over the water she floats at, loaded as usual. */
  hole: {
    source: {
      title: "UK Boat Safety Scheme, hire boats",
      place:
        "hull openings, 10 in (250 mm) above the normal laden waterline; read as quoted in Canal Boat, May 2017",
      status: "published",
    },
    leastM: 0.25,
  },
  /** Heel under a load at the side that is still allowed: 10° + (24 − LH)³/600. */
  heel: {
    source: { title: stability, place: "offset load heel limit", status: "memory" },
    baseDeg: 10,
    lengthM: 24,
    divisor: 600,
  },
  /** Canoes and kayaks stand by other rules: the two above leave boats out that are narrower. */
  narrow: {
    source: {
      title: "ISO 12217-3:2022",
      place:
        "scope, as its publisher gives it: excludes canoes, kayaks or other boats with a beam of less than 1.1 m",
      status: "published",
    },
    beamM: 1.1,
  },
} as const;

/** Density of the water afloat in [kg/m³]. */
export const water = {
  source: {
    title: "ITTC 7.5-02-01-03 (density and viscosity of water)",
    place: "1026.0 at 15 °C and 35 g/kg; rounded as is usual",
    status: "published",
  },
  seaKgPerM3: 1025,
  freshKgPerM3: 1000,
} as const;

/**
 * Least height of the sheer of a loaded open boat over still water [m].
 * @throws RangeError if the length is not above zero.
 */
export function leastFreeboardM(lengthM: number): number {
  if (!(lengthM > 0)) throw new RangeError(`length must be > 0 m, got ${lengthM}`);
  const [short, long] = afloat.freeboard.rows;
  const share = (lengthM - short.lengthM) / (long.lengthM - short.lengthM);
  return short.leastM + Math.min(1, Math.max(0, share)) * (long.leastM - short.leastM);
}
