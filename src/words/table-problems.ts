import type { TableProblem } from "../core/parts/tables/columns.js";
import type { MoneyProblem } from "../core/quantity/money.js";

/** What is wrong with a table someone brings, as `line 3, price: …`; the file's name stands before it. */
export function tableProblemLine(problem: TableProblem): string {
  const column =
    "column" in problem ? `, ${typeof problem.column === "number" ? "column " : ""}${problem.column}` : "";
  return `line ${problem.line}${column}: ${sentence(problem)}`;
}

function sentence(problem: TableProblem): string {
  switch (problem.problem) {
    case "open-quote":
      return "A quote is opened and never closed.";
    case "text-after-quote":
      return "Something follows a closing quote; a quote inside a cell is written twice.";
    case "quote-in-plain-field":
      return "A quote stands inside a cell that does not begin with one.";
    case "too-large":
      return "The table is too large.";
    case "unknown-column":
      return `There is no column “${problem.column}”.${problem.nearest === undefined ? "" : ` Perhaps “${problem.nearest}”?`}`;
    case "missing-column":
      return `The column ${problem.column} is missing.`;
    case "column-twice":
      return `The column ${problem.column} stands there twice.`;
    case "too-many-cells":
      return `${problem.found} cells where the heading has ${problem.expected}.`;
    case "empty-cell":
      return `The cell under ${problem.column} is empty.`;
    case "not-one-of":
      return `“${problem.found}” is none of ${problem.allowed.join(", ")}.`;
    case "not-a-count":
      return `“${problem.found}” is no count; a whole number is needed.`;
    case "negative-stock":
      return `“${problem.found}” is less than none; count what is there.`;
    case "not-a-quantity":
      return `“${problem.fault.found}” can't be read${problem.fault.nearest === undefined ? "" : `; perhaps “${problem.fault.nearest}”`}.`;
    case "not-money":
      return moneySentence(problem.money);
    default:
      return problem satisfies never;
  }
}

function moneySentence(problem: MoneyProblem): string {
  switch (problem.problem) {
    case "not-a-price":
      return `“${problem.text}” is no price; write 12.50 EUR.`;
    case "too-many-decimals":
      return `“${problem.text}” has more decimals than the ${problem.allowed} its currency has.`;
    case "two-currencies":
      return `Prices in ${problem.currencies.join(" and ")} cannot be added up; use one.`;
    default:
      return problem satisfies never;
  }
}
