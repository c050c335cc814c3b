import type { LinePoints } from "../core/hull/form/form.js";
import type { HullProblem } from "../core/hull/problem.js";
import type { OtherNames } from "../core/parts/tables/columns.js";
import type { OffsetsForm } from "../core/plan/model/form.js";
import { writeQuantity } from "../core/quantity/write.js";
import type { TerminalWords } from "./terminal/english.js";

/** A table of offsets as the plan writes a form: stations of all lines together, `none` where a line has no figure. */
export function offsetSection(lines: readonly LinePoints[], numbers: OffsetsForm["numbers"]): string[] {
  const unit = numbers === "feet-inches-eighths" ? "in" : numbers;
  const stations = [...new Set(lines.flatMap(({ points }) => points.map(([x]) => x)))].sort((a, b) => a - b);
  const written = (value: number | undefined) =>
    value === undefined ? "none" : writeQuantity(value, unit, 7);
  const list = (values: readonly (number | undefined)[]) => `[${values.map(written).join(", ")}]`;
  return [
    "craft:",
    "  form:",
    `    stations: ${list(stations)}`,
    "    lines:",
    ...lines.flatMap(({ name, points, knuckle, above }, index) => {
      const at = (x: number) => points.find((point) => point[0] === x);
      const centre = points.every((point) => point[1] === 0);
      return [
        `      ${JSON.stringify(name)}:`,
        ...(centre ? [] : [`        half-breadths: ${list(stations.map((x) => at(x)?.[1]))}`]),
        `        heights: ${list(stations.map((x) => at(x)?.[2]))}`,
        ...(above === "round" && index < lines.length - 1 ? ["        above: round"] : []),
        ...(knuckle ? [] : ["        corner: false"]),
      ];
    }),
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
