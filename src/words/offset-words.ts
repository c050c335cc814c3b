import { asSurvey, type SurveyTable } from "../core/hull/form/as-survey.js";
import type { LinePoints } from "../core/hull/form/form.js";
import type { HullProblem } from "../core/hull/problem.js";
import type { OtherNames } from "../core/parts/tables/columns.js";
import { keyText } from "../core/plan/edits/value.js";
import type { OffsetsForm } from "../core/plan/model/form.js";
import { writeQuantity } from "../core/quantity/write.js";
import type { TerminalWords } from "./terminal/english.js";

/** How a length is written [m]. */
type Write = (valueM: number) => string;

/** A length of a table in the unit its numbers are in, as exact as the table is. */
export function writeOffset(numbers: OffsetsForm["numbers"]): Write {
  const unit = numbers === "feet-inches-eighths" ? "in" : numbers;
  return (valueM) => writeQuantity(valueM, unit, 7);
}

/** Figures on one line, `none` where a line has none: `[12 in, none]`. */
const listText = (values: readonly (number | undefined)[], write: Write): string =>
  `[${values.map((value) => (value === undefined ? "none" : write(value))).join(", ")}]`;

/** A table of offsets as the plan writes a form: stations of all lines together, `none` where a line has no figure. */
export function offsetSection(lines: readonly LinePoints[], numbers: OffsetsForm["numbers"]): string[] {
  const write = writeOffset(numbers);
  const survey = asSurvey(lines);
  return [
    "craft:",
    "  form:",
    `    stations: ${listText(survey.stationsM, write)}`,
    "    lines:",
    ...survey.lines.flatMap((line, index) => [
      `      ${JSON.stringify(line.name)}:`,
      ...lineKeys(line, index === survey.lines.length - 1, write).map((key) => `        ${key}`),
    ]),
  ];
}

/** A survey as the value of `form:` on one line. */
export function surveyValue({ stationsM, lines }: SurveyTable, open: boolean, write: Write): string {
  const written = lines.map(
    (line, index) =>
      `${keyText(line.name)}: {${lineKeys(line, index === lines.length - 1, write).join(", ")}}`,
  );
  return `{stations: ${listText(stationsM, write)}, lines: {${written.join(", ")}}${open ? "" : ", open: false"}}`;
}

function lineKeys(
  { halfBreadthsM, heightsM, above, corner }: SurveyTable["lines"][number],
  last: boolean,
  write: Write,
): string[] {
  return [
    ...(halfBreadthsM ? [`half-breadths: ${listText(halfBreadthsM, write)}`] : []),
    `heights: ${listText(heightsM, write)}`,
    ...(above === "round" && !last ? ["above: round"] : []),
    ...(corner ? [] : ["corner: false"]),
  ];
}

/** Words of the heading of a table of offsets in other languages than the format's own. */
export const offsetsInAnyLanguage: OtherNames = new Map([
  ["estación", "station"],
  ["semimanga", "half-breadth"],
  ["altura", "height"],
  ["flotación", "waterline"],
]);

/** What is wrong with a table of offsets. */
export function offsetProblemWords(
  { problem, at, terms }: HullProblem,
  say: TerminalWords["hull"]["form"],
): string {
  const found = terms?.found ?? "";
  const place = at.replace(/\bline\b/, say.line).replace(/\bcolumn\b/, say.column);
  return problem === "unknown column" ? say.badHeading(place, found) : say.badNumber(place, found);
}
