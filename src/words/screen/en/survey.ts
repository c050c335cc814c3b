/** The boat as the tape finds it. */
export const survey = {
  title: "Her measures",
  shape: "Most like",
  length: "Length over all",
  beam: "Widest, side to side",
  depth: "Depth amidships, bottom to edge",
  hull: "Hull of",
  notMeasured: "not measured yet",
  depthMakesForm: "With length, width and depth the drawing becomes her form, to be mended figure by figure.",
  waitsFor: (wanted: readonly string[]) => `The depth waits for: ${wanted.join(", ")}.`,
  surveyed: (stations: number) => `Her form is a survey at ${stations} stations.`,
  fromTable: "Her form is a table of offsets.",
  next: "Worth measuring next",
  nextHint:
    "Where the form is least sure. Half-breadth: from the centreline square out to the line. Height: up from the base line, the level of the keel amidships. Stations count from the aft end.",
  figure: (coordinate: string, line: string, at: string) => `${coordinate} of the ${line} at ${at}`,
  coordinates: { "half-breadth": "Half-breadth", height: "Height" },
  unsureBy: (length: string) => `unsure by ${length}`,
  measured: (count: number) => (count === 1 ? "Measured at 1 place" : `Measured at ${count} places`),
  forget: (line: string, at: string) => `Take out what was measured of the ${line} at ${at}`,
};
