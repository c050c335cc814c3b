/** The input can't be used: what is wrong, for the person at the terminal. Ends the command with status 2. */
export class InputProblem extends Error {
  constructor(readonly lines: readonly string[]) {
    super(lines.join("\n"));
  }
}

/** What an error of the system says. */
export function reason(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

/** Exit statuses, the same for every command. */
export const exit = { fine: 0, stops: 1, unusable: 2 } as const;
