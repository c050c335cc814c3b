import type { LinePoints } from "../core/hull/form/form.js";
import type { HullProblem } from "../core/hull/problem.js";
import type { OffsetsForm } from "../core/plan/model/form.js";
import { writeQuantity } from "../core/quantity/write.js";

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

/** What is wrong with a table of offsets. */
export function offsetProblemWords({ problem, at, terms }: HullProblem): string {
  const found = terms?.found ?? "";
  if (problem === "unknown column")
    return `${at} is headed “${found}”; write station, then NAME half-breadth and NAME height`;
  return `${at}: “${found}” is no number of this kind`;
}
