/** The input can't be used: what is wrong, for the person at the terminal. Ends the command with status 2. */
export class InputProblem extends Error {
  constructor(readonly lines: readonly string[]) {
    super(lines.join("\n"));
  }
}

const codeWords: Readonly<Record<string, string>> = {
  ENOENT: "there is no such folder",
  EACCES: "the system does not allow it to you",
  EPERM: "the system does not allow it to you",
  ENOSPC: "there is no room left on the disk",
  EDQUOT: "there is no room left for you on the disk",
  EROFS: "the disk is for reading only",
  ENOTDIR: "a part of the path is a file, not a folder",
  ENAMETOOLONG: "the name is too long",
};

/** What an error of the system says, in words where it is one of the usual. */
export function reason(error: unknown): string {
  const known = codeWords[codeOf(error) ?? ""];
  return known ?? (error instanceof Error ? error.message : String(error));
}

/** `ENOENT` and its like; undefined where the error is not the system's. */
export function codeOf(error: unknown): string | undefined {
  return error instanceof Error && "code" in error && typeof error.code === "string" ? error.code : undefined;
}

/** Exit statuses, the same for every command. */
export const exit = { fine: 0, stops: 1, unusable: 2 } as const;
