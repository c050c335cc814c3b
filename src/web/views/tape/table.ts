import type { LaidForm } from "../../../core/hull/figures.js";
import { lineAt, reaches } from "../../../core/hull/form/line.js";
import type { CraftForm, StartingForm, SurveyForm } from "../../../core/plan/model/form.js";
import type { Plan, Shows } from "../../../core/plan/model/plan.js";
import type { Written } from "../../../core/plan/source/written.js";
import { surveyWords } from "../../../words/hull-words.js";
import type { Coordinate } from "../boat/model/form-edits.js";
import { roundedM } from "../boat/model/length-text.js";
import { cellText, valueAt } from "../lists/written-text.js";

/** A column of figures: one coordinate of one line. */
export interface TableColumn {
  readonly key: string;
  readonly line: string;
  readonly coordinate: Coordinate;
}

/** A figure as the plan has it, and where it stands there: its number in its line's list, or in the list of what was measured. */
export interface TableFigure {
  readonly text: string;
  readonly valueM: number;
  readonly item: number;
}

/** A station with its figures. */
export interface TableRow {
  readonly key: string;
  readonly stationM: number;
  /** As written, or as it would be. */
  readonly name: string;
  /** What was measured, by the column's key. */
  readonly figures: ReadonlyMap<string, TableFigure>;
  /** What the form has there, measured or not [m]. */
  readonly drawn: ReadonlyMap<string, number>;
}

/** Stations with their figures, whatever way the plan gives them. */
export interface FormTable {
  readonly kind: "survey" | "starting form";
  readonly columns: readonly TableColumn[];
  readonly rows: readonly TableRow[];
  /** Stations of a survey; places in the list of what was measured of a starting form. */
  readonly count: number;
}

/** Two stations nearer each other than this are one [m]. */
export const sameStationM = 5e-4;

const keyOf = (line: string, coordinate: Coordinate): string => `${line}\n${coordinate}`;
const rowKey = (stationM: number, again: number): string =>
  `${Math.round(stationM * 1e4)}${again > 0 ? ` ${again}` : ""}`;

/** The key of a row at that station, where it is the only one there. */
export const keyAt = (stationM: number): string => rowKey(stationM, 0);

export function formTable(
  { craft }: Plan,
  node: Written | undefined,
  made: LaidForm | undefined,
  shows: Shows,
): FormTable | undefined {
  const { form } = craft;
  if (form?.kind === "survey") return surveyTable(form, valueAt(node, "craft / form"), made);
  if (form?.kind === "starting form" && made?.form) return startingTable(form, node, made, shows);
  return undefined;
}

/** A cell for each line and coordinate; a line on the centreline has heights only. */
function columnsOf(lines: readonly { readonly name: string; readonly onCentre: boolean }[]): TableColumn[] {
  const column = (line: string, coordinate: Coordinate): TableColumn => ({
    key: keyOf(line, coordinate),
    line,
    coordinate,
  });
  return lines.flatMap(({ name, onCentre }) =>
    onCentre ? [column(name, "height")] : [column(name, "half-breadth"), column(name, "height")],
  );
}

/** The key of a line that holds the figures of a coordinate. */
export const listKey = (coordinate: Coordinate): "half-breadths" | "heights" =>
  coordinate === "height" ? "heights" : "half-breadths";

function surveyTable(form: SurveyForm, node: Written | undefined, made: LaidForm | undefined): FormTable {
  const columns = columnsOf(
    form.lines.map(({ name, halfBreadthsM }) => ({ name, onCentre: halfBreadthsM === undefined })),
  );
  const texts = (key: string) => itemTexts(valueAt(node, key));
  const stations = texts("stations");
  const lists = new Map(
    columns.map(({ key, line, coordinate }) => [key, texts(`lines / ${line} / ${listKey(coordinate)}`)]),
  );
  const seen = new Map<number, number>();
  const rows = form.stationsM.map((stationM, item): TableRow => {
    const rounded = Math.round(stationM * 1e4);
    const again = seen.get(rounded) ?? 0;
    seen.set(rounded, again + 1);
    const figures = new Map<string, TableFigure>();
    for (const { key, line, coordinate } of columns) {
      const of = form.lines.find(({ name }) => name === line);
      const valueM = (coordinate === "height" ? of?.heightsM : of?.halfBreadthsM)?.[item];
      if (valueM !== undefined) figures.set(key, { text: lists.get(key)?.[item] ?? "", valueM, item });
    }
    const name = stations[item] ?? "";
    return { key: rowKey(stationM, again), stationM, name, figures, drawn: drawnAt(made, columns, stationM) };
  });
  return { kind: "survey", columns, rows, count: rows.length };
}

function itemTexts(list: Written | undefined): string[] {
  return list?.kind === "list" ? list.items.map(cellText) : [];
}

function startingTable(
  form: StartingForm,
  node: Written | undefined,
  made: LaidForm,
  shows: Shows,
): FormTable {
  const lines = made.form?.lines ?? [];
  const columns = columnsOf(
    lines.map(({ name, points }) => ({ name, onCentre: points.every(([, y]) => y === 0) })),
  );
  const written = valueAt(node, "craft / form / measured");
  const stations = startingStations(form, made, shows);
  const rows = stations.map((stationM): TableRow => {
    const figures = new Map<string, TableFigure>();
    for (const [item, one] of form.measured.entries()) {
      if (Math.abs(one.atM - stationM) >= sameStationM) continue;
      const section = written?.kind === "list" ? written.items[item] : undefined;
      for (const coordinate of ["half-breadth", "height"] as const) {
        const valueM = coordinate === "height" ? one.heightM : one.halfBreadthM;
        const key = keyOf(one.line, coordinate);
        if (valueM !== undefined && !figures.has(key))
          figures.set(key, { text: cellText(valueAt(section, coordinate)), valueM, item });
      }
    }
    const name = surveyWords(stationM, shows).replaceAll("\u00a0", " ");
    return { key: rowKey(stationM, 0), stationM, name, figures, drawn: drawnAt(made, columns, stationM) };
  });
  return { kind: "starting form", columns, rows, count: form.measured.length };
}

/** A station that is not in the table yet, as the form has it. */
export function rowToCome(
  made: LaidForm | undefined,
  { columns }: FormTable,
  stationM: number,
  name: string,
): TableRow {
  return {
    key: keyAt(stationM),
    stationM,
    name,
    figures: new Map(),
    drawn: drawnAt(made, columns, stationM),
  };
}

function drawnAt(
  made: LaidForm | undefined,
  columns: readonly TableColumn[],
  stationM: number,
): Map<string, number> {
  const drawn = new Map<string, number>();
  for (const { key, line: name, coordinate } of columns) {
    const line = made?.form?.lines.find((one) => one.name === name);
    if (line && reaches(line, stationM))
      drawn.set(key, lineAt(line, stationM)[coordinate === "height" ? 2 : 1]);
  }
  return drawn;
}

/** Round steps between stations, as one marks them on a batten [m]. */
const steps = {
  millimetres: [100, 150, 200, 250, 300, 400, 500, 600, 750, 1000, 1500, 2000].map((mm) => mm / 1000),
  inches: [4, 6, 8, 10, 12, 16, 18, 20, 24, 30, 36, 48, 72].map((inches) => inches * 0.0254),
} as const;
const mostSteps = 10;

/** Stations evenly at round steps from the aft end, and the fore end itself [m]. */
export function roundStations(lengthM: number, { lengths }: Pick<Shows, "lengths">): number[] {
  const step = steps[lengths].find((one) => lengthM / one <= mostSteps) ?? lengthM / mostSteps;
  const whole = Math.floor(lengthM / step - 0.25);
  return [...Array.from({ length: whole + 1 }, (_, i) => i * step), lengthM];
}

function startingStations({ measured }: StartingForm, { form }: LaidForm, shows: Shows): number[] {
  if (form === undefined) return [];
  const even = roundStations(form.toM - form.fromM, shows).map((x) => form.fromM + x);
  const own = measured.map(({ atM }) => atM);
  const apart = even.filter((x) => own.every((at) => Math.abs(at - x) >= sameStationM));
  const once = own.filter((at, i) => own.findIndex((other) => Math.abs(other - at) < sameStationM) === i);
  return [...apart, ...once].sort((a, b) => a - b);
}

/** Stations at which she is worth reading off when a form becomes a table: those of the table she is shown in [m]. */
export function readOffStations(form: CraftForm, made: LaidForm, shows: Shows): number[] {
  const { fromM = 0, toM = 0 } = made.form ?? {};
  const stations = form.kind === "starting form" ? startingStations(form, made, shows) : [];
  return stations.filter((x) => x >= fromM && x <= toM).map((x) => (x === toM ? x : roundedM(x, shows)));
}
