import type { ListWords } from "../../words/lists.js";
import { writeBlock } from "./clipboard.js";
import type { GridLine, GridSource } from "./grid-source.js";
import { pasteInto } from "./paste.js";
import type { Grid } from "./use-grid.js";

/** Pastes by a button what the clipboard holds. @returns what to say of it. */
export async function pasteBlock<L extends GridLine>(
  list: GridSource<L>,
  grid: Grid<L>,
  words: ListWords,
): Promise<string> {
  try {
    return pasteInto(list, grid.block, await navigator.clipboard.readText(), words);
  } catch {
    return words.lists.pasteByKey;
  }
}

export async function copyBlock<L extends GridLine>(grid: Grid<L>): Promise<void> {
  await navigator.clipboard.writeText(writeBlock(grid.blockTexts()));
}
