import type { Edit } from "../../../core/plan/edits/edit.js";
import { valueText } from "../../../core/plan/edits/value.js";
import type { ListWords } from "../../words/lists.js";
import { type CellProblem, checkCell, problemOf } from "./check-cell.js";
import type { ListSpec } from "./list-specs.js";
import type { ListRow } from "./rows.js";
import { flowText } from "./written-text.js";

/** A line typed into a list that is no thing of the plan yet, since something that it needs is missing. */
export interface Draft {
  readonly key: string;
  /** Texts by the column's key. */
  readonly cells: Readonly<Record<string, string>>;
}

export type Readiness =
  | { readonly is: "ready"; readonly edit: Edit }
  | {
      readonly is: "not yet";
      /** Keys of columns that are wanted. */
      readonly missing: readonly string[];
      readonly problems: readonly (readonly [string, CellProblem])[];
    };

/** Names that things of the plan have. */
export interface NamesTaken {
  readonly has: (name: string) => boolean;
  readonly panels: readonly string[];
}

/** The edit that brings a line into the plan, or what it still wants. */
export function readyToAdd(draft: Draft, spec: ListSpec, taken: NamesTaken, words: ListWords): Readiness {
  const problems: (readonly [string, CellProblem])[] = [];
  const missing: string[] = [];
  const values: (readonly [string, string])[] = [];
  for (const column of spec.columns) {
    if (column.takes.as === "figure" || column.takes.as === "name") continue;
    const typed = (draft.cells[column.key] ?? "").trim();
    const checked = typed === "" ? undefined : checkCell(typed, column, words);
    if (checked?.ok) values.push([column.key, valueText(checked.value) ?? ""]);
    else if (checked) problems.push([column.key, checked.problem]);
    else if (column.required) missing.push(column.key);
  }
  const name = nameOf(draft, spec, taken, words);
  if (typeof name === "object") problems.push(["name", name]);
  else if (name === "" && spec.id !== "wire") missing.push("name");
  if (problems.length > 0 || missing.length > 0 || typeof name === "object")
    return { is: "not yet", missing, problems };
  return { is: "ready", edit: adding(name, values, spec) };
}

/** A way without its panel's name belongs to the panel, where there is one only. */
function nameOf(draft: Draft, spec: ListSpec, taken: NamesTaken, words: ListWords): string | CellProblem {
  const typed = (draft.cells.name ?? "").trim();
  const column = spec.columns.find(({ takes }) => takes.as === "name");
  const checked = column && typed !== "" ? checkCell(typed, column, words) : undefined;
  if (checked && !checked.ok) return checked.problem;
  if (spec.kind !== "way" || typed === "" || typed.includes(" / ")) return typed;
  const [panel, second] = taken.panels;
  return panel !== undefined && second === undefined
    ? `${panel} / ${typed}`
    : problemOf(typed, words.lists.whichPanel);
}

function adding(name: string, values: readonly (readonly [string, string])[], spec: ListSpec): Edit {
  if (spec.id === "items")
    return { edit: "set field", at: "stock", field: `parts / ${name}`, to: Number(values[0]?.[1]) };
  return { edit: "add", kind: spec.kind, name: spec.id === "wire" ? "" : name, as: asSection(values) };
}

/** `{draws: 5 W, leads: {size: 1 mm2, length: 300 mm}}`. */
function asSection(values: readonly (readonly [string, string])[]): string {
  const plain = values.filter(([key]) => !key.includes(" / ")).map(([key, value]) => `${key}: ${value}`);
  const nested = new Map<string, string[]>();
  for (const [key, value] of values) {
    const [outer = "", inner] = key.split(" / ");
    if (inner !== undefined) nested.set(outer, [...(nested.get(outer) ?? []), `${inner}: ${value}`]);
  }
  const sections = [...nested].map(([key, inner]) => `${key}: {${inner.join(", ")}}`);
  return `{${[...plain, ...sections].join(", ")}}`;
}

/** `lamp`, then `lamp b`, `lamp c` …: a number at the end would look like one of several alike. */
function freeName(wanted: string, isTaken: (name: string) => boolean): string {
  let name = wanted;
  for (let at = 1; isTaken(name); at += 1) name = `${wanted} ${letters(at)}`;
  return name;
}

function letters(number: number): string {
  const last = String.fromCharCode(97 + (number % 26));
  return number < 26 ? last : letters(Math.floor(number / 26) - 1) + last;
}

/** The same things once more, each under a free name. */
export function duplicates(rows: readonly ListRow[], spec: ListSpec, taken: NamesTaken): Edit[] {
  const given = new Set<string>();
  return rows.map((row) => {
    const as = flowText(row.node);
    if (spec.id === "wire") return { edit: "add", kind: spec.kind, name: "", as };
    const name = freeName(row.name, (one) => taken.has(one) || given.has(one));
    given.add(name);
    return spec.id === "items"
      ? { edit: "set field", at: "stock", field: `parts / ${name}`, to: Number(as) }
      : { edit: "add", kind: spec.kind, name, as };
  });
}
