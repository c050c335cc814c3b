import type { FaceName } from "../../core/plan/model/layout.js";
import type { WorkFigures } from "../../core/work/plan-work.js";
import { boreWords } from "../../words/hull-words.js";
import type { PaperWords } from "../../words/paper/paper-words.js";
import type { Column, Row } from "../table.js";
import { type Built, type BuiltWords, how } from "./built.js";

export const entryColumns = ({ heads }: BuiltWords): readonly Column[] => [
  { heading: heads.box, share: 34 },
  { heading: heads.for, share: 44 },
  { heading: heads.side, share: 24 },
  { heading: heads.along, share: 40 },
  { heading: heads.size, share: 40, align: "right" },
  { heading: heads.how, share: 62, hand: "write" },
];

export function entryRows(
  { facts }: WorkFigures,
  { entries }: Built,
  { work: { built: words }, of }: PaperWords,
): Row[] {
  const { faces } = of.layout;
  const at = (on: FaceName, [along, base]: readonly [number, number]) =>
    [faces[on], `${boreWords(along * 1000)}, ${boreWords(base * 1000)}`] as const;
  const left = [...entries];
  const rows = [...(facts.entries ?? [])].flatMap(([box, list]) =>
    list.map((wanted): Row => {
      const index = left.findIndex((one) => one.box === box && one.run === wanted.run);
      const [one] = index < 0 ? [] : left.splice(index, 1);
      const [side, place] =
        one !== undefined
          ? at(one.on, one.atM)
          : wanted.on !== undefined && wanted.atM !== undefined
            ? at(wanted.on, wanted.atM)
            : ["", ""];
      return {
        cells: [
          { words: [{ text: box, weight: "semibold" }] },
          wanted.run,
          side,
          place,
          `${boreWords(wanted.holeMm)} / ${one === undefined ? "      " : boreWords(one.holeM * 1000)}`,
          how(one, words),
        ],
      };
    }),
  );
  return [
    ...rows,
    ...left.map(
      (one): Row => ({
        cells: [
          one.box,
          one.run,
          ...at(one.on, one.atM),
          `– / ${boreWords(one.holeM * 1000)}`,
          how(one, words),
        ],
      }),
    ),
  ];
}
