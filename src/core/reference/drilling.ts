/** Drilling in sheet: distances in hole diameters d unless named otherwise, lengths in mm. */

/** Materials a face can be made of. */
export const materials = [
  "aluminium",
  "steel",
  "polycarbonate",
  "acrylic",
  "polyethylene",
  "glass",
  "wood",
  "rigid PVC",
  "ABS",
] as const;
export type Material = (typeof materials)[number];

const faa = {
  title: "FAA AC 43.13-1B, chapter 4, rivet rules as quoted by teaching pages",
  place: "edge distance and spacing",
  status: "published",
} as const;
const sheetMaker = {
  title: "polycarbonate sheet maker's drilling note",
  place: "distance of a hole to the edge of the sheet",
  status: "published",
} as const;
const practice = { title: "common practice, no source", place: "small craft", status: "practice" } as const;

/**
 * Least distances. `edgeFrom`: whether the edge distance counts from the hole's centre or its rim. `spacing` is from centre to centre.
 * A material that is not here has no rule: its distances are not checked.
 */
export const holeDistances = {
  aluminium: { source: faa, edge: 2, edgeFrom: "centre", spacing: 3 },
  // the one circular is for aluminium; mild steel is treated alike in the shop
  steel: { source: practice, edge: 2, edgeFrom: "centre", spacing: 3 },
  // the note gives 1.5 to 2 d from rim to edge; the larger is taken
  polycarbonate: { source: sheetMaker, edge: 2, edgeFrom: "rim", spacing: 3 },
  acrylic: { source: sheetMaker, edge: 2, edgeFrom: "rim", spacing: 3 },
  // ligament between holes 1 d, so centres 2 d
  polyethylene: { source: practice, edge: 2, edgeFrom: "centre", spacing: 2 },
  glass: { source: practice, edge: 2, edgeFrom: "centre", spacing: 3 },
  wood: { source: practice, edge: 2.5, edgeFrom: "centre", spacing: 4 },
} as const;

/** Pilot, speed and point angle. Undefined where nothing is known. */
export const cutting = {
  pilot: { source: { title: "step bit practice", place: "pilot 3 to 4 mm", status: "practice" }, mm: 3.5 },
  stepDrill: {
    source: {
      title: "step bit practice",
      place: "steps 3 to 4 mm high on small bits; 2 mm rise; metric sets to 30 mm",
      status: "practice",
    },
    maxSheetMm: 4,
    minHoleMm: 4,
    maxHoleMm: 30,
    riseMm: 2,
    glandStepsMm: [12.5, 16.5, 20.5, 25.5],
  },
  twistDrill: { source: practice, maxHoleMm: 13 },
  /** Turns a minute for twist bits in polycarbonate and acrylic. */
  plasticSpeeds: {
    source: {
      title: "polycarbonate sheet maker's drilling note",
      place: "speed and feed by hole",
      status: "published",
    },
    rows: [
      { holeMm: 3.2, rpm: 1750 },
      { holeMm: 6.35, rpm: 1500 },
      { holeMm: 12.7, rpm: 500 },
    ],
  },
  stepDrillSpeed: {
    source: { title: "step bit practice", place: "400 to 800 rpm in plastics", status: "practice" },
    minRpm: 400,
    maxRpm: 800,
  },
  pointAngle: {
    source: {
      title: "polycarbonate sheet maker's note; plastics fabricators' notes on acrylic",
      place: "point angle",
      status: "published",
    },
    polycarbonateDeg: 118,
    acrylicDeg: 60,
  },
} as const;

/** Wall below which the clamp of a fitting is spread by a backing plate or large washers [mm]. */
export const backing = {
  source: practice,
  belowMm: {
    aluminium: 2,
    steel: 1.2,
    polycarbonate: 4,
    acrylic: 5,
    polyethylene: 6,
    glass: 5,
    wood: 8,
    "rigid PVC": 4,
    ABS: 4,
  },
} as const;

/** A fitting measured this much larger or smaller than its catalogue says is not the fitting of the catalogue [mm]. */
export const fixtureTolerance = { source: practice, mm: 0.3 } as const;
