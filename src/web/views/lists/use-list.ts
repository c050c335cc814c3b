import { useMemo, useState } from "react";
import { useFigures, usePlan, usePlanStore } from "../../app/context.js";
import { useSlip } from "../../app/slip-state.js";
import { useProblemWords } from "../../parts/use-problem-words.js";
import { useWordsOfLists } from "../../words/lists.js";
import { cellFigures } from "./cell-figures.js";
import { columnTitle } from "./column-title.js";
import { removals } from "./list-edits.js";
import { cellKey, type ListMemory, memoryOf, remember } from "./list-memory.js";
import { type Column, type ListSpec, listIds } from "./list-specs.js";
import { type Draft, duplicates, type NamesTaken, readyToAdd } from "./new-things.js";
import { type CellText, putCells } from "./put-cells.js";
import { type ListRow, namesAmong, rowsOf } from "./rows.js";
import { takeEdits } from "./take-edits.js";
import { draftKey, sortedBy, type ViewRow, viewRows, writtenIn } from "./view-rows.js";

/** Lines of a list, and everything one can do to them. Each call that changes the plan is one step of its history. */
export function useList(spec: ListSpec) {
  const store = usePlanStore();
  const { showWorking } = useSlip();
  const words = useWordsOfLists();
  const { words: say } = useProblemWords();
  const reading = usePlan((state) => state.reading);
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const figures = useFigures();
  const [memory, setMemory] = useState(() => memoryOf(store, spec.id));
  const change = (next: Partial<ListMemory>) => {
    const now = { ...memoryOf(store, spec.id), ...next };
    remember(store, spec.id, now);
    setMemory(now);
  };
  const root = reading.ok ? reading.document.root : undefined;
  const rows = useMemo(() => (root ? rowsOf(root, spec.id) : []), [root, spec.id]);
  const taken = useMemo((): NamesTaken => {
    const named = root ? listIds.filter((id) => id !== "wire").flatMap((id) => rowsOf(root, id)) : [];
    const names = new Set(named.map(({ name }) => name));
    const panels = root ? rowsOf(root, "panels").map(({ name }) => name) : [];
    return { has: (name) => names.has(name), panels };
  }, [root]);
  const figured = useMemo(() => cellFigures(figures, spec), [figures, spec]);
  const views = useMemo(() => {
    const empty: Draft = { key: draftKey(memory.next), cells: {} };
    return viewRows(rows, readOnly ? memory.drafts : [...memory.drafts, empty], memory.sorted);
  }, [rows, readOnly, memory]);
  const take = (edits: Parameters<typeof takeEdits>[1]) => takeEdits(store, edits, words, say);
  const firstRefusal = (edits: Parameters<typeof takeEdits>[1]): string | undefined =>
    [...take(edits).refused.values()][0];

  const emptyLine = (number: number): ViewRow => {
    const key = draftKey(number);
    return { key, draft: { key, cells: {} } };
  };

  return {
    spec,
    columns: spec.columns,
    title: words.lists.names[spec.id],
    titleOf: ({ key }: Column) => columnTitle(key, words),
    rows,
    views,
    readOnly,
    draftLine: emptyLine,
    optionsIn: ({ takes }: Column): readonly string[] => {
      if (takes.as === "choice") return takes.of;
      return takes.as === "named" && root ? namesAmong(root, takes.among) : [];
    },
    openFigure: (view: ViewRow, column: Column) => {
      const figure = figured.figure(view.key, column.key);
      if (figure) showWorking(figure.of);
    },
    assumedIn: ({ row }: ViewRow, column: Column) => row && figured.assumed(row.name, column.key),
    tellAssumed: words.lists.assumed,
    problems: memory.problems,
    textIn: (view: ViewRow, column: Column): string =>
      column.takes.as === "figure"
        ? (figured.figure(view.key, column.key)?.words ?? "")
        : (memory.problems.get(cellKey(view.key, column.key))?.typed ?? writtenIn(view, column)),
    /** Takes texts over into cells. @returns how many changes were made. */
    put: (texts: readonly CellText[]): number => {
      if (readOnly || texts.length === 0) return 0;
      const put = putCells(texts, memoryOf(store, spec.id), spec, taken, words, take);
      change(put.memory);
      return put.made;
    },
    problemIn: (view: ViewRow, column: Column) => memory.problems.get(cellKey(view.key, column.key)),
    /** Keys that a line still wants before it can stand in the plan. */
    missingIn: ({ draft }: ViewRow): readonly string[] => {
      if (!draft || Object.keys(draft.cells).length === 0) return [];
      const ready = readyToAdd(draft, spec, taken, words);
      return ready.is === "ready" ? [] : ready.missing;
    },
    /** Forgets what was typed and not taken over, in lines of the plan. */
    dropProblems: () => change({ problems: new Map() }),
    order: {
      by: memory.sorted,
      sort: (column: Column | undefined, direction: "ascending" | "descending") => {
        if (!column) return change({ sorted: undefined });
        const shown = (row: ListRow) =>
          column.takes.as === "figure"
            ? (figured.figure(row.key, column.key)?.value ?? "")
            : writtenIn({ key: row.key, row }, column);
        change({ sorted: sortedBy(rows, column, direction, shown) });
      },
    },
    /** @returns a sentence where it was refused. */
    remove: (gone: readonly ViewRow[]): string | undefined => {
      const keys = new Set(gone.map(({ key }) => key));
      change({ drafts: memoryOf(store, spec.id).drafts.filter(({ key }) => !keys.has(key)) });
      return firstRefusal(
        removals(
          gone.flatMap(({ row }) => row ?? []),
          spec,
        ),
      );
    },
    duplicate: (again: readonly ViewRow[]): string | undefined =>
      firstRefusal(
        duplicates(
          again.flatMap(({ row }) => row ?? []),
          spec,
          taken,
        ),
      ),
  };
}

export type List = ReturnType<typeof useList>;
