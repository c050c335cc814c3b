import type { FormFigures } from "../../core/hull/figures.js";
import { lengthAlongM, lineAt } from "../../core/hull/form/line.js";
import { parseOffsets } from "../../core/hull/form/offsets.js";
import { offsetNotation } from "../../core/hull/lay-form.js";
import { offsetNumbers } from "../../core/plan/model/form.js";
import type { Shows } from "../../core/plan/model/plan.js";
import { nextReasonWords, nextWords } from "../../words/hull-words.js";
import { lengthWords } from "../../words/numbers.js";
import { offsetProblemWords, offsetSection } from "../../words/offset-words.js";
import { readArguments } from "../arguments.js";
import { readBytes } from "../files.js";
import { layoutFindingLines } from "../layout-findings.js";
import { loadWhole } from "../load-whole.js";
import { print, printJson } from "../print.js";
import { exit, InputProblem } from "../problem.js";
import { type Column, textTable } from "../table.js";
import { harmless, paint, type Terminal, terminal, wrap } from "../terminal.js";

export const help = `skiffloom form PLAN [--json]
skiffloom form --offsets FILE.csv [--numbers mm|m|in|feet-inches-eighths]

Prints the form of the craft as measured: its lines, what does not fit, and what to measure next and why.
Three ways to give it, under craft / form:
  stations, lines      a tape survey: at each station how far out and how high each line is
  start from           a shape to begin with: flat-bottomed skiff, vee-bottomed utility, round tender, canoe,
                       sit-on-top kayak, sit-in kayak; scaled to length, beam and depth, mended by 'measured'
  offsets              the text of a table of offsets
Nothing is smoothed away: a figure off the line of its neighbours is named, with what would be fair.

How to survey alone: chock the boat level, stretch a line along the centre, mark stations on it, and at each station
measure from the line out to keel, chine and sheer, and up from a level floor or plank. Six stations are the least
at which a slip shows.

  --offsets FILE  prints the plan section of a table of offsets: columns station, NAME half-breadth, NAME height
  --numbers       how the table's numbers are written; millimetres if left out
  --json          everything as data (docs/json.md)`;

export function run(words: readonly string[]): number {
  const importing = words.some((word) => word === "--offsets" || word.startsWith("--offsets="));
  const given = readArguments("form", words, {
    plan: !importing,
    flags: { offsets: "value", numbers: "value", json: "switch" },
  });
  if (given.values.offsets !== undefined) return printOffsets(given.values.offsets, given.values.numbers);
  const { figures, hull } = loadWhole(given.plan);
  const { name, shows } = figures.plan.source;
  const { form } = hull;
  if (given.switches.has("json")) {
    printJson({
      skiffloom: "form",
      version: 1,
      plan: { name },
      ...(form === undefined ? {} : { form: formJson(form) }),
    });
    return exit.fine;
  }
  const screen = terminal();
  if (form === undefined) {
    print(["This plan gives no form of the craft; 'skiffloom form --help' tells how one is measured."]);
    return exit.fine;
  }
  print([
    ...lineRows(form, shows, screen),
    ...nextLines(form, shows, screen),
    ...layoutFindingLines(figures, ["form"], screen),
  ]);
  return exit.fine;
}

function formJson(form: FormFigures) {
  return {
    source: form.source,
    open: form.open,
    problems: form.problems,
    next: form.next,
    lines: (form.form?.lines ?? []).map(({ name, points, knuckle }, index) => ({
      name,
      corner: knuckle,
      above: form.form?.spans[index] ?? null,
      pointsM: points,
    })),
  };
}

const left = (heading: string): Column => ({ heading, align: "left" });
const right = (heading: string): Column => ({ heading, align: "right" });

function lineRows({ form, source }: FormFigures, shows: Shows, screen: Terminal): string[] {
  if (form === undefined) return ["What was measured makes no form yet; the findings below say why."];
  const rows = form.lines.map((line, index) => {
    const middle = lineAt(line, (line.fromM + line.toM) / 2);
    const above = form.spans[index];
    return [
      line.name,
      String(line.points.length),
      lengthWords(line.fromM, shows),
      lengthWords(line.toM, shows),
      lengthWords(lengthAlongM(line, line.fromM, line.toM), shows),
      lengthWords(middle[1], shows),
      lengthWords(middle[2], shows),
      above === undefined ? "" : `${above} to ${form.lines[index + 1]?.name ?? ""}`,
    ];
  });
  const columns = [
    left("line"),
    right("points"),
    right("from"),
    right("to"),
    right("along it"),
    right("out, middle"),
    right("up, middle"),
    left("hull above"),
  ];
  const from = { survey: "a tape survey", "starting form": "a starting form", offsets: "a table of offsets" };
  return [paint(`Form, from ${from[source]}`, "strong", screen), ...textTable(columns, rows, screen)];
}

function nextLines({ next }: FormFigures, shows: Shows, screen: Terminal): string[] {
  if (next.length === 0) return [];
  return [
    "",
    paint("Measure next, most useful first", "strong", screen),
    ...next.flatMap((one, index) =>
      wrap(`${nextWords(one, shows)}: ${nextReasonWords(one, shows)}`, screen.width - 5).map((line, at) =>
        at === 0 ? `${String(index + 1).padStart(3)}  ${line}` : `     ${line}`,
      ),
    ),
  ];
}

/** Prints `craft / form` for a table of offsets, ready to paste. */
function printOffsets(path: string, asked = "mm"): number {
  const numbers = offsetNumbers.find((one) => one === asked);
  if (numbers === undefined)
    throw new InputProblem([`--numbers takes ${offsetNumbers.join(", ")}, not ${harmless(asked)}`]);
  const text = new TextDecoder().decode(readBytes(path));
  const { lines, problems } = parseOffsets(text, offsetNotation(numbers));
  if (problems.length > 0)
    throw new InputProblem(problems.map((one) => harmless(`${path}: ${offsetProblemWords(one)}`)));
  if (lines.length < 2)
    throw new InputProblem([
      `${path}: a form needs two lines at least; columns are station, NAME half-breadth, NAME height`,
    ]);
  print(offsetSection(lines, numbers));
  return exit.fine;
}
