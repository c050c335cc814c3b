import type { RuleCase } from "../case.js";
import { type Change, hullBoat } from "../hull-boat.js";

const sound = () => hullBoat();
/** The form as a table of offsets instead. */
const table = (text: string): Change => [
  /form:\n(?: {4}.*\n)+/,
  `form:\n    numbers: mm\n    offsets: |\n${text
    .split("\n")
    .map((line) => `      ${line}`)
    .join("\n")}\n`,
];
const rows = (sheer: string, head = "half-breadth") =>
  [
    `station,keel height,chine half-breadth,chine height,sheer ${head},sheer height`,
    `0,60,550,100,${sheer},500`,
    "1500,0,600,40,750,500",
    "3000,20,500,60,650,520",
    "4200,90,300,130,400,560",
  ].join("\n");
const outOfOrder: Change = ["[0 mm, 600 mm, 1200 mm", "[0 mm, 1200 mm, 600 mm"];
const sheer = /(sheer: \{half-breadths: \[\d+ mm, \d+ mm, \d+ mm, )743 mm/;

export const formCases = {
  "form-stations": {
    raises: [{ boat: () => hullBoat(outOfOrder), at: "sheer", level: "mend", figure: 0.6, limit: 1.2 }],
    quiet: [sound],
  },
  "form-table": {
    raises: [
      { boat: () => hullBoat(table(rows("7oo"))), at: "line 2, column 5", level: "mend" },
      { boat: () => hullBoat(table(rows("700", "breadth"))), at: "column 5", level: "mend" },
    ],
    quiet: [sound, () => hullBoat(table(rows("700")))],
  },
  "form-lines-cross": {
    raises: [
      {
        boat: () => hullBoat([/(sheer: .*heights: \[\d+ mm, )516 mm/, "$120 mm"]),
        at: "sheer",
        level: "mend",
      },
    ],
    quiet: [sound],
  },
  "form-open-surface": {
    raises: [
      {
        boat: () => hullBoat([/(keel: \{heights: \[.*), \d+ mm\]/, "$1, none]"]),
        at: "keel",
        level: "mend",
        figure: 3.6,
        limit: 4.2,
      },
    ],
    quiet: [sound],
  },
  "form-unfair": {
    raises: [{ boat: () => hullBoat([sheer, "$1773 mm"]), at: "sheer at 1.800 m", level: "mend" }],
    quiet: [sound, () => hullBoat([sheer, "$1745 mm"])],
  },
  "form-contradiction": {
    raises: [
      {
        boat: () => hullBoat(["breadth: 1486 mm", "breadth: 1500 mm"]),
        at: "sheer at 1.800 m",
        level: "mend",
        figure: 0.014,
      },
    ],
    quiet: [sound, () => hullBoat(["breadth: 1486 mm", "breadth: 1490 mm"])],
  },
  "form-not-judged": {
    raises: [
      {
        boat: () =>
          hullBoat([
            /(chine: \{half-breadths: \[(?:\d+ mm, ){4})\d+ mm, \d+ mm, \d+ mm/,
            "$1none, none, none",
          ]),
        at: "chine",
        level: "unchecked",
      },
    ],
    quiet: [sound],
  },
  "not-on-the-form": {
    raises: [
      {
        boat: () => hullBoat(["to: 3300 mm\n    inset", "to: 4500 mm\n    inset"]),
        at: "lining",
        level: "mend",
        figure: 4.5,
        limit: 4.2,
      },
      {
        boat: () => hullBoat(["strip: [chine, sheer]", "strip: [keel, sheer]"]),
        at: "lining",
        level: "mend",
      },
      {
        boat: () => hullBoat(["  pin: {", "  bow: {on: sheer, station: 5 m}\n  pin: {"]),
        at: "bow",
        level: "mend",
        figure: 5,
        limit: 4.2,
      },
      { boat: () => hullBoat(outOfOrder), at: "lining", level: "unchecked" },
    ],
    quiet: [sound],
  },
} as const satisfies Record<string, RuleCase>;
