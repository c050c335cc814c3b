import type { Figures } from "../core/figures-types.js";
import type { Shows } from "../core/plan/model/plan.js";
import { box, strokes } from "../drawing/make.js";
import { cautions, deference, neverChecked } from "../words/cautions.js";
import { findingSentence } from "../words/findings.js";
import { columnGapMm, columnWidthMm, flow } from "./flow.js";
import type { Paper } from "./page.js";
import { heading, type Piece, paragraph, stacked } from "./piece.js";
import type { Section } from "./section.js";

/** What can hurt, who decides, and what nobody checked. */
export function cautionsSection(figures: Figures, shows: Shows, paper: Paper): Section {
  const widthMm = columnWidthMm(paper, 2);
  const unchecked = figures.findings.filter(({ level }) => level === "unchecked");
  const bullet = (text: string) => paragraph({ text: `– ${text}`, maxLines: 4 }, widthMm, 0.8);
  const mostListed = 8;
  const rest = unchecked.length - mostListed;
  const pieces: Piece[] = [
    ...cautions.map(({ title, text }) =>
      stacked([
        paragraph({ text: title, sizePt: 11.5, weight: "semibold" }, widthMm, 0.4),
        paragraph({ text }, widthMm, 3.4),
      ]),
    ),
    heading("Who decides", widthMm),
    paragraph({ text: deference }, widthMm, 1),
    heading("Not checked, in any plan", widthMm),
    ...neverChecked.map(bullet),
    ...(unchecked.length > 0 ? [heading("Not checked, in this plan", widthMm)] : []),
    ...unchecked.slice(0, mostListed).map((finding) => bullet(findingSentence(finding, shows))),
    ...(rest > 0 ? [bullet(`and ${rest} more, listed under Findings`)] : []),
  ];
  const pages = flow(pieces, paper, 2).map((shapes) => {
    const middle = paper.left + widthMm + columnGapMm / 2;
    return [...shapes, box(middle, paper.bottom, 0, paper.top - paper.bottom - 2, { stroke: strokes.hair })];
  });
  return { title: "Cautions", subtitle: "Read this page before the first tool is picked up", pages };
}
