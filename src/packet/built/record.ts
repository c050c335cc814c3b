import type { Figures } from "../../core/figures-types.js";
import type { JudgedReading } from "../../core/proving/taken/judge.js";
import type { ProofWords } from "../../words/proof/proof-words.js";
import { branchWords, pointWords, readingWords, verdictSentence } from "../../words/proving.js";
import type { Column, Row } from "../table.js";
import type { BuiltWords } from "./built.js";

export const readingColumns = ({ heads }: BuiltWords): readonly Column[] => [
  { heading: heads.at, share: 62 },
  { heading: heads.against, share: 62 },
  { heading: heads.on, share: 44 },
  { heading: heads.shown, share: 28, align: "right" },
  { heading: heads.when, share: 36 },
  { heading: heads.note, share: 56 },
];

/** @param judged Readings of the project in hand: those that a mend has taken back are said to be so. */
export function readingRows(
  { readings, projects }: Figures["plan"]["source"]["work"],
  judged: readonly JudgedReading[],
  words: BuiltWords,
  proof: ProofWords,
): Row[] {
  const mended = new Map(
    judged.flatMap((one) => (one.mended ? [[one.taken, verdictSentence(one, proof)] as const] : [])),
  );
  return [...projects.flatMap((project) => project.readings), ...readings].map(
    (one): Row => ({
      cells: [
        one.against === undefined ? branchWords(one.at, proof) : pointWords(one.at, proof.proving.points),
        one.against === undefined ? "" : pointWords(one.against, proof.proving.points),
        [...one.withOn, ...(one.lifted ?? []).map((id) => words.without(branchWords(id, proof)))].join(", "),
        readingWords(one.kind, one.value, proof),
        one.when ?? "",
        [...(mended.has(one) ? [mended.get(one)] : []), ...(one.note ? [one.note] : [])].join("; "),
      ],
    }),
  );
}

export const mendColumns = ({ heads }: BuiltWords): readonly Column[] => [
  { heading: heads.what, share: 80 },
  { heading: heads.when, share: 36 },
  { heading: heads.note, share: 90 },
];

export const projectColumns = ({ heads }: BuiltWords): readonly Column[] => [
  { heading: heads.project, share: 50 },
  { heading: heads.finished, share: 36 },
  { heading: heads.note, share: 120 },
];
