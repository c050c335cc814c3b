import type { Figures } from "../core/figures-types.js";
import type { Shows } from "../core/plan/model/plan.js";
import { box, strokes } from "../drawing/make.js";
import type { Shape } from "../drawing/shapes.js";
import { findingSentence } from "../words/findings.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { columnGapMm, columnWidthMm, flow } from "./flow.js";
import type { Paper } from "./page.js";
import { heading, itemOf, type Piece, paragraph, stacked } from "./piece.js";
import type { Section } from "./section.js";

/** Findings not checked that are listed here, where there is room; fewer where there is not. */
const mostListed = [8, 5, 3, 1] as const;
/** Type of the cautions, smaller where a language takes more words, so that they stay one page. */
const sizesPt = [9, 8.5] as const;

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
  const [never, here] = [{}, {}];
  const bullet = (text: string, sizePt: number, list: object) =>
    itemOf(list, paragraph({ text: `– ${text}`, sizePt, maxLines: 4 }, widthMm, 0.6));
  const pieces = (most: number, sizePt: number): Piece[] => [
    ...told.map(({ title, text }) =>
      stacked([
        paragraph({ text: title, sizePt: 10.5, weight: "semibold" }, widthMm, 0.2),
        paragraph({ text, sizePt }, widthMm, 1.8),
      ]),
    ),
    heading(say.decides, widthMm),
    paragraph({ text: deference, sizePt }, widthMm, 1),
    heading(say.never, widthMm),
    ...neverChecked.map((text) => bullet(text, sizePt, never)),
    ...(unchecked.length > 0 ? [heading(say.here, widthMm)] : []),
    ...unchecked
      .slice(0, most)
      .map((finding) => bullet(findingSentence(finding, shows, of.findings), sizePt, here)),
    ...(unchecked.length > most ? [bullet(say.more(unchecked.length - most), sizePt, here)] : []),
  ];
  // all of what is not checked stands under Findings: here as much of it as the one page has room for
  const made = fitting((most, sizePt) => flow(pieces(most, sizePt), paper, 2));
  const pages = made.map((shapes) => {
    const middle = paper.left + widthMm + columnGapMm / 2;
    return [...shapes, box(middle, paper.bottom, 0, paper.top - paper.bottom - 2, { stroke: strokes.hair })];
  });
  return { title: say.title, subtitle: say.subtitle, pages };
}

/** The fullest that is one page; the barest where none is. */
function fitting(lay: (most: number, sizePt: number) => Shape[][]): Shape[][] {
  let made: Shape[][] = [];
  for (const sizePt of sizesPt)
    for (const most of mostListed) {
      made = lay(most, sizePt);
      if (made.length === 1) return made;
    }
  return made;
}
