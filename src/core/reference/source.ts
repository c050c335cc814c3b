/** published: read in the source; memory: recalled, confirm before use; practice: no source; computed: from a stated formula. */
export type Status = "published" | "memory" | "practice" | "computed";

export interface Source {
  readonly title: string;
  readonly place: string;
  readonly status: Status;
}

/** Every table of this folder says where it was read and how it is known. */
export interface Sourced {
  readonly source: Source;
  readonly [figure: string]: unknown;
}

/** A single figure with its own source, where one table draws on several. */
export interface Cited<T> {
  readonly value: T;
  readonly source: Source;
}

/** For figures of the trade that no document was found for. */
export const commonPractice = {
  title: "common practice, no source",
  place: "-",
  status: "practice",
} as const satisfies Source;
