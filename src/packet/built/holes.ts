import type { Figures } from "../../core/figures-types.js";
import type { Shows } from "../../core/plan/model/plan.js";
import type { WorkFigures } from "../../core/work/plan-work.js";
import { plannedHoles } from "../../core/work/planned-holes.js";
import { boreWords } from "../../words/hull-words.js";
import type { PaperWords } from "../../words/paper/paper-words.js";
import type { Column, Row } from "../table.js";
import { type Built, type BuiltWords, how } from "./built.js";

export const holeColumns = ({ heads }: BuiltWords): readonly Column[] => [
  { heading: heads.hole, share: 38 },
  { heading: heads.face, share: 32 },
  { heading: heads.plannedPlace, share: 54 },
  { heading: heads.asBuilt, share: 54, hand: "write" },
  { heading: heads.size, share: 34, align: "right" },
  { heading: heads.behind, share: 40 },
  { heading: heads.how, share: 60, hand: "write" },
];

export function holeRows(
  { plan }: Figures,
  { facts }: WorkFigures,
  { holes }: Built,
  shows: Shows,
  { work: { built: words }, of }: PaperWords,
): Row[] {
  const { sides } = of.labels;
  const known = new Map(holes.map((one) => [one.hole, one]));
  const rows = plannedHoles(plan).map((wanted): Row => {
    const one = known.get(wanted.hole);
    known.delete(wanted.hole);
    const at = wanted.at ?? facts.holes?.get(wanted.hole)?.at;
    const cutMm =
      facts.holes?.get(wanted.hole)?.cutMm ?? (wanted.sizeM === undefined ? undefined : wanted.sizeM * 1000);
    const behind = one?.behind ?? facts.holes?.get(wanted.hole)?.behind ?? "";
    return {
      cells: [
        { words: [{ text: wanted.hole, weight: "semibold" }] },
        `${wanted.on}, ${sides[wanted.side]}`,
        wanted.there ? words.thereBefore : at === undefined ? words.inRow : of.record.place(at, shows),
        one === undefined ? "" : of.record.place(one.at, shows),
        `${cutMm === undefined ? "–" : boreWords(cutMm)} / ${one === undefined ? "      " : boreWords(one.sizeM * 1000)}`,
        behind,
        how(one, words),
      ],
    };
  });
  const gone = [...known.values()].map(
    (one): Row => ({
      cells: [
        { words: [{ text: one.hole, weight: "semibold" }] },
        `${one.on}, ${sides[one.side]}`,
        words.notInPlan,
        of.record.place(one.at, shows),
        `– / ${boreWords(one.sizeM * 1000)}`,
        one.behind ?? "",
        how(one, words),
      ],
    }),
  );
  return [...rows, ...gone];
}
