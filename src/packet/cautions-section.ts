import type { Figures } from "../core/figures-types.js";
import type { Shows } from "../core/plan/model/plan.js";
import { box, strokes } from "../drawing/make.js";
import { findingSentence } from "../words/findings.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { columnGapMm, columnWidthMm, flow } from "./flow.js";
import type { Paper } from "./page.js";
import { heading, type Piece, paragraph, stacked } from "./piece.js";
import type { Section } from "./section.js";

/** What can hurt, who decides, and what nobody checked. */
export function cautionsSection(
  figures: Figures,
  shows: Shows,
  paper: Paper,
  { findings: { cautions: say }, of }: PaperWords,
): Section {
  const { cautions, deference, neverChecked } = of.cautions;
  const widthMm = columnWidthMm(paper, 2);
  const solar = figures.plan.chargers.some(({ kind }) => kind === "solar");
  const told = cautions.filter(({ of }) => of === undefined || solar);
  const unchecked = figures.findings.filter(({ level }) => level === "unchecked");
  const bullet = (text: string) => paragraph({ text: `– ${text}`, maxLines: 4 }, widthMm, 0.8);
  const mostListed = 8;
  const rest = unchecked.length - mostListed;
  const pieces: Piece[] = [
    ...told.map(({ title, text }) =>
      stacked([
        paragraph({ text: title, sizePt: 11, weight: "semibold" }, widthMm, 0.3),
        paragraph({ text, sizePt: 9.5 }, widthMm, 2.2),
      ]),
    ),
    heading(say.decides, widthMm),
    paragraph({ text: deference }, widthMm, 1),
    heading(say.never, widthMm),
    ...neverChecked.map(bullet),
    ...(unchecked.length > 0 ? [heading(say.here, widthMm)] : []),
    ...unchecked.slice(0, mostListed).map((finding) => bullet(findingSentence(finding, shows, of.findings))),
    ...(rest > 0 ? [bullet(say.more(rest))] : []),
  ];
  const pages = flow(pieces, paper, 2).map((shapes) => {
    const middle = paper.left + widthMm + columnGapMm / 2;
    return [...shapes, box(middle, paper.bottom, 0, paper.top - paper.bottom - 2, { stroke: strokes.hair })];
  });
  return { title: say.title, subtitle: say.subtitle, pages };
}
