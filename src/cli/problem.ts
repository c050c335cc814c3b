import { type TerminalWords, terminalInEnglish } from "../words/terminal/english.js";

/** The input can't be used: what is wrong, for the person at the terminal, in whatever language that is told; the error's own message is English. Ends the command with status 2. */
export class InputProblem extends Error {
  constructor(readonly told: (say: TerminalWords) => string | readonly string[]) {
    super([told(terminalInEnglish)].flat().join("\n"));
  }
}

/** What an error of the system says, in words where it is one of the usual. */
export function reason(error: unknown, { common: { system } }: TerminalWords): string {
  const words: Readonly<Partial<Record<string, string>>> = system;
  const code = codeOf(error) ?? "";
  const known = Object.hasOwn(words, code) ? words[code] : undefined;
  return known ?? (error instanceof Error ? error.message : String(error));
}

/** `ENOENT` and its like; undefined where the error is not the system's. */
export function codeOf(error: unknown): string | undefined {
  return error instanceof Error && "code" in error && typeof error.code === "string" ? error.code : undefined;
}

/** Exit statuses, the same for every command. */
export const exit = { fine: 0, stops: 1, unusable: 2 } as const;
