import type { Figures } from "../core/figures-types.js";
import { levels } from "../core/findings/finding.js";
import type { Shows } from "../core/plan/model/plan.js";
import { fitText } from "../drawing/fonts/wrap.js";
import { box, line, points, strokes, text } from "../drawing/make.js";
import type { Shape } from "../drawing/shapes.js";
import { firstOfAll } from "../words/cautions.js";
import { findingSentence } from "../words/findings.js";
import { levelWords, ruleSetWords } from "../words/labels.js";
import { boatLengthWords } from "../words/numbers.js";
import { boatFacts } from "./boat-facts.js";
import { keyFigures } from "./key-figures.js";
import { levelMark } from "./marks.js";
import type { Paper } from "./page.js";
import { beside, heading, type Piece, paragraph, space, stacked } from "./piece.js";
import type { Section } from "./section.js";

export interface ContentsLine {
  readonly title: string;
  readonly page: number;
}

const mostFindings = 5;

/** The first page: what the boat is, the figures that matter most, the gravest findings, and where everything stands. Always one page. */
export function summarySection(
  figures: Figures,
  shows: Shows,
  paper: Paper,
  contents: readonly ContentsLine[],
): Section {
  const widthMm = paper.right - paper.left;
  const leftMm = widthMm * 0.46;
  const rightAt = widthMm * 0.51;
  const rightMm = widthMm - rightAt;
  const left = stacked([heading("The boat", leftMm), ...boatFacts(figures, shows, leftMm)]);
  const strip = keyFigures(figures, widthMm);
  const above = [
    heading("What matters most", rightMm),
    ...findingLines(figures, shows, rightMm),
    heading("In this packet", rightMm),
  ];
  const caution = cautionWords(widthMm);
  const roomMm =
    paper.top - paper.bottom - strip.heightMm - stacked(above).heightMm - caution.heightMm - cautionPadMm - 6;
  const right = stacked([...above, contentsPiece(contents, rightMm, roomMm)]);
  const page = stacked([
    strip,
    space(2),
    beside([
      { at: 0, piece: left },
      { at: rightAt, piece: right },
    ]),
  ]);
  return {
    title: figures.plan.source.name,
    subtitle: subtitle(figures, shows),
    pages: [[...page.draw(paper.left, paper.top), ...cautionBox(paper)]],
  };
}

const cautionPadMm = 5;
const cautionWords = (widthMm: number) => paragraph({ text: firstOfAll }, widthMm - 10);

/** A framed word of caution at the foot of the page. */
function cautionBox(paper: Paper): Shape[] {
  const widthMm = paper.right - paper.left;
  const words = cautionWords(widthMm);
  const heightMm = words.heightMm + cautionPadMm;
  return [
    box(paper.left, paper.bottom, widthMm, heightMm, { stroke: strokes.line }),
    ...words.draw(paper.left + 5, paper.bottom + heightMm - 2.6),
  ];
}

function subtitle({ plan }: Figures, shows: Shows): string {
  const { craft, rules } = plan.source;
  const sizes = [craft.lengthM, craft.beamM].flatMap((lengthM) =>
    lengthM === undefined ? [] : [boatLengthWords(lengthM, shows)],
  );
  const made = [craft.hullMaterial, craft.kind].filter((word) => word !== undefined).join(" ");
  return [made, sizes.join(" × "), ruleSetWords[rules]].filter((part) => part !== "").join(" · ");
}

function findingLines(figures: Figures, shows: Shows, widthMm: number): Piece[] {
  const gravest = levels.flatMap((level) => figures.findings.filter((finding) => finding.level === level));
  const shown = gravest.slice(0, mostFindings).map((finding): Piece => {
    const sentence = paragraph({ text: findingSentence(finding, shows), maxLines: 2 }, widthMm - 7, 1.6);
    return {
      heightMm: sentence.heightMm,
      draw: (x, top) => [...levelMark(finding.level, x + 2.2, top - 2.3, 1.9), ...sentence.draw(x + 7, top)],
    };
  });
  const rest = gravest.length - shown.length;
  if (gravest.length === 0)
    return [
      paragraph(
        { text: "No rule found anything. Read what was assumed and what nobody checked." },
        widthMm,
        2,
      ),
    ];
  const key = levels.map((level) => levelWords[level].name.toLowerCase()).join(", ");
  return rest > 0
    ? [
        ...shown,
        paragraph(
          { text: `and ${rest} more under Findings (levels: ${key})`, colour: "soft", sizePt: 9.5 },
          widthMm,
        ),
      ]
    : shown;
}

/** Columns of titles with their pages; where there is not room for all, the last line says how many more there are. */
function contentsPiece(all: readonly ContentsLine[], widthMm: number, roomMm: number): Piece {
  const rowMm = points(10) * 1.4;
  const columns = all.length > 14 ? 3 : 2;
  const most = columns * Math.max(1, Math.floor(roomMm / rowMm));
  const more = all.length - (most - 1);
  const contents: readonly { readonly title: string; readonly page?: number }[] =
    all.length <= most ? all : [...all.slice(0, most - 1), { title: `and ${more} more sections` }];
  const rows = Math.ceil(contents.length / columns);
  const gapMm = 6;
  const columnMm = (widthMm - gapMm * (columns - 1)) / columns;
  return {
    heightMm: rows * rowMm,
    draw: (x, top) =>
      contents.flatMap(({ title, page }, index) => {
        const left = x + Math.floor(index / rows) * (columnMm + gapMm);
        const y = top - (index % rows) * rowMm - points(10);
        const name = fitText(title, columnMm - 7, { sizeMm: points(10), weight: "regular" });
        return [
          text(left, y, name),
          text(left + columnMm, y, page === undefined ? "" : String(page), {
            anchor: "end",
            weight: "semibold",
          }),
          line(left, y - 1.2, left + columnMm, y - 1.2, strokes.hair),
        ];
      }),
  };
}
