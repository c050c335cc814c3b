/**
 * A plan as it stands in the file, before it is understood: words, lists and sections with their places in the text.
 * A part used through an alias is the same object in both places.
 */
export type Written = WrittenScalar | WrittenList | WrittenSection;

interface Placed {
  /** Characters from the start of the text. A block of indented lines has no end of its own: there it is as the start. */
  readonly start: number;
  readonly end: number;
  /** Stands for several values through an anchor and its aliases. */
  shared?: boolean;
}

export interface WrittenScalar extends Placed {
  readonly kind: "scalar";
  readonly value: string | number | bigint | boolean | null;
  /** The characters of the value, without quotes. */
  readonly text: string;
}

export interface WrittenList extends Placed {
  readonly kind: "list";
  readonly items: readonly Written[];
}

export interface WrittenEntry {
  readonly key: string;
  readonly keyStart: number;
  readonly keyEnd: number;
  readonly value: Written;
}

export interface WrittenSection extends Placed {
  readonly kind: "section";
  readonly entries: readonly WrittenEntry[];
}

export function entryOf(section: WrittenSection, key: string): WrittenEntry | undefined {
  return section.entries.find((entry) => entry.key === key);
}

/** Follows a path as far as it leads. @returns the character at which its last found step stands. */
export function startOf(root: Written, path: readonly (string | number)[]): number {
  let here: Written = root;
  let start = root.start;
  for (const step of path) {
    if (here.kind === "section" && typeof step === "string") {
      const entry = entryOf(here, step);
      if (entry === undefined) return start;
      start = entry.value.start;
      here = entry.value;
    } else if (here.kind === "list" && typeof step === "number") {
      const item: Written | undefined = here.items[step];
      if (item === undefined) return start;
      start = item.start;
      here = item;
    } else return start;
  }
  return start;
}
