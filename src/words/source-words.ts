import type { Source } from "../core/reference/source.js";

/** Where a rule or figure comes from, in one line, and how surely it is known where that is less than read. */
export function sourceWords({ title, place, status }: Source): string {
  switch (status) {
    case "published":
      return `${title}, ${place}`;
    case "memory":
      return `${title}, ${place} (from memory, confirm before relying on it)`;
    case "practice":
      return "common practice, no source";
    case "computed":
      return `${title}, ${place} (computed)`;
    default:
      return status satisfies never;
  }
}
