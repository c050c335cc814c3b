import { makeFile, type PacketWanted, stepsLeft } from "../../packet/files/make-file.js";
import { shortScopes } from "../../packet/short-scopes.js";
import { paperWords } from "../../words/paper/fetch.js";
import { readArguments } from "../arguments.js";
import { writeWhole } from "../files.js";
import { houseFonts } from "../fonts.js";
import { languageAsked } from "../language.js";
import { loadWhole } from "../load-whole.js";
import { momentAsked } from "../moment.js";
import { paperAsked } from "../paper.js";
import { print } from "../print.js";
import { exit, InputProblem } from "../problem.js";
import { harmless } from "../terminal.js";

export const help = `skiffloom packet PLAN [--for tonight|project] [--now WHEN] [--to FILE] [--paper letter|a4] [--language en|es] [--force]

Writes the pages for the garage as one PDF: summary, loads, conductors, fuses, findings with their working,
what was assumed, the circuit on one line, outings; the survey, a marks sheet for each face with a drawing to scale, the
hole list and how she floats; boxes with their templates at true scale, runs, cuts, ends, flags for the wires and the
shopping list; the order of work with a square to tick for each step, and the as-built sheet;
the test sheet with every expected reading, the card for the water; cautions.

  --for tonight  only the steps of the next evening or day you are free, and the sheets they need
  --for project  only what is left of the project in hand, and the sheets it needs
  --now WHEN     with --for: take this for the time now, such as '2026-04-11 19:20'
  --to FILE   where; the plan's name with .pdf if left out
  --paper     letter or a4, else what the plan says
  --language  en or es: what the pages are written in; English if left out. Names of the plan stay as they are
  --force     write over a file that is there

One sheet by itself: 'skiffloom sheet PLAN --only TITLE'.`;

export async function run(words: readonly string[]): Promise<number> {
  const given = readArguments("packet", words, {
    plan: true,
    flags: { for: "value", now: "value", to: "value", paper: "value", language: "value", force: "switch" },
  });
  const whole = loadWhole(given.plan);
  const { shows } = whole.figures.plan.source;
  const wanted = { ...shows, paper: paperAsked(given.values.paper, shows) };
  const file = fileAsked(given.values.for, given.values.now);
  if (file.file === "short" && stepsLeft(whole) === 0)
    throw new InputProblem(["no step of the work is left: there is nothing to do that needs a sheet"]);
  const { content, ending } = await makeFile(
    whole,
    file,
    wanted,
    houseFonts,
    await paperWords(languageAsked(given.values.language)),
  );
  const to = given.values.to ?? beside(given.plan, ending);
  writeWhole(to, content, given.switches.has("force"));
  print([`${to} written`]);
  return exit.fine;
}

function fileAsked(scope: string | undefined, now: string | undefined): PacketWanted {
  if (scope === undefined) {
    if (now !== undefined) throw new InputProblem(["--now goes with --for tonight or --for project"]);
    return { file: "packet" };
  }
  const found = shortScopes.find((one) => one === scope);
  if (found === undefined)
    throw new InputProblem([`--for takes ${shortScopes.join(" or ")}, not ${harmless(scope)}`]);
  return { file: "short", scope: found, nowMin: momentAsked(now) };
}

function beside(plan: string, ending: string): string {
  if (plan === "-")
    throw new InputProblem(["a plan from standard input has no name: say where with --to FILE"]);
  return `${plan.replace(/\.(ya?ml|json)$/i, "")}${ending}`;
}
