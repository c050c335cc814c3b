import { type FileWanted, fileList, makeFile } from "../../packet/files/make-file.js";
import { paperWords } from "../../words/paper/fetch.js";
import type { TerminalWords } from "../../words/terminal/english.js";
import { readArguments } from "../arguments.js";
import { writeWhole } from "../files.js";
import { houseFonts } from "../fonts.js";
import { loadWhole } from "../load-whole.js";
import { paperAsked } from "../paper.js";
import { print } from "../print.js";
import { exit, InputProblem } from "../problem.js";
import { harmless } from "../terminal.js";
import { notThere } from "../unknown.js";

export async function run(words: readonly string[], told: TerminalWords): Promise<number> {
  const given = readArguments("sheet", words, {
    plan: true,
    flags: { only: "name", page: "value", paper: "value", to: "value", force: "switch" },
  });
  const whole = loadWhole(given.plan);
  const plan = whole.figures.plan.source;
  const shows = { ...plan.shows, paper: paperAsked(given.values.paper, plan.shows) };
  const inWords = await paperWords(told.language);
  const { sheets } = fileList(whole, shows, inWords);
  const { only } = given.values;
  if (only === undefined) {
    if (given.values.page !== undefined) throw new InputProblem(({ work }) => work.sheet.pageAlone);
    print(sheets.map(({ title, pages }) => harmless(told.work.sheet.pages(title, pages))));
    return exit.fine;
  }
  const found =
    sheets.find(({ title }) => title === only) ??
    sheets.find(({ title }) => title.toLowerCase() === only.toLowerCase());
  if (!found)
    throw notThere(
      "sheet",
      only,
      sheets.map(({ title }) => title),
    );
  const made = await makeFile(whole, wanted(found, given.values.page), shows, houseFonts, inWords);
  const to = given.values.to ?? `${plainName(given.plan)}${plainName(made.ending)}`;
  writeWhole(to, made.content, given.switches.has("force"));
  print([told.common.files.written(to)]);
  return exit.fine;
}

function wanted({ title, pages }: { title: string; pages: number }, page: string | undefined): FileWanted {
  if (page === undefined) return { file: "sheet", title };
  const number = /^\d{1,4}$/.test(page) ? Number(page) : 0;
  if (!(number >= 1 && number <= pages))
    throw new InputProblem(({ work }) => harmless(work.sheet.noPage(pages, title, page)));
  return { file: "page", title, page: number };
}

/** Without the ending of a plan's file, and without signs that a file's name can't hold. */
function plainName(path: string): string {
  if (path === "-") throw new InputProblem(({ common }) => common.files.nameless);
  return path.replace(/\.(ya?ml|json)$/i, "").replace(/["*:<>?|\\]+/g, "-");
}
