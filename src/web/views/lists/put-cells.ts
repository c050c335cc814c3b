import type { Edit } from "../../../core/plan/edits/edit.js";
import type { ListWords } from "../../words/lists.js";
import { type CellProblem, problemOf } from "./check-cell.js";
import type { CellText as TextOfCell } from "./grid-source.js";
import { type CellChange, type Planned, planEdits } from "./list-edits.js";
import { cellKey, type ListMemory } from "./list-memory.js";
import type { ListSpec } from "./list-specs.js";
import { type Draft, type NamesTaken, type Readiness, readyToAdd } from "./new-things.js";
import type { Taken } from "./take-edits.js";
import type { ViewRow } from "./view-rows.js";

export type CellText = TextOfCell<ViewRow>;

export interface Put {
  readonly made: number;
  readonly memory: Partial<ListMemory>;
}

/** Takes texts into cells: what fits becomes edits, made together; the rest stays in its cell with the reason. */
export function putCells(
  texts: readonly CellText[],
  before: ListMemory,
  spec: ListSpec,
  taken: NamesTaken,
  words: ListWords,
  take: (edits: readonly Edit[]) => Taken,
): Put {
  const typed = texts.filter(({ column }) => column.takes.as !== "figure");
  const planned = planEdits([...waiting(typed, before, spec), ...inPlan(typed)], spec, words);
  const { drafts, next } = draftsWith(typed, before);
  const lines = drafts.map((draft) => ({ draft, ready: readyToAdd(draft, spec, taken, words) }));
  const adds = lines.flatMap(({ ready }) => (ready.is === "ready" ? [ready.edit] : []));
  const { made, refused } = take([...planned.edits.map(({ edit }) => edit), ...adds]);
  const problems = new Map(before.problems);
  for (const { view, column } of typed) problems.delete(cellKey(view.key, column.key));
  noteProblems(problems, planned, refused);
  const left = lines.flatMap(({ draft, ready }) => {
    for (const { key } of spec.columns) problems.delete(cellKey(draft.key, key));
    const told = draftProblems(draft, ready, refused, spec);
    for (const [column, problem] of told) problems.set(cellKey(draft.key, column), problem);
    return ready.is === "ready" && told.length === 0 ? [] : [draft];
  });
  return { made, memory: { drafts: left, problems, next } };
}

const inPlan = (texts: readonly CellText[]): CellChange[] =>
  texts.flatMap(({ view, column, text }) => (view.row ? [{ row: view.row, column, text }] : []));

/** What was typed before and not taken, in the same section of the same line: it may fit now, as leads' size does with their length. */
function waiting(texts: readonly CellText[], { problems }: ListMemory, { columns }: ListSpec): CellChange[] {
  const now = new Set(texts.map(({ view, column }) => cellKey(view.key, column.key)));
  return texts.flatMap(({ view, column }) => {
    const { row } = view;
    if (!row || !column.key.includes(" / ")) return [];
    const section = column.key.split(" / ")[0];
    return columns.flatMap((beside): CellChange[] => {
      const key = cellKey(row.key, beside.key);
      const problem = problems.get(key);
      if (!problem || problem.cut || problem.typed === "" || now.has(key)) return [];
      if (!beside.key.includes(" / ") || beside.key.split(" / ")[0] !== section) return [];
      now.add(key);
      return [{ row, column: beside, text: problem.typed }];
    });
  });
}

function draftsWith(texts: readonly CellText[], before: ListMemory): { drafts: Draft[]; next: number } {
  const drafts = new Map(before.drafts.map((draft) => [draft.key, draft]));
  let { next } = before;
  for (const { view, column, text } of texts) {
    if (!view.draft) continue;
    const { [column.key]: _before, ...rest } = (drafts.get(view.key) ?? view.draft).cells;
    const cells = text.trim() === "" ? rest : { ...rest, [column.key]: text };
    if (Object.keys(cells).length === 0) drafts.delete(view.key);
    else drafts.set(view.key, { key: view.key, cells });
    next = Math.max(next, Number(view.key.slice(1)) + 1);
  }
  return { drafts: [...drafts.values()], next };
}

function noteProblems(
  problems: Map<string, CellProblem>,
  planned: Planned,
  refused: ReadonlyMap<Edit, string>,
): void {
  for (const [{ row, column }, problem] of planned.problems)
    problems.set(cellKey(row.key, column.key), problem);
  for (const { edit, from } of planned.edits)
    for (const { row, column, text } of from) {
      const sentence = refused.get(edit);
      if (sentence === undefined) problems.delete(cellKey(row.key, column.key));
      else problems.set(cellKey(row.key, column.key), problemOf(text, sentence));
    }
}

/** By the column's key. */
function draftProblems(
  draft: Draft,
  ready: Readiness,
  refused: ReadonlyMap<Edit, string>,
  spec: ListSpec,
): readonly (readonly [string, CellProblem])[] {
  if (ready.is === "not yet") return ready.problems;
  const sentence = refused.get(ready.edit);
  const first = spec.columns[0]?.key ?? "name";
  return sentence === undefined ? [] : [[first, problemOf(draft.cells[first] ?? "", sentence)]];
}
