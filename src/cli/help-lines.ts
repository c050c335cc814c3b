import { wrap } from "./terminal.js";

/** `  --only TITLE  what it does`: what goes over stands under the words that explain. */
const entry = /^( +\S.*? {2,})(\S.*)$/;

/** Where less than this is left beside what is explained, the words that explain it go under it. */
const leastRoom = 16;

/**
 * A help text set anew to a width: paragraphs flow, what explains an option stays in its column. Lines that are set in without a column keep their
 * own beginnings.
 */
export function helpLines(help: string, width: number): string[] {
  const lines: string[] = [];
  let open: { readonly lead: string; readonly hang: number; words: string } | undefined;
  const close = () => {
    if (open === undefined) return;
    const { lead, hang, words } = open;
    const room = width - hang;
    if (room >= leastRoom || lead.trim() === "") {
      const set = wrap(words, Math.max(leastRoom, room));
      lines.push(...set.map((line, at) => (at === 0 ? lead : " ".repeat(hang)) + line));
    } else lines.push(lead.trimEnd(), ...wrap(words, width - 6).map((line) => `      ${line}`));
    open = undefined;
  };
  for (const line of help.split("\n")) {
    const indent = line.length - line.trimStart().length;
    if (line.trim() === "") {
      close();
      lines.push("");
    } else if (open !== undefined && indent === open.hang) open.words += ` ${line.trim()}`;
    else {
      close();
      const [, lead = " ".repeat(indent), words = line.trim()] = entry.exec(line) ?? [];
      open = { lead, hang: indent === 0 ? 0 : lead.trim() === "" ? indent + 2 : lead.length, words };
    }
  }
  close();
  return lines;
}
