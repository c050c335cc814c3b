import type { Figures } from "../core/figures-types.js";
import { type Finding, type Level, levels } from "../core/findings/finding.js";
import { ruleOf } from "../core/findings/rules.js";
import type { Shows } from "../core/plan/model/plan.js";
import { line, strokes } from "../drawing/make.js";
import { findingSentence, remedySentence, workingLines } from "../words/findings.js";
import { levelWords } from "../words/labels.js";
import { counted } from "../words/numbers.js";
import { ruleText } from "../words/rules.js";
import { listed, quantity } from "../words/say.js";
import { sourcesInEnglish, sourceWords } from "../words/source-words.js";
import { levelMark, markRadiusMm } from "./marks.js";
import type { Paper } from "./page.js";
import { beside, heading, type Piece, paragraph, space, stacked } from "./piece.js";
import { flowing, type Section } from "./section.js";

/** Every finding with its figure, the working and what mends it, gravest first; each rule and its source stand once over its findings. */
export function findingsSection(figures: Figures, shows: Shows, paper: Paper): Section {
  const widthMm = paper.right - paper.left;
  const pieces = levels.flatMap((level): Piece[] => {
    const found = figures.findings.filter((finding) => finding.level === level);
    if (found.length === 0) return [];
    const { name, means } = levelWords[level];
    const byRule = [...new Set(found.map(({ rule }) => rule))].flatMap((rule) => [
      rulePiece(rule, level, figures.plan.source.rules, widthMm),
      ...found
        .filter((finding) => finding.rule === rule)
        .map((finding) => findingPiece(finding, shows, widthMm)),
    ]);
    return [heading(`${name}: ${found.length}. ${means}`, widthMm), ...byRule];
  });
  const none = paragraph(
    { text: "No rule of this rule-set found anything. What was assumed is listed on the next pages." },
    widthMm,
  );
  const subtitle = counted(figures.findings.length, "finding");
  return flowing("Findings", subtitle, pieces.length === 0 ? [none] : pieces, paper);
}

const markRoomMm = 8;

/** What the rule asks, why, and where it comes from. */
function rulePiece(id: string, level: Level, rules: "us" | "iso", widthMm: number): Piece {
  const { title, why, mend } = ruleText(id);
  const helps = level === "unchecked" ? supplyIt : `What helps: ${lowerFirst(mend)}`;
  const sources = (ruleOf(id)?.sources[rules] ?? []).map((one) => sourceWords(one, sourcesInEnglish));
  const roomMm = widthMm - markRoomMm;
  const words = stacked([
    space(2.6),
    paragraph({ text: `${title}. ${why} ${helps}`, maxLines: 4 }, roomMm, 0.4),
    paragraph(
      { text: `Rule ${id}. Source: ${sources.join("; ")}.`, sizePt: 9.5, colour: "soft", maxLines: 3 },
      roomMm,
      1,
    ),
  ]);
  return { ...words, keepWithNext: true, draw: (x, top) => words.draw(x + markRoomMm, top) };
}

function findingPiece(finding: Finding, shows: Shows, widthMm: number): Piece {
  const rightAt = widthMm * 0.56;
  const leftMm = widthMm * 0.53 - markRoomMm;
  const others = finding.with ?? [];
  const left = stacked([
    paragraph(
      { text: findingSentence(finding, shows), sizePt: 10.5, weight: "semibold", maxLines: 6 },
      leftMm,
    ),
    ...(others.length > 0
      ? [paragraph({ text: `Also concerned: ${listed(others)}.`, sizePt: 9.5, maxLines: 2 }, leftMm)]
      : []),
  ]);
  const right = stacked(rightPieces(finding, shows, widthMm - rightAt));
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

const supplyIt = "Give the plan what is missing, or check it by hand before you rely on it.";
const mostSteps = 8;
const mostRemedies = 4;

function rightPieces(finding: Finding, shows: Shows, widthMm: number): Piece[] {
  const { figure, limit, unit, remedies = [] } = finding;
  const working = workingLines(finding, shows);
  const label = (text: string) =>
    paragraph({ text, sizePt: 9.5, weight: "semibold", colour: "soft" }, widthMm, 0.3);
  const numbers =
    figure === undefined || limit === undefined
      ? []
      : [
          paragraph(
            {
              text: `${quantity(figure, unit, shows)} against ${quantity(limit, unit, shows)}`,
              sizePt: 12,
              weight: "semibold",
              maxLines: 2,
            },
            widthMm,
            0.6,
          ),
        ];
  const steps = working.slice(0, mostSteps).join("; ");
  const more = working.length > mostSteps ? ` and ${working.length - mostSteps} further steps` : "";
  const shown =
    working.length === 0
      ? []
      : [label("Working"), paragraph({ text: steps + more, maxLines: 5 }, widthMm, 1)];
  const mends = remedies
    .slice(0, mostRemedies)
    .map((edit) => paragraph({ text: `– ${remedySentence(edit)}`, maxLines: 3 }, widthMm));
  const what = remedies.length > 1 ? "Any one of these mends it" : "This mends it";
  return [...numbers, ...shown, ...(mends.length > 0 ? [label(what), ...mends] : [])];
}

const lowerFirst = (words: string) => `${words.charAt(0).toLowerCase()}${words.slice(1)}`;
