import type { SheetSection, SheetTest } from "../core/proving/sheet/types.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import type { ProofWords } from "../words/proof/proof-words.js";
import { expectedWords, howWords, sectionWords, settingWords } from "../words/test-sheet.js";
import type { Paper } from "./page.js";
import { paragraph, space } from "./piece.js";
import { flowing, type Section } from "./section.js";
import { signPiece } from "./sign.js";
import { type Column, groupedTable, type Row } from "./table.js";

const columns = ({ heads }: PaperWords["work"]["tests"]): readonly Column[] => [
  { heading: "", share: 6.5, hand: "tick" },
  { heading: heads.test, share: 44 },
  { heading: heads.how, share: 71 },
  { heading: heads.expect, share: 31 },
  { heading: heads.with, share: 29 },
  { heading: heads.reads, share: 19, hand: "write" },
  { heading: heads.stop, share: 49 },
];

/** What to prove, in order, with room for what the meter shows. */
export function testSheetSection(
  sheet: readonly SheetSection[],
  paper: Paper,
  { work: { tests: words }, frame, of: { proof } }: PaperWords,
): Section {
  const widthMm = paper.right - paper.left;
  const sections = sheet.filter(({ tests }) => tests.length > 0);
  const count = sections.reduce((sum, { tests }) => sum + tests.length, 0);
  const pieces = [
    paragraph({ text: words.explanation, colour: "soft", sizePt: 9.5 }, widthMm, 1),
    paragraph({ text: words.caution, colour: "accent", weight: "semibold", sizePt: 9.5 }, widthMm, 1),
    ...groupedTable(
      columns(words),
      sections.map((section) => ({
        name: sectionWords(section, proof),
        rows: section.tests.map((test) => rowOf(test, proof)),
      })),
      widthMm,
      frame.continued,
    ),
    space(6),
    signPiece(frame.signed, widthMm),
  ];
  return flowing(words.title, words.count(count), count === 0 ? [] : pieces, paper);
}

const rowOf = (test: SheetTest, words: ProofWords): Row => ({
  cells: [
    "",
    words.sheet.tests[test.test],
    howWords(test, words),
    expectedWords(test, words),
    settingWords(test, words),
    "",
    { words: [{ text: words.sheet.stops[test.stop], sizePt: 9.5 }] },
  ],
});
