import type { SheetSection, SheetTest } from "../core/proving/sheet/types.js";
import { counted } from "../words/numbers.js";
import { english } from "../words/proof/english.js";
import { expectedWords, howWords, sectionWords, settingWords } from "../words/test-sheet.js";
import type { Paper } from "./page.js";
import { paragraph } from "./piece.js";
import { flowing, type Section } from "./section.js";
import { type Column, groupedTable, type Row } from "./table.js";

const columns: readonly Column[] = [
  { heading: "", share: 6.5, hand: "tick" },
  { heading: "Test", share: 44 },
  { heading: "Where and how", share: 74 },
  { heading: "Expect", share: 31 },
  { heading: "With", share: 25 },
  { heading: "Reads", share: 19, hand: "write" },
  { heading: "Stop for", share: 50 },
];

/** What to prove, in order, with room for what the meter shows. */
export function testSheetSection(sheet: readonly SheetSection[], paper: Paper): Section {
  const widthMm = paper.right - paper.left;
  const sections = sheet.filter(({ tests }) => tests.length > 0);
  const count = sections.reduce((sum, { tests }) => sum + tests.length, 0);
  const pieces = [
    paragraph({ text: explanation, colour: "soft", sizePt: 9.5 }, widthMm, 1),
    paragraph({ text: caution, colour: "accent", weight: "semibold", sizePt: 9.5 }, widthMm, 1),
    ...groupedTable(
      columns,
      sections.map((section) => ({ name: sectionWords(section), rows: section.tests.map(rowOf) })),
      widthMm,
    ),
  ];
  return flowing("Test sheet", counted(count, "test"), count === 0 ? [] : pieces, paper);
}

const rowOf = (test: SheetTest): Row => ({
  cells: [
    "",
    english.sheet.tests[test.test],
    howWords(test),
    expectedWords(test),
    settingWords(test),
    "",
    { words: [{ text: english.sheet.stops[test.stop], sizePt: 9.5 }] },
  ],
});

const explanation =
  "Expect: between these limits lie ninety-nine of a hundred sound boats built to this plan, battery, copper, joints, gear and a plain pocket meter taken within their usual tolerances (common practice). Of alike gear the piece farthest away is named; what holds for it holds for the others. Write down what the meter shows: it is what later readings are compared with.";
const caution =
  "Batteries can weld, burn and gas: rings off, posts covered, one hand where it is live. Ohms only with every battery apart. No pump dry for longer than its maker allows. Where you are not sure, have it done.";
