import type { Edit } from "../../core/plan/edits/edit.js";
import type { EditProblem } from "../../core/plan/edits/problem.js";
import type { Expected, ReadProblem } from "../../core/plan/source/problem.js";
import type { EditProblemWords, ExpectedWords, ProblemTeller, ReadProblemWords } from "./problem-words.js";

/** How a language tells what is wrong in a plan. */
export function readTeller(words: ReadProblemWords): Pick<ProblemTeller, "line" | "sentence"> {
  const sentence = (problem: ReadProblem) =>
    [statement(problem, words), hint(problem, words)].filter((part) => part !== "").join(" ");
  const line = (problem: ReadProblem) => {
    const path = problem.path
      .map((step) => (typeof step === "number" ? words.item(step + 1) : step))
      .join(" / ");
    return `${words.where(problem.line, problem.column)}${path === "" ? "" : `, ${path}`}: ${sentence(problem)}`;
  };
  return { line, sentence };
}

/** How a language tells why an edit was not made. */
export function editTeller(
  { notDone, meant, codes }: EditProblemWords,
  line: ProblemTeller["line"],
  editSentence: (edit: Edit) => string,
): ProblemTeller["edit"] {
  return ({ code, edit, nearest, problems = [] }: EditProblem) => {
    const reason = codes[code]({
      at: edit.edit === "add" ? edit.name : edit.at,
      meant: nearest === undefined ? "" : ` ${meant(nearest)}`,
    });
    return [notDone(editSentence(edit), reason), ...problems.map((each) => `  ${line(each)}`)].join("\n");
  };
}

function statement(problem: ReadProblem, words: ReadProblemWords): string {
  const { code, fault = "no number", foundKind = "length", yaml } = problem;
  if (code === "yaml") return yamlSentence(yaml, words);
  const bare = problem.found ?? "";
  const said = {
    bare,
    found: words.quoted(bare),
    form: bare === "list" || bare === "section" ? words.form[bare] : words.quoted(bare),
    expected: problem.expected === undefined ? "" : expectedText(problem.expected, words.expected),
    guessed: problem.nearest !== undefined,
    kind: words.expected.kinds[foundKind],
    firstLine: problem.firstLine,
  };
  return code === "quantity" ? words.faults[fault](said) : words.codes[code](said);
}

function yamlSentence({ code, detail }: ReadProblem["yaml"] = noSlip, { yaml }: ReadProblemWords): string {
  const slips: Readonly<Partial<Record<string, string>>> = yaml.slips;
  return (Object.hasOwn(slips, code) ? slips[code] : undefined) ?? yaml.other(detail);
}
const noSlip = { code: "", detail: "" };

function hint({ code, nearest }: ReadProblem, { meant }: ReadProblemWords): string {
  if (nearest === undefined) return "";
  return meant(nearest, code.startsWith("unknown ") || code === "not one of");
}

function expectedText(expected: Expected, words: ExpectedWords): string {
  switch (expected.kind) {
    case "form":
      return words.forms[expected.form];
    case "quantity":
      return words.like(words.kinds[expected.of], expected.example);
    case "choice":
    case "keys":
      return choice(expected.of, words);
    case "at least":
    case "above":
    case "at most":
      return words.limit[expected.kind](expected.limit);
    case "count":
      return expected.of.map((one, i) => (i === 0 ? `${one}` : `${words.or(`${one}`)} ${one}`)).join(" ");
    default:
      return expected satisfies never;
  }
}

function choice(of: readonly string[], { or }: ExpectedWords): string {
  const last = of.at(-1) ?? "";
  return of.length < 2 ? last : `${of.slice(0, -1).join(", ")} ${or(last)} ${last}`;
}

/** `2,000,000`, with what a language sets between thousands. */
export function grouped(count: number, between: string): string {
  return String(count).replace(/\B(?=(\d{3})+$)/g, between);
}
