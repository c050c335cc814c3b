import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { expect } from "vitest";

/** Compares with a saved picture one can open; `SAVE_PICTURES=1` writes them anew, to be looked at before they are committed. */
export function expectPicture(name: string, drawn: string): void {
  const file = new URL(`../pictures/${name}`, import.meta.url);
  if (process.env.SAVE_PICTURES === "1") writeFileSync(file, drawn);
  expect(existsSync(file), `${name} is not saved yet`).toBe(true);
  expect(drawn).toBe(readFileSync(file, "utf8"));
}
