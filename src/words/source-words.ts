import type { Source } from "../core/reference/source.js";

/** How a language tells where a figure comes from. Titles of standards stay as they are in any. */
export interface SourceWords {
  readonly title: (title: string) => string;
  readonly place: (place: string) => string;
  readonly practice: string;
  readonly memory: string;
  readonly computed: string;
}

export const sourcesInEnglish: SourceWords = {
  title: (title) => title,
  place: (place) => place,
  practice: "common practice, no source",
  memory: "from memory, confirm before relying on it",
  computed: "computed",
};

/** Where a rule or figure comes from, in one line, and how surely it is known where that is less than read. */
export function sourceWords({ title, place, status }: Source, words: SourceWords): string {
  const named = `${words.title(title)}, ${words.place(place)}`;
  switch (status) {
    case "published":
      return named;
    case "memory":
      return `${named} (${words.memory})`;
    case "practice":
      return words.practice;
    case "computed":
      return `${named} (${words.computed})`;
    default:
      return status satisfies never;
  }
}
