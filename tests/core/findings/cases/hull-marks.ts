import type { RuleCase } from "../case.js";
import { type Change, hullBoat, type Readings, withReadings } from "../hull-boat.js";

const sound = () => hullBoat();
/** Readings at every mark, as they stand where they should. */
const right: Readings = {
  "lamp 1": { knee: 1302, bracket: 230, step: 834, pin: 604 },
  "lamp 2": { pin: 1203, knee: 703, bracket: 644, step: 305 },
  "lamp 3": { pin: 1203, knee: 703, bracket: 644, step: 305 },
  "lamp 4": { knee: 1302, bracket: 230, step: 834, pin: 604 },
  switch: { "board left": 224, "board right": 224, "board top": 224 },
};
const measured = (change: Readings = {}) => hullBoat(withReadings({ ...right, ...change }));
const drop = (...names: string[]): Change[] => names.map((name) => [new RegExp(` {2}${name}: .*\n`), ""]);
const tapesOnly: Change = ["checked:", "marks: {method: two tapes}\nchecked:"];
const apart = (starboard: number): Change => [
  "  bracket: {face: lining, along: 1300 mm, off: 330 mm, pair: true}",
  `  stem: {at: [4200 mm, 0 mm, 100 mm]}\n  bracket: {face: lining, along: 1300 mm, off: 330 mm, pair: true, measured: [{from: stem, port: 2700 mm, starboard: ${starboard} mm}]}`,
];

export const markCases = {
  "mark-unreachable": {
    raises: [
      {
        boat: () => hullBoat(tapesOnly, ...drop("board right", "board top")),
        at: "switch",
        level: "mend",
        figure: 1,
        limit: 2,
        says: /^Only one tape reaches switch; a mark takes 2, from two points\.$/,
      },
      {
        boat: () => hullBoat(["checked:", "marks: {method: two tapes, longest: 200 mm}\nchecked:"]),
        at: "switch",
        level: "mend",
        figure: 0,
        limit: 2,
        says: /^No tape reaches switch; a mark takes 2, from two points\.$/,
      },
    ],
    quiet: [sound],
  },
  "mark-poor-crossing": {
    raises: [
      {
        boat: () =>
          hullBoat(tapesOnly, ...drop("board top"), [
            "board right: {face: board, along: 400 mm, off: 0 mm}",
            "board right: {face: board, along: 60 mm, off: 10 mm}",
          ]),
        at: "switch",
        level: "mend",
        limit: 30,
      },
    ],
    quiet: [sound],
  },
  "mark-without-check": {
    raises: [{ boat: () => hullBoat(...drop("board top")), at: "switch", level: "mind" }],
    quiet: [sound],
  },
  "mark-mirror": {
    raises: [
      {
        boat: () =>
          hullBoat(
            [
              "board left: {face: board, along: 0 mm, off: 0",
              "board left: {face: board, along: 0 mm, off: 40",
            ],
            [
              "board right: {face: board, along: 400 mm, off: 0",
              "board right: {face: board, along: 400 mm, off: 40",
            ],
            [
              "board top: {face: board, along: 0 mm, off: 200",
              "board top: {face: board, along: 200 mm, off: 40",
            ],
            ["at: {along: 200 mm, off: 100 mm}\n", "at: {along: 100 mm, off: 75 mm}\n"],
          ),
        at: "switch",
        level: "mind",
      },
    ],
    quiet: [sound],
  },
  "mark-misplaced": {
    raises: [
      {
        boat: () => measured({ "lamp 2": { pin: 1208, knee: 698, bracket: 648, step: 301 } }),
        at: "lamp 2",
        level: "stop",
        limit: 0.002,
      },
    ],
    quiet: [
      sound,
      () => measured(),
      () => measured({ "lamp 2": { pin: 1204, knee: 702, bracket: 645, step: 305 } }),
    ],
  },
  "mark-reading-doubt": {
    raises: [
      {
        boat: () => measured({ "lamp 2": { pin: 1203, knee: 718, bracket: 644, step: 305 } }),
        at: "lamp 2",
        level: "mend",
        figure: 4,
      },
      { boat: () => hullBoat(withReadings({ "lamp 1": { "board top": 800 } })), at: "lamp 1", level: "mend" },
    ],
    quiet: [sound, () => measured()],
  },
  "marks-not-measured": {
    raises: [
      { boat: sound, at: "lamp 1", level: "unchecked" },
      { boat: () => measured({ switch: {} }), at: "switch", level: "unchecked" },
    ],
    quiet: [() => measured()],
  },
  "sides-differ": {
    raises: [
      { boat: () => hullBoat(apart(2712)), at: "lining", level: "mind", limit: 0.002 },
      {
        // the pin to starboard stands 9 mm farther forward: both marks read so from it, and agree with all else
        boat: () =>
          measured({
            "lamp 3": { pin: 1194, knee: 703, bracket: 644, step: 305 },
            "lamp 4": { knee: 1302, bracket: 230, step: 834, pin: 595 },
          }),
        at: "pin",
        level: "mind",
      },
    ],
    quiet: [sound, () => measured(), () => hullBoat(apart(2701))],
  },
} as const satisfies Record<string, RuleCase>;
