import type { Figures } from "../core/figures-types.js";
import { type Finding, type Level, levels } from "../core/findings/finding.js";
import { ruleOf } from "../core/findings/rules.js";
import type { Shows } from "../core/plan/model/plan.js";
import { line, strokes } from "../drawing/make.js";
import { findingSentence, workingLines } from "../words/findings.js";
import { listed } from "../words/listed.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { pathWords } from "../words/path-words.js";
import { ruleText } from "../words/rules.js";
import { quantityIn } from "../words/say.js";
import { sourceWords } from "../words/source-words.js";
import { levelMark, markRadiusMm } from "./marks.js";
import type { Paper } from "./page.js";
import { beside, heading, type Piece, paragraph, space, stacked } from "./piece.js";
import { flowing, type Section } from "./section.js";

/** Every finding with its figure, the working and what mends it, gravest first; each rule and its source stand once over its findings. */
export function findingsSection(figures: Figures, shows: Shows, paper: Paper, words: PaperWords): Section {
  const { findings: say, of } = words;
  const widthMm = paper.right - paper.left;
  const pieces = levels.flatMap((level): Piece[] => {
    const found = figures.findings.filter((finding) => finding.level === level);
    if (found.length === 0) return [];
    const { name, means } = of.labels.levels[level];
    const byRule = [...new Set(found.map(({ rule }) => rule))].flatMap((rule) => [
      rulePiece(rule, level, figures.plan.source.rules, words, widthMm),
      ...found
        .filter((finding) => finding.rule === rule)
        .map((finding) => findingPiece(finding, shows, words, widthMm)),
    ]);
    return [heading(say.heading(name, found.length, means), widthMm), ...byRule];
  });
  const none = paragraph({ text: say.none }, widthMm);
  return flowing(say.title, say.count(figures.findings.length), pieces.length === 0 ? [none] : pieces, paper);
}

const markRoomMm = 8;

/** What the rule asks, why, and where it comes from. */
function rulePiece(
  id: string,
  level: Level,
  rules: "us" | "iso",
  { findings: say, of }: PaperWords,
  widthMm: number,
): Piece {
  const { title, why, mend } = ruleText(id, of.findings);
  const helps = level === "unchecked" ? say.supplyIt : say.helps(lowerFirst(mend));
  const sources = (ruleOf(id)?.sources[rules] ?? []).map((one) => sourceWords(one, of.sources));
  const roomMm = widthMm - markRoomMm;
  const words = stacked([
    space(2.6),
    paragraph({ text: `${title}. ${why} ${helps}`, maxLines: 4 }, roomMm, 0.4),
    paragraph(
      { text: say.rule(id, sources.join("; ")), sizePt: 9.5, colour: "soft", maxLines: 3 },
      roomMm,
      1,
    ),
  ]);
  return { ...words, keepWithNext: true, draw: (x, top) => words.draw(x + markRoomMm, top) };
}

function findingPiece(finding: Finding, shows: Shows, words: PaperWords, widthMm: number): Piece {
  const { findings: say, of } = words;
  const rightAt = widthMm * 0.56;
  const figures = rightPieces(finding, shows, words, widthMm - rightAt);
  const leftMm = (figures.length === 0 ? widthMm : widthMm * 0.53) - markRoomMm;
  const others = (finding.with ?? []).map((one) => pathWords(one, of.findings.path));
  const left = stacked([
    paragraph(
      { text: findingSentence(finding, shows, of.findings), sizePt: 10.5, weight: "semibold", maxLines: 6 },
      leftMm,
    ),
    ...(others.length > 0
      ? [paragraph({ text: say.also(listed(others, of.findings.joining)), sizePt: 9.5, maxLines: 2 }, leftMm)]
      : []),
  ]);
  const right = stacked(figures);
  const inside = beside([
    { at: markRoomMm, piece: left },
    { at: rightAt, piece: right },
  ]);
  const heightMm = inside.heightMm + 2.8;
  return {
    heightMm,
    draw: (x, top) => [
      line(x + markRoomMm, top, x + widthMm, top, strokes.hair),
      ...levelMark(finding.level, x + 3, top - 3.4, markRadiusMm),
      ...inside.draw(x, top - 1.4),
    ],
  };
}

const mostSteps = 8;
const mostRemedies = 4;

function rightPieces(
  finding: Finding,
  shows: Shows,
  { findings: say, of }: PaperWords,
  widthMm: number,
): Piece[] {
  const { figure, limit, unit, remedies = [] } = finding;
  const working = workingLines(finding, shows, of.findings);
  const label = (text: string) =>
    paragraph({ text, sizePt: 9.5, weight: "semibold", colour: "soft" }, widthMm, 0.3);
  const numbers =
    figure === undefined || limit === undefined
      ? []
      : [
          paragraph(
            {
              text: say.against(
                quantityIn(figure, unit, shows, of.findings),
                quantityIn(limit, unit, shows, of.findings),
              ),
              sizePt: 12,
              weight: "semibold",
              maxLines: 2,
            },
            widthMm,
            0.6,
          ),
        ];
  const steps = working.slice(0, mostSteps).join("; ");
  const more = working.length > mostSteps ? say.moreSteps(working.length - mostSteps) : "";
  const shown =
    working.length === 0
      ? []
      : [label(say.working), paragraph({ text: steps + more, maxLines: 5 }, widthMm, 1)];
  const mends = remedies
    .slice(0, mostRemedies)
    .map((edit) => paragraph({ text: `– ${of.edit(edit)}`, maxLines: 3 }, widthMm));
  const what = remedies.length > 1 ? say.anyMends : say.mends;
  return [...numbers, ...shown, ...(mends.length > 0 ? [label(what), ...mends] : [])];
}

const lowerFirst = (words: string) => `${words.charAt(0).toLowerCase()}${words.slice(1)}`;
