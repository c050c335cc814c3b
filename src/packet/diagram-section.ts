import type { Figures } from "../core/figures-types.js";
import type { Shows } from "../core/plan/model/plan.js";
import { oneLineDiagram } from "../drawing/one-line/diagram.js";
import { figure } from "../drawing/parts.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import type { Paper } from "./page.js";
import { paragraph } from "./piece.js";
import type { Section } from "./section.js";

/** The one-line diagram, on as many sheets as it takes. */
export function diagramSection(
  figures: Figures,
  shows: Shows,
  paper: Paper,
  { electrics: { diagram: words }, frame, of }: PaperWords,
): Section {
  const widthMm = paper.right - paper.left;
  const keyPiece = paragraph({ text: words.key, sizePt: 9, colour: "soft", maxLines: 3 }, widthMm);
  const keyMm = keyPiece.heightMm + 2;
  const room = {
    left: paper.left,
    bottom: paper.bottom + keyMm,
    widthMm,
    heightMm: paper.top - paper.bottom - keyMm - 4,
  };
  const pages = oneLineDiagram(figures, shows, room, of.drawn).map((shapes) => [
    ...figure(words.title, shapes, frame.drawn),
    ...keyPiece.draw(paper.left, paper.bottom + keyPiece.heightMm),
  ]);
  return { title: words.title, subtitle: words.subtitle, pages };
}
