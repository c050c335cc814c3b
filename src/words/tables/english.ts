import type { PartKind } from "../../core/parts/parts-list.js";

/** Headings of tables for a spreadsheet by the names of their columns, and the words of the format under them. */
export const tablesInEnglish = {
  headings: {
    "behaves as": "behaves as",
    box: "box",
    colour: "colour",
    colours: "colours",
    cores: "cores",
    count: "count",
    cut: "cut",
    "cut from": "cut from",
    draws: "draws",
    drill: "drill",
    drop: "drop",
    end: "end",
    entry: "entry",
    face: "face",
    from: "from",
    "from stock": "from stock",
    gland: "gland",
    here: "here",
    hole: "hole",
    item: "item",
    kind: "kind",
    "left over": "left over",
    length: "length",
    name: "name",
    needed: "needed",
    no: "no.",
    pack: "pack",
    packs: "packs",
    past: "past",
    piece: "piece",
    price: "price",
    role: "role",
    run: "run",
    size: "size",
    slack: "slack",
    spares: "spares",
    starts: "starts",
    surroundings: "surroundings",
    there: "there",
    to: "to",
    "to buy": "to buy",
    way: "way",
    weight: "weight",
    wire: "wire",
    works: "works",
    x: "x",
    y: "y",
  },
  words: { offcut: "offcut", spool: "spool", start: "start", end: "end" },
  /** A column of counts in which wire is told by its length. */
  pieces: (unit: string) => `pieces; wire: ${unit}`,
  /** What a line of the shopping list is. */
  kinds: {
    conductor: "conductor",
    terminal: "terminal",
    joint: "joint",
    sleeve: "sleeve",
    gland: "gland",
    fuse: "fuse",
    "fuse holder": "fuse holder",
    box: "box",
    switch: "switch",
    bus: "bus",
    tie: "tie",
    sealant: "sealant",
    tape: "tape",
    label: "label",
    gear: "gear",
    other: "other",
  } satisfies Record<PartKind, string>,
  cores: (count: number) => `${count} ${count === 1 ? "core" : "cores"}`,
};

type Said<Words> = {
  readonly [Key in keyof Words]: Words[Key] extends string
    ? string
    : Words[Key] extends (...given: infer Given) => string
      ? (...given: Given) => string
      : Said<Words[Key]>;
};

export type TableWords = Said<typeof tablesInEnglish>;
