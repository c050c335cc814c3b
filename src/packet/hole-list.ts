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
import { counted, lengthWords, noFigure } from "../words/numbers.js";
import type { Paper } from "./page.js";
import { paragraph, space } from "./piece.js";
import { pullingPieces } from "./pulling-pieces.js";
import { flowing, type Section } from "./section.js";
import { type Cell, type Column, type Row, table } from "./table.js";

const columns: readonly Column[] = [
  { heading: "Hole", share: 44 },
  { heading: "Cut", share: 20, align: "right" },
  { heading: "Tool", share: 44 },
  { heading: "To the edge; to the next", share: 34, align: "right" },
  { heading: "Water and sealing", share: 46 },
  { heading: "Over still water", share: 30, align: "right" },
  { heading: "Behind it", share: 56 },
];

/** Every hole: what to cut it with, what seals it, what is behind, and what the water does there. Six alike on one line. */
export function holeList(hull: HullFigures, shows: Shows, paper: Paper): Section {
  const widthMm = paper.right - paper.left;
  const groups = [...new Set(hull.holes.map(({ face, group }) => `${face}\n${group}`))].map((key) =>
    hull.holes.filter(({ face, group }) => `${face}\n${group}` === key),
  );
  const rows = groups.flatMap((holes) => row(holes, shows));
  const intro = `Measure each fitting with a caliper before cutting. ${sealantWords(hull.holes)} Let a drill's first pilot tell you what is behind before the large tool does.`;
  return flowing(
    hull.pulling.order.length > 0 ? "Hole list, and pulling the wires" : "Hole list",
    counted(hull.holes.length, "hole"),
    rows.length === 0
      ? []
      : [
          paragraph({ text: intro, sizePt: 9.5, colour: "soft" }, widthMm),
          space(2),
          ...table(columns, rows, widthMm),
          ...pullingPieces(hull, shows, widthMm),
        ],
    paper,
  );
}

function row(holes: readonly HoleFigures[], shows: Shows): Row[] {
  const lowest = holes.reduce<HoleFigures | undefined>(
    (low, one) =>
      (one.afloat?.heightM ?? 1e9) < (low?.afloat?.heightM ?? 1e9) || low === undefined ? one : low,
    undefined,
  );
  const [first] = holes;
  if (first === undefined || lowest === undefined) return [];
  const many = holes.length > 1;
  const name = many ? `${first.group}, ${holes.length} of them` : first.name;
  const edgeM = Math.min(
    ...holes.map(({ clearance }) => clearance?.edge?.distanceM ?? Number.POSITIVE_INFINITY),
  );
  const nextM = Math.min(
    ...holes.map(({ clearance }) => clearance?.nearestHole?.distanceM ?? Number.POSITIVE_INFINITY),
  );
  const mind = mindWords(first.tool);
  const from = ({ material, thicknessM, face }: HoleFigures) =>
    `${face}${material === undefined ? "" : `, ${material}`}${thicknessM === undefined ? "" : ` ${boreWords(thicknessM * 1000)}`}`;
  const over: Cell = {
    words: [
      { text: `${many ? "lowest " : ""}${heightWords(lowest, shows)}` },
      { text: lowest.afloat === undefined ? "" : `heel ${heelWords(lowest)}`, sizePt: 9.5, colour: "soft" },
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
            { text: first.cut === undefined ? "not known" : boreWords(first.cut.holeMm), weight: "semibold" },
          ],
        },
        { words: [{ text: toolWords(first), maxLines: 3 }] },
        { words: [{ text: finite(edgeM, shows) }, { text: finite(nextM, shows), colour: "soft" }] },
        { words: [{ text: sealWords(first), maxLines: 3 }] },
        over,
        { words: [{ text: behindWords(first, shows) || "not said", sizePt: 9.5, maxLines: 4 }] },
      ],
      ...(mind === "" || first.there ? {} : { note: { text: mind, sizePt: 9.5, colour: "soft" } }),
    },
  ];
}

const finite = (lengthM: number, shows: Shows) =>
  Number.isFinite(lengthM) ? lengthWords(lengthM, shows) : noFigure;
