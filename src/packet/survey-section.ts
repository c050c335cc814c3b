import type { FormFigures, HullFigures } from "../core/hull/figures.js";
import { lineAt, reaches } from "../core/hull/form/line.js";
import type { Shows } from "../core/plan/model/plan.js";
import { fitText } from "../drawing/fonts/wrap.js";
import { surveyHeightMm, surveyView } from "../drawing/hull/survey-view.js";
import { box, line, points, strokes, text } from "../drawing/make.js";
import { figure } from "../drawing/parts.js";
import type { Part, Shape } from "../drawing/shapes.js";
import type { HullWords } from "../words/hull/english.js";
import { nextReasonWords, nextWords } from "../words/hull-words.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { flow } from "./flow.js";
import type { Paper } from "./page.js";
import { heading, type Piece, paragraph, space, stacked } from "./piece.js";
import type { Section } from "./section.js";

/** The drawing takes what the figures below leave of the page, between these [mm]. */
const drawingMm = { least: 42, most: 92 } as const;
const rowMm = 8.2;
/** More stations than this go on a second block. */
const mostStations = 12;

/** The sheet to survey with: the lines as known, what is measured, blanks for what is not, and what to measure next. */
type SurveyWords = PaperWords["hull"]["survey"];

export function surveySection(
  hull: HullFigures,
  shows: Shows,
  paper: Paper,
  { hull: { survey: words }, frame, of }: PaperWords,
): Section {
  const { title } = words;
  const subtitle = words.subtitle(shows.lengths === "inches");
  const { form } = hull;
  if (form?.form === undefined) return { title, subtitle, pages: [] };
  const widthMm = paper.right - paper.left;
  const stations = stationsOf(hull, form);
  const blocks = chunks(stations, mostStations);
  const below = [
    ...nextPieces(form, shows, words, of.hull, widthMm),
    space(2),
    ...blocks.flatMap((block) => [...stationTable(hull, form, block, shows, words, widthMm), space(3)]),
    paragraph({ text: words.how, sizePt: 9.5, maxLines: 5 }, widthMm),
  ];
  const left = paper.top - paper.bottom - stacked(below).heightMm - 2;
  const mostMm = Math.min(drawingMm.most, Math.max(drawingMm.least, left));
  const heightMm = surveyHeightMm(form.form, widthMm, mostMm);
  return {
    title,
    subtitle,
    pages: flow(
      [drawing(hull, form, stations, widthMm, heightMm, words.title, frame.drawn), ...below],
      paper,
    ),
  };
}

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
  what: string,
  drawn: PaperWords["frame"]["drawn"],
): Piece {
  const written = hull.plan.source.craft.form;
  // of a starting form only what was measured is a fact
  const isMeasured = (line: string, xM: number) =>
    written?.kind !== "starting form" ||
    written.measured.some((one) => one.line === line && Math.abs(one.atM - xM) < 1e-6);
  return {
    heightMm,
    draw: (x, top) =>
      figure(
        what,
        surveyView(form, stations, isMeasured, { left: x, bottom: top - heightMm, widthMm, heightMm }),
        drawn,
      ),
  };
}

const nameType = (head: boolean) => ({ sizeMm: points(9.5), weight: head ? "semibold" : "regular" }) as const;

const mostNext = 4;
const nextMm = 11;

/** What to measure next, with a box to write it in; two beside each other. */
function nextPieces(
  { next }: FormFigures,
  shows: Shows,
  words: SurveyWords,
  hullWords: HullWords,
  widthMm: number,
): Piece[] {
  if (next.length === 0) return [];
  const shown = next.slice(0, mostNext);
  const half = widthMm / 2;
  const boxMm = 26;
  const room = half - 8 - boxMm - 6;
  const title = { sizeMm: points(10.5), weight: "semibold" } as const;
  const soft = { sizeMm: points(9), weight: "regular" } as const;
  const rows = Array.from(
    { length: Math.ceil(shown.length / 2) },
    (_, row): Piece => ({
      heightMm: nextMm,
      draw: (x, top) =>
        shown.slice(row * 2, row * 2 + 2).flatMap((one, column) => {
          const left = x + column * (half + 2);
          return [
            text(left, top - 5, String(row * 2 + column + 1), { ...title, colour: "accent" }),
            text(left + 6, top - 4.4, fitText(nextWords(one, shows, hullWords), room, title), title),
            text(left + 6, top - 8.6, fitText(nextReasonWords(one, shows, hullWords), room, soft), {
              ...soft,
              colour: "soft",
            }),
            box(left + half - boxMm - 4, top - nextMm + 1.5, boxMm, nextMm - 3, { stroke: strokes.fine }),
          ];
        }),
    }),
  );
  return [heading(words.next, widthMm), ...rows];
}

/** A row a figure, a column a station: what was measured, a dash, or a box to fill. */
function stationTable(
  hull: HullFigures,
  form: FormFigures,
  stations: readonly number[],
  shows: Shows,
  words: SurveyWords,
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
  const table = { columns: stations.length + 1 };
  const row = (name: string, of: string, words: readonly (string | undefined)[], head = false): Piece => {
    const mark = {};
    const part = (column: number, heads?: "Column" | "Row"): Part => ({
      is: "cell",
      table,
      row: mark,
      column,
      ...(heads === undefined ? {} : { heads }),
    });
    return {
      heightMm: rowMm,
      keepWithNext: head,
      draw: (x, top) => [
        text(x, top - 5.4, `${fitText(name, nameMm - 14, nameType(head))}${of}`, {
          ...nameType(head),
          colour: head ? "soft" : "ink",
          part: part(0, head ? "Column" : "Row"),
        }),
        ...cells(top - 5.4, x, words, head ? "semibold" : "regular").map((shape, column) =>
          shape.kind === "text" ? { ...shape, part: part(column + 1, head ? "Column" : undefined) } : shape,
        ),
        line(x, top - rowMm, x + widthMm, top - rowMm, head ? strokes.line : strokes.hair),
      ],
    };
  };
  return [
    row(
      words.station,
      `, ${shows.lengths === "inches" ? "in" : "mm"}`,
      stations.map((x) => short(x, shows)),
      true,
    ),
    ...rowsOf(hull, form, stations, words).map(({ name, of, values }) =>
      row(
        name,
        of,
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

const eighthSigns = ["", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"];

/** To 1/16 in, as the tape of a survey is read. */
function lengthInches(valueM: number): string {
  const sixteenths = Math.round((valueM / 0.0254) * 16);
  const sign = sixteenths < 0 ? "−" : "";
  const whole = Math.floor(Math.abs(sixteenths) / 16);
  const rest = Math.abs(sixteenths) % 16;
  const part = rest % 2 === 0 ? eighthSigns[rest / 2] : `${whole > 0 ? " " : ""}${rest}/16`;
  return `${sign}${whole === 0 && rest > 0 ? "" : whole}${part ?? ""}`;
}

interface RowOf {
  readonly name: string;
  /** `, out` or `, up`. */
  readonly of: string;
  readonly values: readonly (number | "none" | undefined)[];
}

function rowsOf(
  hull: HullFigures,
  form: FormFigures,
  stations: readonly number[],
  { out, up }: SurveyWords,
): RowOf[] {
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
      ...(centre ? [] : [{ name: one.name, of: out, values: stations.map((x) => value(x, 1)) }]),
      { name: one.name, of: up, values: stations.map((x) => value(x, 2)) },
    ];
  });
}
