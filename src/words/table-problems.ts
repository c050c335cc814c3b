import type { TableProblem } from "../core/parts/tables/columns.js";
import type { MoneyProblem } from "../core/quantity/money.js";
import type { TerminalWords } from "./terminal/english.js";

/** What is wrong with a table someone brings, as `line 3, price: …`; the file's name stands before it. */
export function tableProblemLine(problem: TableProblem, words: TerminalWords): string {
  const { tables: say } = words.work;
  const column =
    "column" in problem
      ? `, ${typeof problem.column === "number" ? say.column(`${problem.column}`) : headed(problem.column, words)}`
      : "";
  return `${say.line(problem.line)}${column}: ${sentence(problem, words)}`;
}

/** A column by its heading; one there is not, as it is written. */
function headed(column: string, { tables: { headings } }: TerminalWords): string {
  const known: Readonly<Record<string, string>> = headings;
  return Object.hasOwn(known, column) ? (known[column] ?? column) : column;
}

function sentence(problem: TableProblem, words: TerminalWords): string {
  const { tables: say } = words.work;
  switch (problem.problem) {
    case "open-quote":
    case "text-after-quote":
    case "quote-in-plain-field":
    case "too-large":
      return say[problem.problem];
    case "unknown-column":
      return say.unknownColumn(problem.column, problem.nearest);
    case "missing-column":
      return say.missingColumn(headed(problem.column, words));
    case "column-twice":
      return say.columnTwice(headed(problem.column, words));
    case "too-many-cells":
      return say.tooManyCells(problem.found, problem.expected);
    case "empty-cell":
      return say.emptyCell(headed(problem.column, words));
    case "names-alike":
      return say.namesAlike(problem.found, problem.firstLine);
    case "name-twice":
      return say.nameTwice(problem.found, problem.firstLine);
    case "not-one-of":
      return say.notOneOf(problem.found, problem.allowed.map((one) => wordOf(one, words)).join(", "));
    case "not-a-count":
      return say.notACount(problem.found);
    case "negative-stock":
      return say.negativeStock(problem.found);
    case "not-a-quantity":
      return say.notAQuantity(problem.fault.found, problem.fault.nearest);
    case "not-money":
      return moneySentence(problem.money, words);
    default:
      return problem satisfies never;
  }
}

function wordOf(word: string, { tables: { words } }: TerminalWords): string {
  const known: Readonly<Record<string, string>> = words;
  return Object.hasOwn(known, word) ? (known[word] ?? word) : word;
}

function moneySentence(problem: MoneyProblem, { work: { tables: say } }: TerminalWords): string {
  switch (problem.problem) {
    case "not-a-price":
      return say.notAPrice(problem.text);
    case "too-many-decimals":
      return say.tooManyDecimals(problem.text, problem.allowed);
    case "two-currencies":
      return say.twoCurrencies(problem.currencies);
    default:
      return problem satisfies never;
  }
}
