import type { HoleFigures, HullFigures } from "../core/hull/figures.js";
import type { Shows } from "../core/plan/model/plan.js";
import {
  behindWords,
  boreWords,
  heelWords,
  heightWords,
  mindWords,
  sealantWords,
  sealWords,
  toolWords,
} from "../words/hull-words.js";
import { lengthWords, noFigure } from "../words/numbers.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import type { Paper } from "./page.js";
import { paragraph, space } from "./piece.js";
import { pullingPieces } from "./pulling-pieces.js";
import { flowing, type Section } from "./section.js";
import { type Cell, type Column, type Row, table } from "./table.js";

const columns = ({ heads }: PaperWords["hull"]["holes"]): readonly Column[] => [
  { heading: heads.hole, share: 44 },
  { heading: heads.cut, share: 20, align: "right" },
  { heading: heads.tool, share: 44 },
  { heading: heads.edge, share: 34, align: "right" },
  { heading: heads.water, share: 46 },
  { heading: heads.over, share: 30, align: "right" },
  { heading: heads.behind, share: 56 },
];

/** Every hole: what to cut it with, what seals it, what is behind, and what the water does there. Six alike on one line. */
export function holeList(hull: HullFigures, shows: Shows, paper: Paper, words: PaperWords): Section {
  const say = words.hull.holes;
  const widthMm = paper.right - paper.left;
  const groups = [...new Set(hull.holes.map(({ face, group }) => `${face}\n${group}`))].map((key) =>
    hull.holes.filter(({ face, group }) => `${face}\n${group}` === key),
  );
  const rows = groups.flatMap((holes) => row(holes, shows, words));
  const intro = say.intro(sealantWords(hull.holes, words.of.hull));
  return flowing(
    hull.pulling.order.length > 0 ? say.withPulling : say.title,
    say.count(hull.holes.length),
    rows.length === 0
      ? []
      : [
          paragraph({ text: intro, sizePt: 9.5, colour: "soft" }, widthMm),
          space(2),
          ...table(columns(say), rows, widthMm),
          ...pullingPieces(hull, shows, words, widthMm),
        ],
    paper,
  );
}

function row(holes: readonly HoleFigures[], shows: Shows, { hull, of }: PaperWords): Row[] {
  const say = hull.holes;
  const words = of.hull;
  const lowest = holes.reduce<HoleFigures | undefined>(
    (low, one) =>
      (one.afloat?.heightM ?? 1e9) < (low?.afloat?.heightM ?? 1e9) || low === undefined ? one : low,
    undefined,
  );
  const [first] = holes;
  if (first === undefined || lowest === undefined) return [];
  const many = holes.length > 1;
  const name = many ? say.many(first.group, holes.length) : first.name;
  const edgeM = Math.min(
    ...holes.map(({ clearance }) => clearance?.edge?.distanceM ?? Number.POSITIVE_INFINITY),
  );
  const nextM = Math.min(
    ...holes.map(({ clearance }) => clearance?.nearestHole?.distanceM ?? Number.POSITIVE_INFINITY),
  );
  const mind = mindWords(first.tool, words);
  const from = ({ material, thicknessM, face }: HoleFigures) =>
    `${face}${material === undefined ? "" : `, ${words.material(material)}`}${thicknessM === undefined ? "" : ` ${boreWords(thicknessM * 1000)}`}`;
  const over: Cell = {
    words: [
      { text: many ? say.lowest(heightWords(lowest, shows, words)) : heightWords(lowest, shows, words) },
      {
        text: lowest.afloat === undefined ? "" : say.heel(heelWords(lowest, words)),
        sizePt: 9.5,
        colour: "soft",
      },
    ],
  };
  return [
    {
      cells: [
        {
          words: [
            { text: name, weight: "semibold" },
            { text: from(first), sizePt: 9.5, colour: "soft" },
          ],
        },
        {
          words: [
            {
              text: first.cut === undefined ? say.notKnown : boreWords(first.cut.holeMm),
              weight: "semibold",
            },
          ],
        },
        { words: [{ text: toolWords(first, words), maxLines: 3 }] },
        { words: [{ text: finite(edgeM, shows) }, { text: finite(nextM, shows), colour: "soft" }] },
        { words: [{ text: sealWords(first, words), maxLines: 3 }] },
        over,
        { words: [{ text: behindWords(first, shows, words) || say.notSaid, sizePt: 9.5, maxLines: 4 }] },
      ],
      ...(mind === "" || first.there ? {} : { note: { text: mind, sizePt: 9.5, colour: "soft" } }),
    },
  ];
}

const finite = (lengthM: number, shows: Shows) =>
  Number.isFinite(lengthM) ? lengthWords(lengthM, shows) : noFigure;
