import { limits } from "../../../core/plan/source/limits.js";
import { nearestOf } from "../../../core/quantity/nearest.js";
import { quantityProblem } from "../../parts/quantity-problem.js";
import type { ListWords } from "../../words/lists.js";
import type { Column } from "./list-specs.js";

/** Why a text can't stand in a cell, and what was perhaps meant. */
export interface CellProblem {
  /** As typed; cut where it is very long, and then not to be tried again. */
  readonly typed: string;
  readonly cut?: true;
  readonly sentence: string;
  readonly nearest?: string;
}

export type CellValue =
  | { readonly ok: true; readonly value: string | number | boolean }
  | { readonly ok: false; readonly problem: CellProblem };

/** What is said of a cell, and in which measures. */
export type CellWords = Pick<ListWords, "fields" | "lists" | "lengths">;

const longestShown = 300;
const shown = (text: string): string =>
  text.length > longestShown ? `${text.slice(0, longestShown)}…` : text;

/** Makes a problem of a sentence, never longer than can be read. */
export function problemOf(typed: string, sentence: string, nearest?: string): CellProblem {
  const cut = typed.length > longestShown ? { cut: true as const } : {};
  const meant = nearest === undefined ? {} : { nearest };
  return { typed: shown(typed), ...cut, sentence: shown(sentence), ...meant };
}

/** Reads what was typed into a cell. Empty text is for the caller: it leaves the key out. */
export function checkCell(text: string, { takes }: Pick<Column, "takes">, words: CellWords): CellValue {
  const typed = text.trim();
  const refuse = (sentence: string, nearest?: string): CellValue => ({
    ok: false,
    problem: problemOf(typed, sentence, nearest),
  });
  const longest = takes.as === "name" ? limits.maxNameLength : limits.maxTextLength;
  if (typed.length > longest) return refuse(words.lists.tooLong(longest));
  if (/[\n\r\t]/.test(typed)) return refuse(words.lists.oneLine);
  if (takes.as !== "name" && (/^[[{]/.test(typed) || typed === "work out")) return { ok: true, value: typed };
  switch (takes.as) {
    case "figure":
      return refuse(words.lists.workedOut);
    case "quantity": {
      const problem = quantityProblem(typed, takes.kind, words, words.lengths);
      return problem ? refuse(problem.sentence, problem.meant?.[0]) : { ok: true, value: typed };
    }
    case "choice": {
      const chosen = takes.of.find((word) => word === typed.toLowerCase());
      if (chosen !== undefined) return { ok: true, value: chosen };
      return refuse(words.lists.oneOf(takes.of.join(", ")), nearestOf(typed, takes.of));
    }
    case "flag": {
      const flag = flagOf(typed, words);
      return flag === undefined ? refuse(words.lists.yesOrNo) : { ok: true, value: flag };
    }
    case "whole":
      return /^-?\d{1,7}$/.test(typed) ? { ok: true, value: Number(typed) } : refuse(words.lists.wholeNumber);
    case "words":
      return { ok: true, value: listText(typed) };
    case "name":
    case "named":
    case "text":
      return { ok: true, value: typed };
    default:
      return takes satisfies never;
  }
}

function flagOf(typed: string, { fields }: CellWords): boolean | undefined {
  const word = typed.toLowerCase();
  if (["true", "yes", "y", "x", fields.yes].includes(word)) return true;
  return ["false", "no", "n", fields.no].includes(word) ? false : undefined;
}

/** `running, anchor` as the list it stands for. */
function listText(typed: string): string {
  const parts = typed
    .split(",")
    .map((part) => part.trim())
    .filter((part) => part !== "");
  return `[${parts.map((part) => (/^[\w µΩ°./-]+$/.test(part) ? part : JSON.stringify(part))).join(", ")}]`;
}

/** What is wrong with a text as a quantity, and what was wanted. */
