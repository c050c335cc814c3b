import { makeFile, type PacketWanted, stepsLeft } from "../../packet/files/make-file.js";
import { shortScopes } from "../../packet/short-scopes.js";
import { paperWords } from "../../words/paper/fetch.js";
import type { TerminalWords } from "../../words/terminal/english.js";
import { readArguments } from "../arguments.js";
import { writeWhole } from "../files.js";
import { houseFonts } from "../fonts.js";
import { loadWhole } from "../load-whole.js";
import { momentAsked } from "../moment.js";
import { paperAsked } from "../paper.js";
import { print } from "../print.js";
import { exit, InputProblem } from "../problem.js";
import { harmless } from "../terminal.js";

export async function run(words: readonly string[], told: TerminalWords): Promise<number> {
  const given = readArguments("packet", words, {
    plan: true,
    flags: { for: "value", now: "value", to: "value", paper: "value", force: "switch" },
  });
  const whole = loadWhole(given.plan);
  const { shows } = whole.figures.plan.source;
  const wanted = { ...shows, paper: paperAsked(given.values.paper, shows) };
  const file = fileAsked(given.values.for, given.values.now);
  if (file.file === "short" && stepsLeft(whole) === 0)
    throw new InputProblem(({ work }) => work.packet.nothingLeft);
  const { content, ending } = await makeFile(
    whole,
    file,
    wanted,
    houseFonts,
    await paperWords(told.language),
  );
  const to = given.values.to ?? beside(given.plan, ending);
  writeWhole(to, content, given.switches.has("force"));
  print([told.common.files.written(to)]);
  return exit.fine;
}

function fileAsked(scope: string | undefined, now: string | undefined): PacketWanted {
  if (scope === undefined) {
    if (now !== undefined) throw new InputProblem(({ work }) => work.packet.nowAlone);
    return { file: "packet" };
  }
  const found = shortScopes.find((one) => one === scope);
  if (found === undefined)
    throw new InputProblem(({ common }) => common.words.takes("for", shortScopes, harmless(scope)));
  return { file: "short", scope: found, nowMin: momentAsked(now) };
}

function beside(plan: string, ending: string): string {
  if (plan === "-") throw new InputProblem(({ common }) => common.files.nameless);
  return `${plan.replace(/\.(ya?ml|json)$/i, "")}${ending}`;
}
