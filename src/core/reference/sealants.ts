/** Sealants: cartridge, cure, bond. Lengths in mm, volumes in ml, surface energies in mN/m (the same number as dyne/cm). */

const dataSheet = {
  title: "makers' data sheets of one-part silicone sealants (ISO 11600 class 20HM; ASTM C920 class 25)",
  place: "joint rules and yield",
  status: "published",
} as const;
const energyTable = {
  title: "polymer surface-energy table (untreated polymers) and an adhesive maker's note",
  place: "table and bonding rule",
  status: "published",
} as const;
const practice = { title: "common practice, no source", place: "sealants", status: "practice" } as const;

export const cartridges = {
  source: dataSheet,
  rows: [
    { name: "cartridge 310 ml", ml: 310, source: dataSheet },
    { name: "cartridge 295 ml (10 US fl oz)", ml: 295, source: dataSheet },
    { name: "squeeze tube 80 ml", ml: 80, source: practice },
  ],
} as const;

/** Cure depth grows about with the square root of time: depth = depth₂₄·√(t/24 h). */
export const cure = {
  // 2 to 3 mm in the first day; the slower is taken
  depthFirstDayMm: 2,
  source: practice,
  coldOrDry: {
    source: {
      title: "silicone maker's note on time to performance test",
      place: "24 h, or 48 h when cold or dry",
      status: "published",
    },
    times: 2,
  },
  /** Air colder or drier than this counts as cold or dry. */
  coldBelowC: 10,
  dryBelowShare: 0.3,
} as const;

/** Surface energy of untreated material. Metals, glass and clean wood stand far above any sealant. */
export const surfaceEnergy = {
  source: energyTable,
  polymers: {
    polyethylene: { min: 30, max: 31 },
    polypropylene: { min: 29, max: 31 },
    "silicone rubber": { min: 24, max: 24 },
    "rigid PVC": { min: 39, max: 39 },
    "plasticised PVC": { min: 33, max: 38 },
    ABS: { min: 35, max: 42 },
    polystyrene: { min: 38, max: 38 },
    polyester: { min: 41, max: 44 },
    polycarbonate: { min: 46, max: 46 },
    nylon: { min: 33, max: 46 },
  },
  /** What ordinary adhesives and sealants want at least. */
  wanted: 36,
} as const;

/** A bead is laid this much larger than the gap it fills: what is squeezed out and left in the nozzle. */
export const waste = { source: practice, share: 0.25 } as const;

/** Sealant left between a flange and its face once it is drawn up [mm]. */
export const sealantBed = { source: practice, depthMm: 1.5 } as const;
