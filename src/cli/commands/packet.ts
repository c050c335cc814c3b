import { makeFile } from "../../packet/files/make-file.js";
import { readArguments } from "../arguments.js";
import { writeWhole } from "../files.js";
import { houseFonts } from "../fonts.js";
import { loadWhole } from "../load.js";
import { paperAsked } from "../paper.js";
import { exit, InputProblem } from "../problem.js";

export const help = `skiffloom packet PLAN [--to FILE] [--paper letter|a4] [--force]

Writes the pages for the garage as one PDF: summary, loads, conductors, fuses, findings with their working,
what was assumed, the circuit on one line, outings; the survey, a marks sheet for each face with a drawing to scale, the
hole list and how she floats; boxes with their templates at true scale, runs, cuts, ends, flags for the wires and the
shopping list; the order of work with a square to tick for each step, and the as-built sheet;
the test sheet with every expected reading, the card for the water; cautions.

  --to FILE   where; the plan's name with .pdf if left out
  --paper     letter or a4, else what the plan says
  --force     write over a file that is there`;

export async function run(words: readonly string[]): Promise<number> {
  const given = readArguments("packet", words, {
    plan: true,
    flags: { to: "value", paper: "value", force: "switch" },
  });
  const whole = loadWhole(given.plan);
  const { shows } = whole.figures.plan.source;
  const to = given.values.to ?? beside(given.plan);
  const wanted = { ...shows, paper: paperAsked(given.values.paper, shows) };
  const { content } = await makeFile(whole, { file: "packet" }, wanted, houseFonts);
  writeWhole(to, content, given.switches.has("force"));
  process.stdout.write(`${to} written\n`);
  return exit.fine;
}

function beside(plan: string): string {
  if (plan === "-")
    throw new InputProblem(["a plan from standard input has no name: say where with --to FILE"]);
  return `${plan.replace(/\.(ya?ml|json)$/i, "")}.pdf`;
}
