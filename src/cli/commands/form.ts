import type { FormFigures } from "../../core/hull/figures.js";
import { lengthAlongM, lineAt } from "../../core/hull/form/line.js";
import { parseOffsets } from "../../core/hull/form/offsets.js";
import { offsetNotation } from "../../core/hull/lay-form.js";
import { offsetNumbers } from "../../core/plan/model/form.js";
import type { Shows } from "../../core/plan/model/plan.js";
import { nextReasonWords, nextWords } from "../../words/hull-words.js";
import { lengthWords } from "../../words/numbers.js";
import { offsetProblemWords, offsetSection, offsetsInAnyLanguage } from "../../words/offset-words.js";
import type { TerminalWords } from "../../words/terminal/english.js";
import { readArguments } from "../arguments.js";
import { readBytes } from "../files.js";
import { type Screen, screenIn } from "../language.js";
import { layoutFindingLines } from "../layout-findings.js";
import { loadWhole } from "../load-whole.js";
import { print, printJson } from "../print.js";
import { exit, InputProblem } from "../problem.js";
import { left, right, textTable } from "../table.js";
import { harmless, paint, wrap } from "../terminal.js";

export async function run(words: readonly string[], told: TerminalWords): Promise<number> {
  const importing = words.some((word) => word === "--offsets" || word.startsWith("--offsets="));
  const given = readArguments("form", words, {
    plan: !importing,
    flags: { offsets: "value", numbers: "value", json: "switch" },
  });
  if (given.values.offsets !== undefined) return printOffsets(given.values.offsets, given.values.numbers);
  const say = told.hull.form;
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
  const screen = await screenIn(told);
  if (form === undefined) {
    print([say.none]);
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

function lineRows({ form, source }: FormFigures, shows: Shows, screen: Screen): string[] {
  const say = screen.told.hull.form;
  if (form === undefined) return [say.notYet];
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
      above === undefined ? "" : say.above(say.spans[above], form.lines[index + 1]?.name ?? ""),
    ];
  });
  const columns = [
    left(say.heads.line),
    right(say.heads.points),
    right(say.heads.from),
    right(say.heads.to),
    right(say.heads.along),
    right(say.heads.out),
    right(say.heads.up),
    left(say.heads.above),
  ];
  return [paint(say.title(say.from[source]), "strong", screen), ...textTable(columns, rows, screen)];
}

function nextLines({ next }: FormFigures, shows: Shows, screen: Screen): string[] {
  if (next.length === 0) return [];
  const { hull: words } = screen.paper.of;
  return [
    "",
    paint(screen.told.hull.form.next, "strong", screen),
    ...next.flatMap((one, index) =>
      wrap(`${nextWords(one, shows, words)}: ${nextReasonWords(one, shows, words)}`, screen.width - 5).map(
        (line, at) => (at === 0 ? `${String(index + 1).padStart(3)}  ${line}` : `     ${line}`),
      ),
    ),
  ];
}

/** Prints `craft / form` for a table of offsets, ready to paste. */
function printOffsets(path: string, asked = "mm"): number {
  const numbers = offsetNumbers.find((one) => one === asked);
  if (numbers === undefined)
    throw new InputProblem(({ common }) => common.words.takes("numbers", offsetNumbers, harmless(asked)));
  const text = new TextDecoder().decode(readBytes(path));
  const { lines, problems } = parseOffsets(text, offsetNotation(numbers), offsetsInAnyLanguage);
  if (problems.length > 0)
    throw new InputProblem((say) =>
      problems.map((one) => harmless(`${path}: ${offsetProblemWords(one, say.hull.form)}`)),
    );
  if (lines.length < 2) throw new InputProblem(({ hull }) => harmless(hull.form.twoLines(path)));
  print(offsetSection(lines, numbers));
  return exit.fine;
}
