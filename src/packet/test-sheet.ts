import type { SheetSection, SheetTest } from "../core/proving/sheet/types.js";
import { counted } from "../words/numbers.js";
import { english } from "../words/proof/english.js";
import { expectedWords, howWords, sectionWords, settingWords } from "../words/test-sheet.js";
import { flow } from "./flow.js";
import type { Paper } from "./page.js";
import { heading, type Piece, paragraph, space } from "./piece.js";
import type { Section } from "./section.js";
import { type Column, type Row, table } from "./table.js";
import { tickedRow } from "./tick.js";

const columns: readonly Column[] = [
  { heading: "", share: 8 },
  { heading: "Test", share: 44 },
  { heading: "Where and how", share: 92 },
  { heading: "Expect", share: 36 },
  { heading: "With", share: 28 },
  { heading: "Reads", share: 22 },
  { heading: "Stop for", share: 66 },
];

/** What to prove, in order, with room for what the meter shows. */
export function testSheetSection(sheet: readonly SheetSection[], paper: Paper): Section {
  const widthMm = paper.right - paper.left;
  const sections = sheet.filter(({ tests }) => tests.length > 0);
  const count = sections.reduce((sum, { tests }) => sum + tests.length, 0);
  const pieces = [
    paragraph({ text: explanation, colour: "soft", sizePt: 9.5 }, widthMm, 1),
    paragraph({ text: caution, colour: "accent", weight: "semibold", sizePt: 9.5 }, widthMm, 1),
    ...sections.flatMap((section): Piece[] => {
      const [head, ...rows] = table(columns, section.tests.map(rowOf), widthMm);
      return [
        heading(sectionWords(section), widthMm),
        ...(head ? [head] : []),
        ...rows.map(tickedRow),
        space(2),
      ];
    }),
  ];
  return {
    title: "Test sheet",
    subtitle: counted(count, "test"),
    pages: count === 0 ? [] : flow(pieces, paper),
  };
}

const rowOf = (test: SheetTest): Row => ({
  cells: [
    "",
    english.sheet.tests[test.test],
    howWords(test),
    expectedWords(test),
    settingWords(test),
    "",
    english.sheet.stops[test.stop],
  ],
});

const explanation =
  "Expect: between these limits lie ninety-nine of a hundred sound boats built to this plan, battery, copper, joints, gear and a plain pocket meter taken within their usual tolerances (common practice). Of alike gear the piece farthest away is named; what holds for it holds for the others. Write down what the meter shows: it is what later readings are compared with.";
const caution =
  "Batteries can weld, burn and gas: rings off, posts covered, one hand where it is live. Ohms only with every battery apart. No pump dry for longer than its maker allows. Where you are not sure, have it done.";
