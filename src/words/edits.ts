import type { Edit } from "../core/plan/edits/edit.js";

/** An edit as something one does: `Set the fuse of helm / lamps to 5 A.` */
export function editSentence(edit: Edit): string {
  switch (edit.edit) {
    case "set way fuse":
    case "set run fuse":
      return `Set the fuse of ${edit.at} to ${edit.to}.`;
    case "set main fuse":
      return `Set the main fuse of ${edit.at} to ${edit.to}.`;
    case "set run size":
      return `Make ${edit.at} ${edit.to}.`;
    case "set return size":
      return `Make the return of ${edit.at} ${edit.to}.`;
    case "set run return":
      return `Give ${edit.at} ${edit.to === "own" ? "a return of its own for each way" : "one shared return"}.`;
    case "set run joint":
      return `Use ${edit.to} at ${edit.end === "both" ? "both ends" : `the ${edit.end}`} of ${edit.at}.`;
    case "set gear joint":
      return `Join ${edit.at} by ${edit.to}.`;
    case "set run colours":
      return `Use ${edit.out} out and ${edit.return} back in ${edit.at}.`;
    case "set way always live":
      return edit.to
        ? `Take ${edit.at} before the master switch.`
        : `Take ${edit.at} after the master switch.`;
    case "set field":
      if (intoOuting(edit)) return `Put into the outing ${intoOuting(edit)}: ${periodOf(edit.to)}.`;
      return `Set ${edit.field} of ${edit.at} to ${fieldValue(edit.to)}.`;
    case "remove field":
      return `Remove ${edit.field} from ${edit.at}.`;
    case "add":
      if (edit.kind === "step done") return `Tick ${recordOf(edit)}.`;
      if (edit.kind === "reading") return `Write down the reading at ${recordOf(edit)}.`;
      return edit.name === ""
        ? `Add ${edit.kind}: ${recordOf(edit)}.`
        : `Add ${edit.kind} ${edit.name}${edit.as.replace(/[{}\s]/g, "") === "" ? "" : `: ${plainly(edit.as)}`}.`;
    case "remove":
      return `Remove ${edit.at}.`;
    case "rename":
      return `Rename ${edit.at} to ${edit.to}.`;
    default:
      return edit satisfies never;
  }
}

const fieldValue = (value: string | number | boolean) =>
  typeof value === "boolean" ? (value ? "yes" : "no") : plainly(String(value));

/** The outing whose list of what is on an edit adds to or changes; undefined for any other edit. */
export function intoOuting({ at, field }: Extract<Edit, { edit: "set field" }>): string | undefined {
  return /^on(?: \/ \d+)?$/.test(field) ? /^outings \/ (.+)$/.exec(at)?.[1] : undefined;
}

/** What is on and when, without the key it stands under: `stern lamp, from 2 h`. */
export const periodOf = (value: string | number | boolean): string =>
  plainly(String(value)).replace(/^what /, "");

/** What is written in the plan's brackets, without them: `from 300 mm, to 2.6 m, below sheer`. */
export const plainly = (text: string): string =>
  /^[{[]/.test(text)
    ? text
        .replace(/[{}[\]"]/g, "")
        .replace(/: /g, " ")
        .trim()
    : text;

/** What goes on record has no name of its own: it is told by its step or its point, or as it is written. */
export function recordOf({ as }: Extract<Edit, { edit: "add" }>): string {
  const [, quoted, plain] = /\b(?:step|at): (?:"([^"]*)"|([^,}]+))/.exec(as) ?? [];
  return quoted ?? plain ?? plainly(as);
}
