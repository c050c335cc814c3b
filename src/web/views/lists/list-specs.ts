import { type ThingKey, thingKeys } from "../../../core/plan/schema/thing-keys.js";

/** What a cell takes, besides what a key of the plan takes: a name that is set by renaming, a list of words, or nothing (a figure). */
export type CellTakes =
  | ThingKey["takes"]
  | { readonly as: "name" | "words" | "figure" | "whole" }
  | { readonly as: "named"; readonly among: "places" | "ways" | "batteries" };

export interface Column {
  /** Key of the plan; `leads / size` reaches inside. For figures, the name of the figure. */
  readonly key: string;
  readonly takes: CellTakes;
  readonly required: boolean;
}

export const listIds = [
  "gear",
  "ways",
  "runs",
  "batteries",
  "panels",
  "boxes",
  "converters",
  "chargers",
  "wire",
  "items",
] as const;
export type ListId = (typeof listIds)[number];

export interface ListSpec {
  readonly id: ListId;
  /** Kind of thing, as the core's edits name it. */
  readonly kind: string;
  readonly columns: readonly Column[];
}

const figure = (key: string): Column => ({ key, takes: { as: "figure" }, required: false });
const name: Column = { key: "name", takes: { as: "name" }, required: true };

/** Keys that take more than the general description says of them. */
const closer: Readonly<Record<string, CellTakes>> = {
  count: { as: "whole" },
  "studs per bus": { as: "whole" },
  "spare entries": { as: "whole" },
  "terminals per stud": { as: "whole" },
  lengths: { as: "words" },
  carries: { as: "words" },
  from: { as: "named", among: "ways" },
  to: { as: "named", among: "ways" },
  charges: { as: "named", among: "batteries" },
  "leads / size": { as: "quantity", kind: "conductor size" },
  "leads / length": { as: "quantity", kind: "length" },
  "colours / out": { as: "text" },
  "colours / return": { as: "text" },
};

function list(
  id: ListId,
  kind: string,
  wanted: readonly string[],
  figures: readonly string[] = [],
): ListSpec {
  const known = new Map(thingKeys(kind).map((key) => [key.written, key]));
  const keys = wanted.flatMap((key): Column[] => {
    const plain = known.get(key);
    const takes = closer[key] ?? plain?.takes;
    return takes === undefined ? [] : [{ key, takes, required: plain?.required ?? false }];
  });
  return { id, kind, columns: [name, ...keys, ...figures.map(figure)] };
}

const gear = [
  "count",
  "draws",
  "role",
  "behaves as",
  "starts",
  "works",
  "largest fuse",
  "leads / size",
  "leads / length",
  "joint",
  "surroundings",
  "float switch",
  "drop",
  "weight",
];
const runs = [
  "from",
  "to",
  "carries",
  "reaches",
  "length",
  "lengths",
  "size",
  "fuse",
  "return",
  "joint",
  "surroundings",
  "colours / out",
  "colours / return",
  "sheathed",
  "protected from chafe",
];
const batteries = [
  "chemistry",
  "voltage",
  "capacity",
  "rated over",
  "age",
  "reserve",
  "cut-off",
  "internal resistance",
  "most current",
  "main",
  "master",
  "weight",
  "fixed",
  "surroundings",
];
const boxes = ["joins", "returns", "terminals per stud", "spare entries", "covered", "surroundings"];
const converters = ["output", "most output", "efficiency", "standby", "works", "isolated", "surroundings"];
const chargers = ["kind", "charges", "output", "sun hours", "absorption", "self limiting", "stops below"];

/** Every list with its columns, in the order they are shown. */
export const listSpecs: Readonly<Record<ListId, ListSpec>> = {
  gear: list("gear", "gear", gear, ["current", "voltage lost"]),
  ways: list("ways", "way", ["switch", "fuse", "always live", "drop"], ["current", "rating"]),
  runs: list("runs", "run", runs, ["conductor", "current"]),
  batteries: list("batteries", "battery", batteries, ["current"]),
  panels: list("panels", "panel", ["main", "master", "studs per bus", "covered", "surroundings"]),
  boxes: list("boxes", "box", boxes),
  converters: list("converters", "converter", converters),
  chargers: list("chargers", "charger", chargers),
  wire: {
    id: "wire",
    kind: "stock wire",
    columns: [
      { key: "size", takes: { as: "quantity", kind: "conductor size" }, required: true },
      { key: "cores", takes: { as: "whole" }, required: false },
      { key: "length", takes: { as: "quantity", kind: "length" }, required: true },
      { key: "colour", takes: { as: "text" }, required: false },
      { key: "kind", takes: { as: "choice", of: ["offcut", "spool"] }, required: false },
      { key: "count", takes: { as: "whole" }, required: false },
    ],
  },
  items: {
    id: "items",
    kind: "stock part",
    columns: [name, { key: "count", takes: { as: "whole" }, required: true }],
  },
};
