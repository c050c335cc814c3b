import type { TableStyle } from "../../core/parts/tables/written.js";
import type { Shows } from "../../core/plan/model/plan.js";
import { readConductorSize } from "../../core/quantity/conductor-size.js";
import { sizeWords } from "../../words/numbers.js";
import type { TableWords } from "../../words/tables/english.js";

/** Spreadsheets look for plain blanks. */
export const plainBlanks = (text: string): string => text.replaceAll("\u00a0", " ");

/** Tables in the owner's units and the reader's language. */
export const tableStyle = (shows: Shows, { headings, words }: TableWords): TableStyle => ({
  lengths: shows.lengths,
  heading: (column, unit) => {
    const said = heldBy(headings, column);
    return unit === undefined ? said : `${said} (${unit})`;
  },
  size: (key) => {
    const size = readConductorSize(key);
    return size.ok ? plainBlanks(sizeWords(size.value, shows)) : key;
  },
  word: (word) => heldBy(words, word),
});

const heldBy = (said: Readonly<Record<string, string>>, name: string): string =>
  Object.hasOwn(said, name) ? (said[name] ?? name) : name;
