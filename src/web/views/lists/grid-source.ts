import type { CellProblem } from "./check-cell.js";
import type { Column } from "./list-specs.js";

/** A line of a grid: one of the plan, or one that is being typed and not in the plan yet. */
export interface GridLine {
  readonly key: string;
  readonly row?: { readonly name: string } | undefined;
  readonly draft?: unknown;
}

/** A text for a cell. */
export interface CellText<L extends GridLine = GridLine> {
  readonly view: L;
  readonly column: Column;
  readonly text: string;
}

/** What a cell says beside what is written in it: how it goes with the others. */
export interface CellNote {
  readonly sign: string;
  readonly sentence: string;
}

/** What a grid shows, and what it does with what is typed. Each call that changes the plan is one step of its history. */
export interface GridSource<L extends GridLine = GridLine> {
  readonly title: string;
  readonly columns: readonly Column[];
  readonly views: readonly L[];
  readonly readOnly: boolean;
  readonly titleOf: (column: Column) => string;
  readonly textIn: (view: L, column: Column) => string;
  readonly problemIn: (view: L, column: Column) => CellProblem | undefined;
  /** Keys that a line still wants before it can stand in the plan. */
  readonly missingIn: (view: L) => readonly string[];
  /** What was assumed where the plan says nothing, and how it is told. */
  readonly assumedIn: (view: L, column: Column) => string | undefined;
  readonly tellAssumed: (assumed: string) => string;
  readonly noteIn?: (view: L, column: Column) => CellNote | undefined;
  /** Takes texts over into cells. @returns how many changes were made. */
  readonly put: (texts: readonly CellText<L>[]) => number;
  /** A new line by its number, past those there are. */
  readonly draftLine: (number: number) => L;
  /** The key a line has by now, where it has changed. */
  readonly follow?: (key: string) => string;
  /** What may stand in a cell of that column. */
  readonly optionsIn: (column: Column) => readonly string[];
  /** Opens the working of a figure. */
  readonly openFigure?: (view: L, column: Column) => void;
  readonly order?: {
    readonly by: { readonly column: string; readonly direction: "ascending" | "descending" } | undefined;
    readonly sort: (column: Column | undefined, direction: "ascending" | "descending") => void;
  };
}
