/** The boat measured station by station. These strings come with their view. */
export const tape = {
  title: "Station by station",
  table: "Stations and figures",
  station: "Station",
  column: (line: string, coordinate: string) => `${line} ${coordinate}`,
  /** Headings of columns; a spreadsheet's are known by them. */
  short: { "half-breadth": "half-breadth", height: "height" },
  drawn: (value: string) => `${value}, drawn, not measured`,
  faired: (value: string) => `${value}, from the fair line, not measured`,
  stationTaken: "That station is in the table already.",
  nothingMeasured:
    "Nothing was measured here yet. Type a figure first, or type the station in the last line.",
  notChecked: "Not checked: a line shows how it bends from six figures on.",
  noneHere: "Not measured here.",
  off: {
    "half-breadth": {
      more: (length: string) => `${length} wider`,
      less: (length: string) => `${length} narrower`,
    },
    height: { more: (length: string) => `${length} higher`, less: (length: string) => `${length} lower` },
  },
  agrees: (off: string, fair: string, limit: string) =>
    `Goes with the others: ${off} than the ${fair} they point to; up to ${limit} is nothing to wonder at.`,
  differs: (off: string, fair: string, limit: string) =>
    `Does not go with the others: ${off} than the ${fair} they point to, where ${limit} would be the most. Measure it again; if it stands, she is so.`,
  agreement: (good: number, bad: number, unchecked: number) =>
    [
      good > 0 ? `${good} go with the others` : "",
      bad > 0 ? (bad === 1 ? "1 does not" : `${bad} do not`) : "",
      unchecked > 0 ? `${unchecked} not checked` : "",
    ]
      .filter((part) => part !== "")
      .join(", "),
  nothingToCheck: "Nothing measured yet, so nothing is checked.",
  howWell: "How the figures agree",
  toWorst: "Go to it",
  fromDrawing:
    "What is in italics is drawn: it comes from the shape she was begun with, and nobody has measured it.",
  spread: "One reading may be off by",
  bare: "A number without a unit is in",
  bareUnits: { mm: "millimetres", cm: "centimetres", m: "metres", in: "inches" },
  now: "Measure now",
  nowAt: (station: string, what: string) => `Station ${station}: ${what}`,
  figure: "Tape reads",
  takeOut: "Take this figure out",
  before: "Back",
  next: "Next",
  atEnd: "That was the last.",
  hold: {
    "half-breadth":
      "From the middle of the boat straight out to the line, square and level. Across her whole width is surer: type half of it.",
    height:
      "Straight up from the base line to the line. The base line is level, at the lowest point of the keel amidships.",
  },
  drawing: (station: string) => `Her section at station ${station}, seen from aft`,
  overview: "Half-breadths above, heights below, with the station measured now",
  centreline: "middle of the boat",
  baseLine: "base line",
  worthNext: "Worth measuring next",
  goThere: "Go there",
  addThat: "Add that station",
  add: "Add a station",
  remove: "Remove the station",
  lines: "Her lines",
  linesHint:
    "From the keel up. A line is whatever one can find again from station to station: an edge, a seam, a strip of trim.",
  lineName: "Name",
  onwards: "Up to the next line",
  spans: { flat: "flat", round: "round" },
  corner: "There is a corner here",
  noHalves: "in the middle of the boat: heights only",
  removeLine: (name: string) => `Remove ${name}`,
  addLine: "Add this line",
  above: "Above",
  called: "Name",
  checks: "Readings that check her",
  checksHint: "Lengths the table implies already. One of each kind catches a slip no single figure shows.",
  checkKinds: {
    breadth: "the whole width, from side to side",
    girth: "along the skin, from one line up to another",
    along: "along a line, from station to station",
  },
  check: "What was measured",
  onLine: "Of the line",
  upTo: "Up to the line",
  at: "At station",
  until: "To station",
  reads: "Tape reads",
  addCheck: "Add this reading",
  removeCheck: (what: string) => `Remove the reading of ${what}`,
  breadthOf: (line: string, at: string) => `Whole width at the ${line}, station ${at}`,
  girthOf: (line: string, to: string, at: string) => `Along the skin from ${line} to ${to}, station ${at}`,
  alongOf: (line: string, at: string, until: string) => `Along the ${line} from station ${at} to ${until}`,
  checkGood: (right: string, limit: string) =>
    `Goes with the table, which gives ${right}; up to ${limit} either way may be.`,
  checkBad: (off: string, right: string, limit: string) =>
    `${off} off the ${right} that the table gives; ${limit} would be the most. Measure it again, and then the figures at its ends.`,
  checkNone: "Not checked: the form does not reach there.",
  noChecks: "None yet, so no slip is caught this way.",
  asTable: "Write her out as a table",
  asTableHint:
    "All figures of the drawing are then written in the table, to be corrected one by one, and lines can come and go. What was only drawn is not told from what was measured any more.",
  fromText: (lines: number) =>
    `Her form is a table of offsets with ${lines} lines, written in the plan as it was handed over.`,
  fromTextHint:
    "To correct it here it is written as stations and lines. The form stays the same; undo brings the old writing back. Until then it is taken as it is: nothing checks it.",
  fromTextTake: "Make it stations and lines",
  fromTextWrong: "It can't be read whole yet. Mend it in the plan's text first.",
  begin: "Measure at these stations",
  beginSteps: [
    "Set her level from end to end and from side to side, and stretch a string along her middle from stem to transom.",
    "Mark stations along the string at round distances, counted from the aft end; closer where she curves most.",
    "The base line is level with the lowest point of the keel amidships: a string or a straight board under her. Inside a boat afloat measure down from a level string, and take that off its height.",
    "At each station, for each line: how far out from the middle, and how high above the base line.",
  ],
  stationsFor: (stations: readonly string[]) => `For her length, stations at ${stations.join(", ")}.`,
  beginDrawing:
    "Where to hold the tape at a station: out from the middle of the boat, and up from the base line",
  beginStations: "Stations along the boat, counted from the aft end",
  beginShape: "Begin with a shape like hers",
  beginShapeHint: "The quickest way: three lengths make a form, and each figure you measure bends it to her.",
  beginTable: "Or with an empty table",
  beginTableHint: "Where no shape is like hers, or her lines are known.",
  section: "Her section",
  sections: {
    vee: "flat panels with a chine",
    round: "round, with a bilge and a topside",
    plain: "one panel from keel to edge",
  },
  countStations: "How many stations",
  beginAdd: "Begin this table",
  changes: (count: number) => (count === 1 ? "1 change made." : `${count} changes made.`),
  paper: "A sheet to fill in with a pencil is among the pages to print.",
  toSurvey: "To the drawing of the whole boat",
};
