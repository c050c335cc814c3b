import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Shows } from "../../core/plan/model/plan.js";
import { planWork } from "../../core/work/plan-work.js";
import { packetPdf } from "../../packet/packet.js";
import { readArguments } from "../arguments.js";
import { writeWhole } from "../files.js";
import { loadWhole } from "../load.js";
import { exit, InputProblem } from "../problem.js";

export const help = `skiffloom packet PLAN [--to FILE] [--paper letter|a4] [--force]

Writes the pages for the garage as one PDF: summary, loads, conductors, fuses, findings with their working,
what was assumed, the circuit on one line, outings; the survey, a marks sheet for each face with a drawing to scale, the
hole list and how she floats; the order of work with a square to tick for each step, and the as-built sheet; cautions.

  --to FILE   where; the plan's name with .pdf if left out
  --paper     letter or a4, else what the plan says
  --force     write over a file that is there`;

export async function run(words: readonly string[]): Promise<number> {
  const given = readArguments("packet", words, {
    plan: true,
    flags: { to: "value", paper: "value", force: "switch" },
  });
  const { figures, layout, hull } = loadWhole(given.plan);
  const work = planWork(figures, { layout, hull });
  const { shows } = figures.plan.source;
  const to = given.values.to ?? beside(given.plan);
  const wanted = { ...shows, paper: paper(given.values.paper, shows) };
  const pdf = await packetPdf(figures, wanted, fonts(), undefined, { hull, layout, work });
  writeWhole(to, pdf, given.switches.has("force"));
  process.stdout.write(`${to} written\n`);
  return exit.fine;
}

function paper(asked: string | undefined, shows: Shows): Shows["paper"] {
  if (asked === undefined) return shows.paper;
  if (asked === "letter" || asked === "a4") return asked;
  throw new InputProblem([`--paper takes letter or a4, not ${asked}`]);
}

function beside(plan: string): string {
  if (plan === "-")
    throw new InputProblem(["a plan from standard input has no name: say where with --to FILE"]);
  return `${plan.replace(/\.(ya?ml|json)$/i, "")}.pdf`;
}

/** The fonts lie in the package, two folders above the built command. */
function fonts() {
  const read = (name: string) =>
    readFileSync(fileURLToPath(new URL(`../../assets/fonts/${name}`, import.meta.url)));
  return { regular: read("SourceSans3-Regular.ttf"), semibold: read("SourceSans3-SemiBold.ttf") };
}
