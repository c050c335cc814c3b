const mostNamed = 6;

/** How a language joins names. */
export interface Joining {
  /** The word before the last name. */
  readonly and: (last: string) => string;
  readonly more: (count: number) => string;
}

export const joinedInEnglish: Joining = { and: () => "and", more: (count) => `${count} more` };

/** `a`, `a and b`, `a, b and c`; long lists end in `and 12 more`. Names that hold commas are kept apart by semicolons. */
export function listed(names: readonly string[], { and, more }: Joining = joinedInEnglish): string {
  if (names.length <= 1) return names[0] ?? "";
  const named = names.length > mostNamed ? names.slice(0, mostNamed - 1) : names.slice(0, -1);
  const rest = names.length - named.length;
  const last = rest > 1 ? more(rest) : (names.at(-1) ?? "");
  const between = names.some((name) => name.includes(", ")) ? "; " : ", ";
  return `${named.join(between)} ${and(last)} ${last}`;
}
