import type { FormFigures, HullFigures } from "../core/hull/figures.js";
import { lineAt, reaches } from "../core/hull/form/line.js";
import type { Shows } from "../core/plan/model/plan.js";
import { surveyView } from "../drawing/hull/profile-view.js";
import { box, line, points, strokes, text } from "../drawing/make.js";
import type { Shape } from "../drawing/shapes.js";
import { nextWords } from "../words/hull-words.js";
import { flow } from "./flow.js";
import type { Paper } from "./page.js";
import { type Piece, paragraph, space } from "./piece.js";
import type { Section } from "./section.js";

/** As high as leaves room for the figures below on the same page [mm]. */
const drawingHeightMm = (rows: number) => Math.max(50, 150 - 26 - rowMm * (rows + 1));
const rowMm = 8.2;
/** More stations than this go on a second block. */
const mostStations = 12;

/** The sheet to survey with: the lines as known, what is measured, blanks for what is not, and what to measure next. */
export function surveySection(hull: HullFigures, shows: Shows, paper: Paper): Section {
  const title = "Survey of the form";
  const subtitle = "half-breadths from the centreline, heights from the base line";
  const { form } = hull;
  if (form?.form === undefined) return { title, subtitle, pages: [] };
  const widthMm = paper.right - paper.left;
  const stations = stationsOf(hull, form);
  const blocks = chunks(stations, mostStations);
  return {
    title,
    subtitle,
    pages: flow(
      [
        drawing(hull, form, stations, widthMm, drawingHeightMm(rowsOf(hull, form, stations).length)),
        ...nextPieces(form, shows, widthMm),
        space(2),
        ...blocks.flatMap((block) => [...stationTable(hull, form, block, shows, widthMm), space(3)]),
        paragraph({ text: how, sizePt: 9.5, maxLines: 5 }, widthMm),
      ],
      paper,
    ),
  };
}

const how =
  "Chock the boat level both ways. Stretch a line along the centre from transom to stem and mark the stations on it. At each station measure square from the line out to each line of the hull, and up to it from a level plank or floor, the same base for all. A dash means that the line does not reach; an empty box waits for its figure. Read twice what is far from its neighbours: it is written down as it is, never smoothed.";

/** Stations that were measured; of a starting form those that have figures. */
function stationsOf(hull: HullFigures, form: FormFigures): number[] {
  const written = hull.plan.source.craft.form;
  if (written?.kind === "survey") return [...written.stationsM];
  const from = written?.kind === "starting form" ? written.measured.map(({ atM }) => atM) : [];
  const { fromM = 0, toM = 1 } = form.form ?? {};
  const even = Array.from({ length: 9 }, (_, i) => fromM + ((toM - fromM) * i) / 8);
  return [...new Set([...even, ...from])].sort((a, b) => a - b);
}

function chunks<T>(list: readonly T[], most: number): T[][] {
  const count = Math.ceil(list.length / most);
  const size = Math.ceil(list.length / Math.max(1, count));
  return Array.from({ length: count }, (_, i) => list.slice(i * size, (i + 1) * size));
}

function drawing(
  hull: HullFigures,
  form: FormFigures,
  stations: readonly number[],
  widthMm: number,
  heightMm: number,
): Piece {
  const written = hull.plan.source.craft.form;
  // of a starting form only what was measured is a fact
  const isMeasured = (line: string, xM: number) =>
    written?.kind !== "starting form" ||
    written.measured.some((one) => one.line === line && Math.abs(one.atM - xM) < 1e-6);
  return {
    heightMm,
    draw: (x, top) =>
      surveyView(form, stations, isMeasured, { left: x, bottom: top - heightMm, widthMm, heightMm }),
  };
}

function nextPieces({ next }: FormFigures, shows: Shows, widthMm: number): Piece[] {
  if (next.length === 0) return [];
  const words = next.slice(0, 4).map((one, index) => `${index + 1}. ${nextWords(one, shows)}`);
  return [
    paragraph(
      { text: `Measure next: ${words.join(".  ")}.`, sizePt: 10, weight: "semibold", maxLines: 5 },
      widthMm,
      1,
    ),
  ];
}

/** A row a figure, a column a station: what was measured, a dash, or a box to fill. */
function stationTable(
  hull: HullFigures,
  form: FormFigures,
  stations: readonly number[],
  shows: Shows,
  widthMm: number,
): Piece[] {
  const nameMm = 44;
  const columnMm = (widthMm - nameMm) / Math.max(1, stations.length);
  const at = (index: number) => nameMm + (index + 0.5) * columnMm;
  const sizeMm = points(stations.length > 9 ? 8.5 : 9.5);
  const cells = (
    y: number,
    x: number,
    words: readonly (string | undefined)[],
    weight: "regular" | "semibold",
  ): Shape[] =>
    words.flatMap((one, index): Shape[] =>
      one === undefined
        ? [box(x + at(index) - columnMm / 2 + 0.8, y - 2, columnMm - 1.6, 6.2, { stroke: strokes.fine })]
        : [text(x + at(index), y, one, { sizeMm, weight, anchor: "middle" })],
    );
  const row = (name: string, words: readonly (string | undefined)[], head = false): Piece => ({
    heightMm: rowMm,
    keepWithNext: head,
    draw: (x, top) => [
      text(x, top - 5.4, name, {
        sizeMm: points(9.5),
        weight: head ? "semibold" : "regular",
        colour: head ? "soft" : "ink",
      }),
      ...cells(top - 5.4, x, words, head ? "semibold" : "regular"),
      line(x, top - rowMm, x + widthMm, top - rowMm, head ? strokes.line : strokes.hair),
    ],
  });
  return [
    row(
      "station",
      stations.map((x) => short(x, shows)),
      true,
    ),
    ...rowsOf(hull, form, stations).map(({ name, values }) =>
      row(
        name,
        values.map((value) =>
          value === "none" ? "–" : value === undefined ? undefined : short(value, shows),
        ),
      ),
    ),
  ];
}

/** Inches without feet, and without the unit: the columns are narrow and the heading says which. */
function short(valueM: number, shows: Shows): string {
  if (shows.lengths !== "inches") return String(Math.round(valueM * 1000));
  return lengthInches(valueM);
}

function lengthInches(valueM: number): string {
  const eighths = Math.round((valueM / 0.0254) * 8);
  const sign = eighths < 0 ? "−" : "";
  const whole = Math.floor(Math.abs(eighths) / 8);
  const rest = Math.abs(eighths) % 8;
  const part = ["", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"][rest] ?? "";
  return `${sign}${whole === 0 && part !== "" ? "" : whole}${part}`;
}

interface RowOf {
  readonly name: string;
  readonly values: readonly (number | "none" | undefined)[];
}

function rowsOf(hull: HullFigures, form: FormFigures, stations: readonly number[]): RowOf[] {
  const written = hull.plan.source.craft.form;
  return (form.form?.lines ?? []).flatMap((one): RowOf[] => {
    const measured =
      written?.kind === "survey" ? written.lines.find(({ name }) => name === one.name) : undefined;
    const value = (x: number, axis: 1 | 2): number | "none" | undefined => {
      if (written?.kind === "survey") {
        const list = axis === 1 ? measured?.halfBreadthsM : measured?.heightsM;
        const found = list?.[written.stationsM.indexOf(x)];
        return found ?? (reaches(one, x) ? undefined : "none");
      }
      if (written?.kind === "starting form") {
        const found = written.measured.find(
          (each) => each.line === one.name && Math.abs(each.atM - x) < 1e-9,
        );
        return axis === 1 ? found?.halfBreadthM : found?.heightM;
      }
      return reaches(one, x) ? lineAt(one, x)[axis] : "none";
    };
    const centre = one.points.every(([, y]) => Math.abs(y) < 1e-6);
    return [
      ...(centre ? [] : [{ name: `${one.name}, out`, values: stations.map((x) => value(x, 1)) }]),
      { name: `${one.name}, up`, values: stations.map((x) => value(x, 2)) },
    ];
  });
}
