import { figuresJsonVersion, findingsJson } from "../../core/figures-json.js";
import type { Figures } from "../../core/figures-types.js";
import { type Finding, levels } from "../../core/findings/finding.js";
import { ruleOf } from "../../core/findings/rules.js";
import { editSentence } from "../../words/edits.js";
import { findingSentence, workingLines } from "../../words/findings.js";
import { levelWords } from "../../words/labels.js";
import { ruleText } from "../../words/rules.js";
import { sourcesInEnglish, sourceWords } from "../../words/source-words.js";
import { readArguments } from "../arguments.js";
import { ledgerLines } from "../ledger.js";
import { loadWhole } from "../load-whole.js";
import { print, printJson } from "../print.js";
import { exit } from "../problem.js";
import { harmless, paint, type Terminal, terminal, wrap } from "../terminal.js";

export const help = `skiffloom check PLAN [--json] [--working]

Reads a plan, works everything out and prints what it finds, gravest first:
  stop        do not build it so
  mend        should be put right
  mind        worth knowing
  not checked could not be judged; not the same as fine

  --working   how each figure came about
  --json      the same as data (docs/json.md)

Ends with status 0 when nothing is a stop, 1 when something is, 2 when the plan can't be read.
Each remedy has a number that 'skiffloom apply PLAN NUMBER' takes.`;

export function run(words: readonly string[]): number {
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
  const screen = terminal();
  print([...ledgerLines(figures, screen), ...findingLines(figures, switches.has("working"), screen)]);
  return status;
}

function findingLines(figures: Figures, working: boolean, screen: Terminal): string[] {
  return levels.flatMap((level) => {
    const rows = figures.findings.flatMap((finding, index) =>
      finding.level === level ? [{ finding, number: index + 1 }] : [],
    );
    if (rows.length === 0) return [];
    const heading = `${levelWords[level].name}: ${levelWords[level].means}`;
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
  screen: Terminal,
): string[] {
  const { shows, rules } = figures.plan.source;
  const lead = `${String(number).padStart(3)}  `;
  const set = (text: string) => wrap(text, screen.width - 5).map((line) => `     ${line}`);
  const [first = "", ...rest] = set(findingSentence(finding, shows));
  const sources = (ruleOf(finding.rule)?.sources[rules] ?? []).map((one) =>
    sourceWords(one, sourcesInEnglish),
  );
  return [
    `${lead}${first.slice(5)}`,
    ...rest,
    ...set(`${finding.rule}: ${ruleText(finding.rule).title} · ${sources.join("; ")}`).map((line) =>
      paint(line, "quiet", screen),
    ),
    ...(working ? workingLines(finding, shows).flatMap((line) => set(`  ${line}`)) : []),
    ...(finding.remedies ?? []).map(
      (edit, index) => `     → ${number}${letter(index)}  ${harmless(editSentence(edit))}`,
    ),
  ];
}

/** a, b, c … for the remedies of one finding. */
function letter(index: number): string {
  return String.fromCharCode(97 + index);
}
