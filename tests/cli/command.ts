import { vi } from "vitest";
import { commandLine } from "../../src/cli/command-line.js";
import type { Ran } from "./run.js";

/**
 * A command as `skiffloom` of `run.ts` runs it, but in this process, where the process itself is not what is tested: no start of Node for each. Standard input
 * is not handed in. Runs one after the other.
 */
export async function command(words: readonly string[]): Promise<Ran> {
  const said = { out: "", err: "" };
  const into = (where: keyof typeof said) => (chunk: string | Uint8Array) => {
    said[where] += typeof chunk === "string" ? chunk : new TextDecoder().decode(chunk);
    return true;
  };
  const spies = [
    vi.spyOn(process.stdout, "write").mockImplementation(into("out")),
    vi.spyOn(process.stderr, "write").mockImplementation(into("err")),
  ];
  try {
    return { status: await commandLine(words), ...said };
  } finally {
    for (const spy of spies) spy.mockRestore();
  }
}
