import { type FileWanted, fileList, makeFile } from "../../packet/files/make-file.js";
import { paperWords } from "../../words/paper/fetch.js";
import { readArguments } from "../arguments.js";
import { writeWhole } from "../files.js";
import { houseFonts } from "../fonts.js";
import { languageAsked } from "../language.js";
import { loadWhole } from "../load-whole.js";
import { paperAsked } from "../paper.js";
import { print } from "../print.js";
import { exit, InputProblem } from "../problem.js";
import { harmless } from "../terminal.js";
import { notThere } from "../unknown.js";

export const help = `skiffloom sheet PLAN [--only TITLE] [--page N] [--paper letter|a4] [--language en|es] [--to FILE] [--force]

Writes one part of the packet by itself, as PDF, or one page of it as SVG. Without --only it lists the parts.

  --only TITLE  'conductor schedule', 'one-line diagram' and so on
  --page N      that page alone, as SVG at true scale
  --paper       letter or a4, else what the plan says
  --language    en or es: what the page is written in, titles too; English if left out
  --to FILE     where; the plan's name with the title if left out
  --force       write over a file that is there`;

export async function run(words: readonly string[]): Promise<number> {
  const given = readArguments("sheet", words, {
    plan: true,
    flags: { only: "value", page: "value", paper: "value", language: "value", to: "value", force: "switch" },
  });
  const whole = loadWhole(given.plan);
  const plan = whole.figures.plan.source;
  const shows = { ...plan.shows, paper: paperAsked(given.values.paper, plan.shows) };
  const inWords = await paperWords(languageAsked(given.values.language));
  const { sheets } = fileList(whole, shows, inWords);
  const { only } = given.values;
  if (only === undefined) {
    if (given.values.page !== undefined)
      throw new InputProblem(["--page goes with --only: say of which part the page is wanted"]);
    print(
      sheets.map(({ title, pages }) => harmless(`${title}, ${pages === 1 ? "1 page" : `${pages} pages`}`)),
    );
    return exit.fine;
  }
  const found =
    sheets.find(({ title }) => title === only) ??
    sheets.find(({ title }) => title.toLowerCase() === only.toLowerCase());
  if (!found)
    throw notThere(
      "part of the packet",
      only,
      sheets.map(({ title }) => title),
    );
  const made = await makeFile(whole, wanted(found, given.values.page), shows, houseFonts, inWords);
  const to = given.values.to ?? `${plainName(given.plan)}${plainName(made.ending)}`;
  writeWhole(to, made.content, given.switches.has("force"));
  process.stdout.write(`${harmless(to)} written\n`);
  return exit.fine;
}

function wanted({ title, pages }: { title: string; pages: number }, page: string | undefined): FileWanted {
  if (page === undefined) return { file: "sheet", title };
  const number = /^\d{1,4}$/.test(page) ? Number(page) : 0;
  if (!(number >= 1 && number <= pages))
    throw new InputProblem([harmless(`--page takes 1 to ${pages} for ${title}, not ${page}`)]);
  return { file: "page", title, page: number };
}

/** Without the ending of a plan's file, and without signs that a file's name can't hold. */
function plainName(path: string): string {
  if (path === "-")
    throw new InputProblem(["a plan from standard input has no name: say where with --to FILE"]);
  return path.replace(/\.(ya?ml|json)$/i, "").replace(/["*:<>?|\\]+/g, "-");
}
