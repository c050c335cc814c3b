import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll } from "vitest";

export const top = resolve(import.meta.dirname, "../..");

export interface Ran {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the command line as a person does, from the project's folder. */
export function skiffloom(
  words: readonly string[],
  input = "",
  env: Readonly<Record<string, string>> = {},
): Ran {
  const ran = spawnSync(process.execPath, [join(top, "bin/skiffloom.js"), ...words], {
    cwd: top,
    encoding: "utf8",
    input,
    env: { ...process.env, NO_COLOR: "", LC_ALL: "C", ...env },
    timeout: 60_000,
  });
  if (ran.error) throw ran.error;
  return { status: ran.status, out: ran.stdout, err: ran.stderr };
}

const made: string[] = [];
afterAll(() => {
  for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true });
});

/** A new folder that goes when the tests of the file are done; with copies of the named files of the project in it. */
export function folderWith(...files: readonly string[]): string {
  const folder = mkdtempSync(join(tmpdir(), "skiffloom-"));
  made.push(folder);
  for (const file of files) cpSync(join(top, file), join(folder, file.split("/").at(-1) ?? file));
  return folder;
}
