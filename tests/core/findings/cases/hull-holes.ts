import type { RuleCase } from "../case.js";
import { type Change, hullBoat } from "../hull-boat.js";

const sound = () => hullBoat();
const row = "row: {from: 1200 mm, to: 2000 mm, end margin: 100 mm, below: sheer, off: 100 mm}";
const rowOff = (mm: number): Change => ["below: sheer, off: 100 mm", `below: sheer, off: ${mm} mm`];
const rowTo = (mm: number): Change => ["to: 2000 mm, end margin", `to: ${mm} mm, end margin`];
const switchAt = (place: string): Change => ["at: {along: 200 mm, off: 100 mm}", `at: {${place}}`];
const gauge = (along: number): Change => [
  "runs:",
  `  gauge:\n    draws: 1 W\n    on: board\n    at: {along: ${along} mm, off: 100 mm}\n    hole: {size: 22 mm, flange: 30 mm}\nruns:`,
];
const thin: Change = ["thickness: 2.5 mm\n    room", "thickness: 1.5 mm\n    room"];

export const holeCases = {
  "fixture-size": {
    raises: [
      {
        boat: () => hullBoat(["measured: [15.6 mm]", "measured: [15.9 mm, 16.4 mm]"]),
        at: "lamp 1",
        level: "mind",
        figure: 16.4,
        limit: 15.6,
      },
    ],
    quiet: [sound, () => hullBoat(["measured: [15.6 mm]", "measured: [15.8 mm]"])],
  },
  "hole-backing": {
    raises: [
      { boat: () => hullBoat(thin), at: "lamp 1", level: "mend", figure: 1.5, limit: 2 },
      {
        boat: () => hullBoat(thin, [/hole: \{size: 16 mm.*\n/, "hole: 16 mm\n"]),
        at: "lamp 1",
        level: "mend",
        figure: 1.5,
      },
    ],
    quiet: [sound, () => hullBoat(thin, ["passes: 6 mm", "passes: 6 mm, backed: true"])],
  },
  "hole-depth": {
    raises: [
      {
        boat: () => hullBoat(["behind: 40 mm", "behind: 120 mm"]),
        at: "switch",
        level: "mend",
        figure: 0.1,
        limit: 0.12,
      },
      {
        boat: () => hullBoat(["room: 80 mm", "room: 60 mm"]),
        at: "lamp 1",
        level: "mend",
        figure: 0.06,
        limit: 0.07,
      },
    ],
    quiet: [sound],
  },
  "hole-edge": {
    raises: [
      { boat: () => hullBoat(rowOff(25)), at: "lamp 1", level: "mend", limit: 0.032 },
      {
        boat: () => hullBoat(rowOff(40), ["flange: 25 mm", "flange: 90 mm"]),
        at: "lamp 1",
        level: "mend",
        limit: 0.045,
      },
    ],
    quiet: [sound, () => hullBoat(rowOff(33))],
  },
  "hole-off-face": {
    raises: [
      { boat: () => hullBoat(switchAt("along: 500 mm, off: 100 mm")), at: "switch", level: "mend" },
      { boat: () => hullBoat(switchAt("along: 20 mm, from: pin, off: 100 mm")), at: "switch", level: "mend" },
    ],
    quiet: [sound],
  },
  "hole-reach": {
    raises: [
      { boat: () => hullBoat(["reach: 700 mm", "reach: 250 mm"]), at: "lamp 2", level: "mend", limit: 0.25 },
    ],
    quiet: [sound, () => hullBoat([/ {4}openings:\n.*\n/, ""])],
  },
  "hole-spacing": {
    raises: [{ boat: () => hullBoat(gauge(260)), at: "switch", level: "mend", figure: 0.06, limit: 0.088 }],
    quiet: [sound, () => hullBoat(gauge(290))],
  },
  "hole-unknown": {
    raises: [
      {
        boat: () => hullBoat(["hole: {size: 22 mm, flange: 30 mm, behind: 40 mm}", "hole: {flange: 30 mm}"]),
        at: "switch",
        level: "unchecked",
      },
      { boat: () => hullBoat(["material: wood\n", "material: ABS\n"]), at: "switch", level: "unchecked" },
      { boat: () => hullBoat(["    material: wood\n", ""]), at: "switch", level: "unchecked" },
      { boat: () => hullBoat(["    thickness: 12 mm\n", ""]), at: "switch", level: "unchecked" },
    ],
    quiet: [sound],
  },
  "hole-zone": {
    raises: [
      {
        boat: () => hullBoat([row, "at: [{along: 1300 mm, off: 100 mm}, {along: 1720 mm, off: 100 mm}]"]),
        at: "lamp 2",
        level: "stop",
      },
      {
        boat: () => hullBoat([row, "at: [{along: 1300 mm, off: 100 mm}, {along: 1679 mm, off: 100 mm}]"]),
        at: "lamp 2",
        level: "mend",
        limit: 0.0125,
      },
    ],
    quiet: [
      sound,
      // a row goes round it
      () => hullBoat(["from: 2000 mm, to: 2040 mm", "from: 1600 mm, to: 1640 mm"]),
    ],
  },
  "pull-passes": {
    raises: [
      {
        boat: () => hullBoat(["passes: 6 mm", "passes: 20 mm"]),
        at: "lamp lead 1",
        level: "mend",
        figure: 0.023,
      },
      { boat: () => hullBoat([", passes: 6 mm", ""]), at: "lamp", level: "unchecked" },
    ],
    quiet: [sound],
  },
  "row-fit": {
    raises: [{ boat: () => hullBoat(rowTo(1420)), at: "lamp", level: "mend", figure: 0.02, limit: 0.048 }],
    quiet: [sound, () => hullBoat(rowTo(1449))],
  },
  "sealant-bond": {
    raises: [
      {
        boat: () => hullBoat(["inset: 80 mm", "inset: 80 mm\n    material: polyethylene"]),
        at: "lamp 1",
        level: "mend",
      },
    ],
    quiet: [
      sound,
      () =>
        hullBoat(
          ["inset: 80 mm", "inset: 80 mm\n    material: polyethylene"],
          ["water: sealed}", "water: sealed, seal: gasket}"],
        ),
    ],
  },
  "step-drill-sheet": {
    raises: [
      {
        boat: () => hullBoat(["size: 22 mm, flange: 30 mm", "size: 22 mm, tool: step drill, flange: 30 mm"]),
        at: "switch",
        level: "mend",
        figure: 12,
        limit: 4,
      },
    ],
    quiet: [
      sound,
      () => hullBoat(["size: 22 mm, flange: 30 mm", "size: 22 mm, tool: hole saw, flange: 30 mm"]),
    ],
  },
} as const satisfies Record<string, RuleCase>;
