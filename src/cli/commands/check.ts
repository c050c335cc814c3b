import { figuresJsonVersion, findingsJson } from "../../core/figures-json.js";
import type { Figures } from "../../core/figures-types.js";
import { type Finding, levels } from "../../core/findings/finding.js";
import { ruleOf } from "../../core/findings/rules.js";
import { findingSentence, workingLines } from "../../words/findings.js";
import { ruleText } from "../../words/rules.js";
import { sourceWords } from "../../words/source-words.js";
import type { TerminalWords } from "../../words/terminal/english.js";
import { readArguments } from "../arguments.js";
import { type Screen, screenIn } from "../language.js";
import { ledgerLines } from "../ledger.js";
import { loadWhole } from "../load-whole.js";
import { print, printJson } from "../print.js";
import { exit } from "../problem.js";
import { harmless, paint, wrap } from "../terminal.js";

export async function run(words: readonly string[], told: TerminalWords): Promise<number> {
  const { plan: path, switches } = readArguments("check", words, {
    plan: true,
    flags: { json: "switch", working: "switch" },
  });
  const { figures } = loadWhole(path);
  const status = figures.findings.some(({ level }) => level === "stop") ? exit.stops : exit.fine;
  if (switches.has("json")) {
    const { name, rules } = figures.plan.source;
    printJson({
      skiffloom: "check",
      version: figuresJsonVersion,
      plan: { name, rules },
      findings: findingsJson(figures.findings),
    });
    return status;
  }
  const screen = await screenIn(told);
  print([...ledgerLines(figures, screen), ...findingLines(figures, switches.has("working"), screen)]);
  return status;
}

function findingLines(figures: Figures, working: boolean, screen: Screen): string[] {
  return levels.flatMap((level) => {
    const rows = figures.findings.flatMap((finding, index) =>
      finding.level === level ? [{ finding, number: index + 1 }] : [],
    );
    if (rows.length === 0) return [];
    const { name, means } = screen.paper.of.labels.levels[level];
    const heading = `${name}: ${means}`;
    return [
      "",
      paint(heading, level, screen),
      ...rows.flatMap((row) => oneFinding(row.finding, row.number, figures, working, screen)),
    ];
  });
}

function oneFinding(
  finding: Finding,
  number: number,
  figures: Figures,
  working: boolean,
  screen: Screen,
): string[] {
  const { shows, rules } = figures.plan.source;
  const { findings: words, edit: editSentence, sources: sourced } = screen.paper.of;
  const lead = `${String(number).padStart(3)}  `;
  const set = (text: string) => wrap(text, screen.width - 5).map((line) => `     ${line}`);
  const [first = "", ...rest] = set(findingSentence(finding, shows, words));
  const sources = (ruleOf(finding.rule)?.sources[rules] ?? []).map((one) => sourceWords(one, sourced));
  return [
    `${lead}${first.slice(5)}`,
    ...rest,
    ...set(`${finding.rule}: ${ruleText(finding.rule, words).title} · ${sources.join("; ")}`).map((line) =>
      paint(line, "quiet", screen),
    ),
    ...(working ? workingLines(finding, shows, words).flatMap((line) => set(`  ${line}`)) : []),
    ...(finding.remedies ?? []).map(
      (edit, index) => `     → ${number}${letter(index)}  ${harmless(editSentence(edit))}`,
    ),
  ];
}

/** a, b, c … for the remedies of one finding. */
function letter(index: number): string {
  return String.fromCharCode(97 + index);
}
