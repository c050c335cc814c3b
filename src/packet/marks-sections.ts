import type { FaceFigures, HullFigures, SideFigures } from "../core/hull/figures.js";
import type { Mark } from "../core/hull/marks/mark.js";
import type { Shows } from "../core/plan/model/plan.js";
import { marksScale, scaleBar } from "../drawing/hull/marks-scale.js";
import { marksView } from "../drawing/hull/marks-view.js";
import { points, text } from "../drawing/make.js";
import { figure } from "../drawing/parts.js";
import { readingWords } from "../words/hull-words.js";
import { lengthWords } from "../words/numbers.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { seenWords } from "../words/step-drawing-words.js";
import { flow } from "./flow.js";
import { referenceLegend } from "./marks-legend.js";
import { markColumns, markRow, tableHead, verdictRow } from "./marks-table.js";
import type { Paper } from "./page.js";
import { type Piece, paragraph, space } from "./piece.js";
import type { Section } from "./section.js";

type MarkWords = PaperWords["hull"]["marks"];

/** A sheet for each side of each face that has marks: a drawing to scale, and the readings large enough to stand beside the boat with. */
export function marksSections(hull: HullFigures, shows: Shows, paper: Paper, words: PaperWords): Section[] {
  const say = words.hull.marks;
  return hull.faces.flatMap((face) =>
    face.sides
      .filter(({ marks }) => marks.length > 0)
      .map((side): Section => {
        const name = face.plan.pair ? `${face.name}, ${words.of.labels.sides[side.side]}` : face.name;
        return {
          title: say.title(name),
          subtitle: subtitle(hull, shows, side, say),
          pages: flow(pieces(hull, face, side, shows, paper, words), paper),
        };
      }),
  );
}

function subtitle(hull: HullFigures, shows: Shows, { marks }: SideFigures, words: MarkWords): string {
  const { graduationM, lies, side } = hull.plan.marks;
  const division = readingWords(graduationM, graduationM, shows);
  return words.subtitle(words.count(marks.length), side === "inside", lies === "straight", division);
}

/** The drawing is no higher than this, and lower where the face is slender [mm]. */
const mostDrawingMm = 66;
const footMm = 8;

function pieces(
  hull: HullFigures,
  face: FaceFigures,
  side: SideFigures,
  shows: Shows,
  paper: Paper,
  words: PaperWords,
): Piece[] {
  const widthMm = paper.right - paper.left;
  const say = words.hull.marks;
  const table = { columns: markColumns };
  const head = tableHead(say, widthMm, table);
  return [
    drawing(hull, face, side, shows, words, widthMm),
    ...referenceLegend(hull, side, shows, words, widthMm),
    space(1),
    head,
    ...side.marks.flatMap((one, index): Piece[] => {
      const row = markRow(hull, side, one, index + 1, { shows, words, widthMm, head, table });
      const said = verdictRow(hull, side, one.mark.name, shows, words, widthMm);
      return said.length === 0 ? [row] : [{ ...row, keepWithNext: true }, ...said];
    }),
    space(3),
    paragraph({ text: howTo(face, side, shows, say), sizePt: 10, maxLines: 6 }, widthMm),
  ];
}

function howTo({ plan }: FaceFigures, { marks }: SideFigures, shows: Shows, words: MarkWords): string {
  const has = (method: Mark["method"]) => marks.some(({ mark }) => mark.method === method);
  return [
    ...(has("two tapes") ? [words.twoTapes] : []),
    ...(has("along then square") ? [words.square] : []),
    words.check,
    words.order,
    ...(plan.shape.kind === "strip" ? [words.strip(lengthWords(plan.shape.fromM, shows))] : []),
    ...(plan.pair ? [words.pair] : []),
    words.before,
  ].join(" ");
}

function drawing(
  hull: HullFigures,
  face: FaceFigures,
  side: SideFigures,
  shows: Shows,
  { hull: { marks: words }, frame, of }: PaperWords,
  widthMm: number,
): Piece {
  const { scale, heightMm: viewMm } = marksScale(side, widthMm, mostDrawingMm, shows.lengths);
  const heightMm = viewMm + footMm;
  return {
    heightMm,
    draw: (x, top) => {
      const room = { left: x, bottom: top - viewMm, widthMm, heightMm: viewMm };
      const inside = hull.plan.marks.side === "inside";
      const view = marksView(side, room, scale, inside);
      const footY = top - heightMm + 3;
      const barM = scaleBarM(scale, shows);
      const bar = words.scale(scale, lengthWords(barM, shows));
      const seen = seenWords(face.plan, inside, view.bowRight, of.drawn);
      return [
        ...figure(words.title(face.name), view.shapes, frame.drawn),
        ...scaleBar(x, footY + 1, (barM * 1000) / scale, bar),
        text(x + widthMm, footY, `${seen}. ${of.drawn.step.notByDrawing}`, {
          sizeMm: points(9),
          anchor: "end",
          colour: "soft",
        }),
      ];
    },
  };
}

/** A round length that is some 25 mm on the drawing [m]. */
function scaleBarM(scale: number, shows: Shows): number {
  const lengths =
    shows.lengths === "inches"
      ? [1, 2, 3, 6, 12, 24, 48].map((inches) => inches * 0.0254)
      : [0.02, 0.05, 0.1, 0.2, 0.5, 1, 2];
  return lengths.findLast((lengthM) => (lengthM * 1000) / scale <= 32) ?? lengths[0] ?? 0.1;
}
