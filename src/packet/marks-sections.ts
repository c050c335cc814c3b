import type { FaceFigures, HullFigures, SideFigures, SideMark } from "../core/hull/figures.js";
import { checkBandM } from "../core/hull/marks/band.js";
import type { SetReading } from "../core/hull/marks/mark.js";
import type { Shows } from "../core/plan/model/plan.js";
import { fitText } from "../drawing/fonts/wrap.js";
import { marksView, referenceLetters, scaleBar } from "../drawing/hull/marks-view.js";
import { box, line, points, strokes, text } from "../drawing/make.js";
import type { Shape } from "../drawing/shapes.js";
import { boreWords, edgeWords, readingWords, twinWords, wayWords } from "../words/hull-words.js";
import { counted, lengthWords } from "../words/numbers.js";
import { flow } from "./flow.js";
import type { Paper } from "./page.js";
import { type Piece, paragraph, space } from "./piece.js";
import type { Section } from "./section.js";

/** A sheet for each side of each face that has marks: a drawing to scale, and the readings large enough to stand beside the boat with. */
export function marksSections(hull: HullFigures, shows: Shows, paper: Paper): Section[] {
  return hull.faces.flatMap((face) =>
    face.sides
      .filter(({ marks }) => marks.length > 0)
      .map((side): Section => {
        const name = face.plan.pair ? `${face.name}, ${side.side}` : face.name;
        return {
          title: `Marks: ${name}`,
          subtitle: subtitle(hull, shows, side),
          pages: flow(pieces(hull, face, side, shows, paper), paper),
        };
      }),
  );
}

function subtitle(hull: HullFigures, shows: Shows, { marks }: SideFigures): string {
  const { graduationM, lies, side } = hull.plan.marks;
  const tape = lies === "straight" ? "tape pulled straight" : "tape lying on the surface";
  return `${counted(marks.length, "mark")}; from ${side}, ${tape}, read to ${readingWords(graduationM, graduationM, shows)}`;
}

const drawingMm = 74;

function pieces(
  hull: HullFigures,
  face: FaceFigures,
  side: SideFigures,
  shows: Shows,
  paper: Paper,
): Piece[] {
  const widthMm = paper.right - paper.left;
  const head = tableHead(widthMm);
  return [
    drawing(hull, face, side, shows, widthMm),
    legend(hull, side, shows, widthMm),
    space(2),
    head,
    ...side.marks.map((one, index) => markRow(hull, side, one, index + 1, shows, widthMm, head)),
    space(3),
    paragraph({ text: howTo(hull), sizePt: 10, maxLines: 4 }, widthMm),
  ];
}

function howTo(hull: HullFigures): string {
  const shared = hull.faces.some(({ plan }) => plan.pair);
  return `Put the end of the tape to the first point and swing an arc at its reading; the same from the second; mark where they cross. Then read the check and write it down: outside its ± something is wrong, so measure both tapes again before you think of drilling. Set out from top to bottom: surest first.${shared ? " A twin has its own sheet, with its own side's numbers." : ""} Know what is behind; set the drill's stop; drill the pilot only, and look.`;
}

function drawing(
  hull: HullFigures,
  face: FaceFigures,
  side: SideFigures,
  shows: Shows,
  widthMm: number,
): Piece {
  return {
    heightMm: drawingMm,
    draw: (x, top) => {
      const room = { left: x, bottom: top - drawingMm + 7, widthMm, heightMm: drawingMm - 7 };
      const inside = hull.plan.marks.side === "inside";
      const view = marksView(side, room, inside);
      const footY = top - drawingMm + 2.5;
      const barM = shows.lengths === "inches" ? 0.3048 : 0.5;
      const bar = `1 : ${view.scale}; the bar is ${lengthWords(barM, shows)}`;
      const seen =
        view.bowRight === undefined
          ? `as one looks at it, ${face.plan.shape.kind === "flat" ? `from ${face.plan.shape.looks}` : ""}`
          : `seen from ${inside ? "inside" : "outside"}; the bow is to the ${view.bowRight ? "right" : "left"}`;
      return [
        ...view.shapes,
        ...scaleBar(x, footY + 1, (barM * 1000) / view.scale, bar),
        text(x + widthMm, footY, `${seen}. Set out by the readings, not by this drawing.`, {
          sizeMm: points(9),
          anchor: "end",
          colour: "soft",
        }),
      ];
    },
  };
}

/** The letters of the drawing, and where each point is. */
function legend(hull: HullFigures, side: SideFigures, shows: Shows, widthMm: number): Piece {
  const letters = referenceLetters(side);
  const where = new Map(
    hull.plan.source.hull.references.map(({ name, place }) => {
      if (place.kind === "face")
        return [
          name,
          `${lengthWords(place.place.alongM, shows)} along, ${lengthWords(place.place.offM, shows)} off`,
        ] as const;
      if (place.kind === "at") return [name, "off the lines"] as const;
      const along = place.kind === "along" ? place.alongM : place.stationM;
      return [name, `on the ${place.line}, ${lengthWords(along, shows)}`] as const;
    }),
  );
  const words = [...letters].map(([name, letter]) => {
    const plain = where.get(name) ?? where.get(name.replace(/ (port|starboard)$/, ""));
    return `${letter} = ${name}${plain === undefined ? "" : ` (${plain})`}`;
  });
  return paragraph({ text: words.join(";  "), sizePt: 10.5, weight: "semibold", maxLines: 4 }, widthMm, 1);
}

/** Where each column starts, as a share of the width. */
const columns = { number: 0, name: 0.045, first: 0.3, second: 0.455, check: 0.61, read: 0.775, hole: 0.92 };
const rowMm = 14;

function tableHead(widthMm: number): Piece {
  const heads: [number, string][] = [
    [columns.name, "Mark"],
    [columns.first, "First tape"],
    [columns.second, "Second tape"],
    [columns.check, "Check should read"],
    [columns.read, "You read"],
    [columns.hole, "Hole"],
  ];
  return {
    heightMm: 6,
    keepWithNext: true,
    draw: (x, top) => [
      ...heads.map(([at, words]) =>
        text(x + at * widthMm + 1, top - 4, words, {
          sizeMm: points(9.5),
          weight: "semibold",
          colour: "soft",
        }),
      ),
      line(x, top - 6, x + widthMm, top - 6, strokes.line),
    ],
  };
}

function markRow(
  hull: HullFigures,
  side: SideFigures,
  one: SideMark,
  number: number,
  shows: Shows,
  widthMm: number,
  head: Piece,
): Piece {
  const { mark } = one;
  const { graduationM } = hull.plan.marks;
  const letters = referenceLetters(side);
  const hole = hull.holes.find(({ name }) => name === mark.name);
  const square = mark.method === "along then square";
  const from = ({ from: name }: SetReading) => letters.get(name) ?? name;
  const [first, second] = mark.readings;
  const cell = (at: number, reading: SetReading, under: string, roomMm: number): Shape[] => [
    text(x0 + at * widthMm + 1, y0 - 6.6, readingWords(Math.abs(reading.roundedM), graduationM, shows), {
      sizeMm: points(17),
      weight: "semibold",
    }),
    text(
      x0 + at * widthMm + 1,
      y0 - 11.6,
      fitText(under, roomMm, { sizeMm: points(10), weight: "regular" }),
      { sizeMm: points(10) },
    ),
  ];
  let [x0, y0] = [0, 0];
  const roomOf = (at: number, next: number) => (next - at) * widthMm - 3;
  return {
    heightMm: rowMm,
    head,
    draw: (x, top) => {
      [x0, y0] = [x, top];
      const band = checkBandM(mark);
      const nameRoom = roomOf(columns.name, columns.first);
      const twin = twinWords(one);
      return [
        text(x + 1, top - 7.4, String(number), { sizeMm: points(17), weight: "semibold", colour: "accent" }),
        text(
          x + columns.name * widthMm + 1,
          top - 6.2,
          fitText(mark.name, nameRoom, { sizeMm: points(12), weight: "semibold" }),
          { sizeMm: points(12), weight: "semibold" },
        ),
        text(
          x + columns.name * widthMm + 1,
          top - 11.4,
          fitText(twin === "" ? sureWords(one) : twin, nameRoom, { sizeMm: points(9.5), weight: "regular" }),
          { sizeMm: points(9.5), colour: "soft" },
        ),
        ...(first === undefined
          ? [
              text(x + columns.first * widthMm + 1, top - 7.4, "cannot be set out: see the findings", {
                sizeMm: points(11),
              }),
            ]
          : cell(
              columns.first,
              first,
              square
                ? `from ${from(first)}, ${wayWords(mark.edge ?? "", first.roundedM, side.face)}`
                : `from ${from(first)}${straight(first)}`,
              roomOf(columns.first, columns.second),
            )),
        ...(second === undefined
          ? []
          : cell(
              columns.second,
              second,
              square ? `off ${edgeWords(mark.edge, side.face)}` : `from ${from(second)}${straight(second)}`,
              roomOf(columns.second, columns.check),
            )),
        ...(mark.check === undefined
          ? [
              text(x + columns.check * widthMm + 1, top - 7.4, "no check", {
                sizeMm: points(11),
                colour: "soft",
              }),
            ]
          : cell(
              columns.check,
              mark.check,
              `from ${from(mark.check)}${band === undefined ? "" : `  ± ${readingWords(bandRounded(band, graduationM), graduationM, shows)}`}`,
              roomOf(columns.check, columns.read),
            )),
        box(x + columns.read * widthMm + 1, top - rowMm + 2, roomOf(columns.read, columns.hole), rowMm - 4, {
          stroke: strokes.line,
        }),
        text(
          x + columns.hole * widthMm + 1,
          top - 7.4,
          hole?.cut === undefined ? "?" : boreWords(hole.cut.holeMm),
          { sizeMm: points(13), weight: "semibold" },
        ),
        line(x, top - rowMm, x + widthMm, top - rowMm, strokes.hair),
      ];
    },
  };
}

const straight = ({ lies }: SetReading) => (lies === "straight" ? ", straight" : "");

/** At least one division; else to the nearest. */
function bandRounded(bandM: number, graduationM: number): number {
  return Math.max(graduationM, Math.round(bandM / graduationM) * graduationM);
}

function sureWords({ mark }: SideMark): string {
  if (mark.ellipse === undefined) return "";
  const mm = mark.ellipse.majorM * mark.ellipse.growthFor95 * 1000;
  return `19 of 20 land within ${mm.toFixed(1)}\u00a0mm`;
}
