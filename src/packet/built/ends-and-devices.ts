import type { Figures } from "../../core/figures-types.js";
import type { LayoutWords } from "../../words/layout/english.js";
import { marked } from "../../words/numbers.js";
import type { PaperWords } from "../../words/paper/paper-words.js";
import { pathWords } from "../../words/path-words.js";
import type { Column, Row } from "../table.js";
import type { Built, BuiltWords } from "./built.js";

export const jointColumns = ({ heads }: BuiltWords): readonly Column[] => [
  { heading: heads.run, share: 50 },
  { heading: heads.startPlanned, share: 40 },
  { heading: heads.asMade, share: 40, hand: "write" },
  { heading: heads.endPlanned, share: 40 },
  { heading: heads.asMade, share: 40, hand: "write" },
  { heading: heads.when, share: 36, hand: "write" },
];

export function jointRows({ plan }: Figures, { joints }: Built, { joint }: LayoutWords): Row[] {
  const said = (kind: string | undefined) => (kind === undefined ? "" : joint(kind));
  return plan.runs.map((run): Row => {
    const [start, end] = (["start", "end"] as const).map((which) =>
      joints.find((one) => one.at === run.name && one.end === which),
    );
    return {
      cells: [
        { words: [{ text: run.name, weight: "semibold" }] },
        said(run.jointAtStart),
        said(start?.kind),
        said(run.jointAtEnd),
        said(end?.kind),
        end?.when ?? start?.when ?? "",
      ],
    };
  });
}

export const deviceColumns = ({ heads }: BuiltWords): readonly Column[] => [
  { heading: heads.device, share: 70 },
  { heading: heads.planned, share: 30, align: "right" },
  { heading: heads.fitted, share: 30, align: "right", hand: "write" },
  { heading: heads.when, share: 60, hand: "write" },
];

export function deviceRows(
  { protection }: Figures,
  { ratings }: Built,
  { work: { built: words }, of }: PaperWords,
): Row[] {
  return protection.map(({ id, ratingA, spare }): Row => {
    const one = ratings.find(({ device }) => device === id);
    return {
      cells: [
        { words: [{ text: pathWords(id, of.findings.path), weight: "semibold" }] },
        spare ? words.noneYet : marked(ratingA, "A"),
        one === undefined ? "" : marked(one.ratingA, "A"),
        one?.when ?? "",
      ],
    };
  });
}
