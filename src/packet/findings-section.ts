import type { Figures } from "../core/figures-types.js";
import { type Finding, levels } from "../core/findings/finding.js";
import { ruleOf } from "../core/findings/rules.js";
import type { Shows } from "../core/plan/model/plan.js";
import { line, strokes } from "../drawing/make.js";
import { findingSentence, remedySentence, workingLines } from "../words/findings.js";
import { levelWords } from "../words/labels.js";
import { counted } from "../words/numbers.js";
import { ruleText } from "../words/rules.js";
import { quantity } from "../words/say.js";
import { sourceWords } from "../words/source-words.js";
import { flow } from "./flow.js";
import { levelMark, markRadiusMm } from "./marks.js";
import type { Paper } from "./page.js";
import { beside, heading, type Piece, paragraph, space, stacked } from "./piece.js";
import type { Section } from "./section.js";

/** Every finding with its figure, its rule, the working and what mends it, gravest first. */
export function findingsSection(figures: Figures, shows: Shows, paper: Paper): Section {
  const widthMm = paper.right - paper.left;
  const pieces = levels.flatMap((level): Piece[] => {
    const found = figures.findings.filter((finding) => finding.level === level);
    if (found.length === 0) return [];
    const { name, means } = levelWords[level];
    return [
      heading(`${name}: ${found.length}. ${means}`, widthMm),
      ...found.map((finding) => findingPiece(finding, shows, figures.plan.source.rules, widthMm)),
    ];
  });
  const none = paragraph(
    { text: "No rule of this rule-set found anything. What was assumed is listed on the next pages." },
    widthMm,
  );
  return {
    title: "Findings",
    subtitle: counted(figures.findings.length, "finding"),
    pages: flow(pieces.length === 0 ? [none] : pieces, paper),
  };
}

function findingPiece(finding: Finding, shows: Shows, rules: "us" | "iso", widthMm: number): Piece {
  const leftMm = widthMm * 0.54;
  const rightAt = widthMm * 0.58;
  const rule = ruleText(finding.rule);
  const sources = ruleOf(finding.rule)?.sources[rules] ?? [];
  const markRoom = 8;
  const left = stacked([
    paragraph(
      { text: findingSentence(finding, shows), sizePt: 11, weight: "semibold", maxLines: 6 },
      leftMm - markRoom,
      0.8,
    ),
    paragraph({ text: about(finding), maxLines: 2 }, leftMm - markRoom, 0.8),
    paragraph(
      { text: `Rule ${finding.rule}: ${rule.title}. ${rule.why}`, sizePt: 9.5, colour: "soft", maxLines: 5 },
      leftMm - markRoom,
    ),
    ...sources
      .slice(0, 4)
      .map((source) =>
        paragraph(
          { text: `Source: ${sourceWords(source)}`, sizePt: 9.5, colour: "soft", maxLines: 3 },
          leftMm - markRoom,
        ),
      ),
  ]);
  const right = stacked(rightPieces(finding, rule.mend, shows, widthMm - rightAt));
  const inside = beside([
    { at: markRoom, piece: left },
    { at: rightAt, piece: right },
  ]);
  const heightMm = inside.heightMm + 5;
  return {
    heightMm,
    draw: (x, top) => [
      ...levelMark(finding.level, x + 3, top - 4.6, markRadiusMm),
      ...inside.draw(x, top - 2.4),
      line(x, top - heightMm, x + widthMm, top - heightMm, strokes.hair),
    ],
  };
}

function about({ at, with: others }: Finding): string {
  if (others === undefined || others.length === 0) return `At ${at}.`;
  const named = others.slice(0, 6).join(", ");
  return `At ${at}, with ${named}${others.length > 6 ? ` and ${others.length - 6} more` : ""}.`;
}

const supplyIt = "Give the plan what is missing, or check it by hand before you rely on it.";
const mostSteps = 8;
const mostRemedies = 4;

function rightPieces(finding: Finding, mend: string, shows: Shows, widthMm: number): Piece[] {
  const { figure, limit, unit, remedies = [] } = finding;
  const working = workingLines(finding, shows);
  const label = (text: string) =>
    paragraph({ text, sizePt: 9.5, weight: "semibold", colour: "soft" }, widthMm, 0.3);
  const figures =
    figure === undefined || limit === undefined
      ? []
      : [
          label("Figure and limit"),
          paragraph(
            {
              text: `${quantity(figure, unit, shows)} against ${quantity(limit, unit, shows)}`,
              sizePt: 12,
              weight: "semibold",
              maxLines: 2,
            },
            widthMm,
            1.4,
          ),
        ];
  const steps = working.slice(0, mostSteps).map((step) => paragraph({ text: step, maxLines: 2 }, widthMm));
  const more =
    working.length > mostSteps
      ? [paragraph({ text: `and ${working.length - mostSteps} further steps`, colour: "soft" }, widthMm)]
      : [];
  const listed = remedies
    .slice(0, mostRemedies)
    .map((edit) => paragraph({ text: `– ${remedySentence(edit)}`, maxLines: 3 }, widthMm));
  const plain = finding.level === "unchecked" ? supplyIt : mend;
  const what = remedies.length > 1 ? "Any one of these mends it" : "What to do";
  return [
    ...figures,
    ...(steps.length > 0 ? [label("Working"), ...steps, ...more, space(1.4)] : []),
    label(what),
    ...(listed.length > 0 ? listed : [paragraph({ text: plain, maxLines: 5 }, widthMm)]),
  ];
}
