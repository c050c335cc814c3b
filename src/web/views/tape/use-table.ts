import { useMemo, useState } from "react";
import type { Agreement } from "../../../core/hull/form/agreement.js";
import { figuresAgree } from "../../../core/hull/plan-agreement.js";
import type { Plan } from "../../../core/plan/model/plan.js";
import type { Written } from "../../../core/plan/source/written.js";
import { readQuantity } from "../../../core/quantity/read.js";
import { surveyWords } from "../../../words/hull-words.js";
import type { ScreenWords } from "../../../words/screen/en.js";
import { usePlan, usePlanStore, useShows } from "../../app/context.js";
import { useHullWords } from "../../parts/use-hull-words.js";
import { useRefusal } from "../../parts/use-refusal.js";
import { useWordsOfTape } from "../../words/tape.js";
import type { BoatScene } from "../boat/model/scene.js";
import { type CellProblem, problemOf } from "../lists/check-cell.js";
import type { CellText, GridLine, GridSource } from "../lists/grid-source.js";
import { cellKey, type ListMemory, memoryOf, remember } from "../lists/list-memory.js";
import type { Column } from "../lists/list-specs.js";
import type { Draft } from "../lists/new-things.js";
import { draftKey } from "../lists/view-rows.js";
import { type BareUnit, readFigure } from "./read-figure.js";
import { type FormTable, formTable, keyAt, rowToCome, type TableColumn, type TableRow } from "./table.js";
import {
  type FigureChange,
  type NewStation,
  noChanges,
  rowAt,
  type StationChange,
  tableEdits,
} from "./table-edits.js";
import { agreementSentence } from "./tape-words.js";

/** A line of the grid: a station, or one that is being typed. */
export interface TableLine extends GridLine {
  readonly row?: TableRow | undefined;
  readonly draft?: Draft;
}

const place = "tape table";
export const stationKey = "station";
const takes = { as: "quantity", kind: "length" } as const;

const draftLine = (number: number): TableLine => {
  const key = draftKey(number);
  return { key, draft: { key, cells: {} } };
};

/** The stations of the boat with their figures as a grid, and all one can do to them. */
export function useTable(scene: BoatScene, node: Written | undefined, bare: BareUnit) {
  const store = usePlanStore();
  const words = useWordsOfTape();
  const { tape } = useWordsOfTape();
  const { words: hull } = useHullWords();
  const shows = useShows();
  const refusalOf = useRefusal();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const [memory, setMemory] = useState(() => memoryOf(store, place));
  const plan = scene.plan.source;
  const table = useMemo(() => formTable(plan, node, scene.hull.form, shows), [plan, node, scene, shows]);
  const agreement = useMemo(() => agreements(plan, scene.plan.marks.formSpreadM), [plan, scene]);
  const change = (next: Partial<ListMemory>) => {
    const now = { ...memoryOf(store, place), ...next };
    remember(store, place, now);
    setMemory(now);
  };
  const columns = useMemo(
    (): readonly Column[] =>
      [stationKey, ...(table?.columns.map(({ key }) => key) ?? [])].map((key) => ({
        key,
        takes,
        required: key === stationKey,
      })),
    [table],
  );
  const views = useMemo((): readonly TableLine[] => {
    const drafts = memory.drafts.map((draft): TableLine => ({ key: draft.key, draft }));
    const rows = table?.rows.map((row): TableLine => ({ key: row.key, row })) ?? [];
    return [...rows, ...drafts, ...(readOnly ? [] : [draftLine(memory.next)])];
  }, [table, memory, readOnly]);
  const columnOf = (column: Column): TableColumn | undefined =>
    table?.columns.find(({ key }) => key === column.key);
  const written = ({ row, draft }: TableLine, { key }: Column): string =>
    row ? (key === stationKey ? row.name : (row.figures.get(key)?.text ?? "")) : (draft?.cells[key] ?? "");

  /** The station of a line; of one that is being typed, as the form has it there. */
  const rowOf = ({ row, draft }: TableLine): TableRow | undefined => {
    const name = draft?.cells[stationKey];
    const stationM = name === undefined ? undefined : metresOf(name);
    if (row || table === undefined || name === undefined || stationM === undefined) return row;
    return rowToCome(scene.hull.form, table, stationM, name);
  };

  const source: GridSource<TableLine> = {
    title: tape.table,
    columns,
    views,
    readOnly,
    titleOf: (column) => {
      const of = columnOf(column);
      return of ? tape.column(of.line, tape.short[of.coordinate]) : tape.station;
    },
    textIn: (view, column) =>
      memory.problems.get(cellKey(view.key, column.key))?.typed ?? written(view, column),
    problemIn: (view, column) => memory.problems.get(cellKey(view.key, column.key)),
    missingIn: ({ draft }) =>
      draft && Object.keys(draft.cells).length > 0 && draft.cells[stationKey] === undefined
        ? [stationKey]
        : [],
    assumedIn: (view, { key }) => {
      const valueM = rowOf(view)?.drawn.get(key);
      return valueM === undefined ? undefined : surveyWords(valueM, shows);
    },
    tellAssumed: table?.kind === "survey" ? tape.faired : tape.drawn,
    noteIn: ({ row }, { key }) => {
      const found = row && agreement.get(`${key}\n${row.stationM}`);
      return found?.verdict === "differs"
        ? { sign: "≠", sentence: agreementSentence(found, shows, tape, hull) }
        : undefined;
    },
    draftLine,
    follow: (key) => memoryOf(store, place).became?.get(key) ?? key,
    optionsIn: () => [],
    put: (texts) => {
      if (readOnly || table === undefined || texts.length === 0) return 0;
      const put = putInto(table, texts, memoryOf(store, place), bare, words, tape);
      if (put.edits.length === 0) {
        change(put.memory);
        return 0;
      }
      const refused = refusalOf(store.edit(put.edits));
      if (refused === undefined) {
        change(put.memory);
        return put.made;
      }
      const problems = new Map(put.memory.problems);
      for (const { view, column, text } of texts)
        problems.set(cellKey(view.key, column.key), problemOf(text, refused));
      change({ problems });
      return 0;
    },
  };
  return {
    ...source,
    table,
    rowOf,
    agreementIn: (row: TableRow, key: string): Agreement | undefined =>
      agreement.get(`${key}\n${row.stationM}`),
    /** Was what was typed there last not taken over? Asked in the same turn, before the table is drawn anew. */
    isWrong: (view: TableLine, column: Column): boolean =>
      memoryOf(store, place).problems.has(cellKey(view.key, column.key)),
    problems: memory.problems,
    dropProblems: () => change({ problems: new Map() }),
    /** Takes stations away. @returns a sentence where that was refused. */
    remove: (lines: readonly TableLine[]): string | undefined => {
      if (table === undefined) return undefined;
      const keys = new Set(lines.map(({ key }) => key));
      const drafts = memoryOf(store, place).drafts.filter(({ key }) => !keys.has(key));
      const gone = lines.flatMap(({ row }) => row ?? []);
      const edits = tableEdits(table, { ...noChanges, gone });
      if (edits.length === 0 && gone.length > 0) return tape.nothingMeasured;
      const refused = edits.length === 0 ? undefined : refusalOf(store.edit(edits));
      if (refused === undefined) change({ drafts });
      return refused;
    },
  };
}

export type Table = ReturnType<typeof useTable>;

function agreements(plan: Plan, sigmaM: number): ReadonlyMap<string, Agreement> {
  return new Map(
    figuresAgree(plan, sigmaM).map((one) => [`${one.line}\n${one.coordinate}\n${one.atM}`, one]),
  );
}

interface Put {
  readonly edits: ReturnType<typeof tableEdits>;
  readonly made: number;
  readonly memory: Partial<ListMemory> & Pick<ListMemory, "problems">;
}

/** Sorts texts into figures, stations that move, stations that come, and what can't be read and stays in its cell with the reason. */
function putInto(
  table: FormTable,
  texts: readonly CellText<TableLine>[],
  before: ListMemory,
  bare: BareUnit,
  words: Parameters<typeof readFigure>[2],
  tape: ScreenWords["tape"],
): Put {
  const problems = new Map(before.problems);
  const figures: FigureChange[] = [];
  const stations: StationChange[] = [];
  const cells = new Map<string, Record<string, string>>(
    before.drafts.map(({ key, cells: known }) => [key, { ...known }]),
  );
  let { next } = before;
  for (const { view, column, text } of texts) {
    const at = cellKey(view.key, column.key);
    problems.delete(at);
    const read = readFigure(text, bare, words);
    const refuse = (problem: CellProblem) => void problems.set(at, problem);
    if (read.is === "problem") {
      refuse(read.problem);
      if (!view.row) cells.set(view.key, { ...cells.get(view.key), [column.key]: text });
      continue;
    }
    const figure = read.is === "figure" ? read.text : undefined;
    if (!view.row) {
      next = Math.max(next, Number(view.key.slice(1)) + 1);
      const { [column.key]: _gone, ...rest } = cells.get(view.key) ?? {};
      cells.set(view.key, figure === undefined ? rest : { ...rest, [column.key]: figure });
    } else if (column.key === stationKey) {
      const other = read.is === "figure" ? rowAt(table, read.valueM) : undefined;
      if (read.is !== "figure") refuse(problemOf(text, words.lists.needed));
      else if (table.kind === "starting form" && view.row.figures.size === 0)
        refuse(problemOf(text, tape.nothingMeasured));
      else if (other !== undefined && other !== view.row) refuse(problemOf(text, tape.stationTaken));
      else stations.push({ row: view.row, text: read.text, stationM: read.valueM });
    } else {
      const of = table.columns.find(({ key }) => key === column.key);
      const was = view.row.figures.get(column.key)?.text;
      if (of && was !== figure) figures.push({ row: view.row, column: of, text: figure });
    }
  }
  return settle(table, { figures, stations, cells, next }, { ...before, problems }, tape);
}

interface Sorted {
  readonly figures: readonly FigureChange[];
  readonly stations: readonly StationChange[];
  readonly cells: ReadonlyMap<string, Readonly<Record<string, string>>>;
  readonly next: number;
}

/** Lines typed that are whole by now come into the table; one at a station that is there goes into it. */
function settle(table: FormTable, sorted: Sorted, before: ListMemory, tape: ScreenWords["tape"]): Put {
  const problems = new Map(before.problems);
  const drafts: Draft[] = [];
  const come: NewStation[] = [];
  const figures = [...sorted.figures];
  const became = new Map(before.became);
  for (const [key, typed] of sorted.cells) {
    const { [stationKey]: name, ...rest } = typed;
    const read = name === undefined ? undefined : metresOf(name);
    const wrong = Object.keys(typed).some((column) => problems.has(cellKey(key, column)));
    const few = table.kind === "starting form" && Object.keys(rest).length === 0;
    if (name === undefined || read === undefined || wrong || few) {
      if (Object.keys(typed).length > 0) drafts.push({ key, cells: typed });
      continue;
    }
    if (come.some(({ stationM }) => stationM === read)) {
      problems.set(cellKey(key, stationKey), problemOf(name, tape.stationTaken));
      drafts.push({ key, cells: typed });
      continue;
    }
    const there = rowAt(table, read);
    became.set(key, there?.key ?? keyAt(read));
    if (there === undefined)
      come.push({ text: name, stationM: read, figures: new Map(Object.entries(rest)) });
    else
      for (const column of table.columns) {
        const text = rest[column.key];
        if (text !== undefined) figures.push({ row: there, column, text });
      }
  }
  const edits = tableEdits(table, { figures, stations: sorted.stations, come, gone: [] });
  for (const { row, stationM } of sorted.stations) became.set(row.key, keyAt(stationM));
  const made = figures.length + sorted.stations.length + come.length;
  return { edits, made, memory: { drafts, problems, next: sorted.next, became } };
}

function metresOf(text: string): number | undefined {
  const read = readQuantity(text, "length");
  return read.ok ? read.value.value : undefined;
}
