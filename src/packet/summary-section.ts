import type { Figures } from "../core/figures-types.js";
import { levels } from "../core/findings/finding.js";
import type { HullFigures } from "../core/hull/figures.js";
import type { Shows } from "../core/plan/model/plan.js";
import type { WorkFigures } from "../core/work/plan-work.js";
import { textWidthMm } from "../drawing/fonts/measure.js";
import { fitText, type Type } from "../drawing/fonts/wrap.js";
import { profileAfloat, profileHeightMm } from "../drawing/hull/profile-view.js";
import { box, group, line, points, strokes, text } from "../drawing/make.js";
import { figure, partOf } from "../drawing/parts.js";
import type { Shape } from "../drawing/shapes.js";
import type { CautionWords } from "../words/cautions.js";
import { findingSentence } from "../words/findings.js";
import { boatLengthWords, hours } from "../words/numbers.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { stepTitles } from "../words/work-words.js";
import { boatFacts } from "./boat-facts.js";
import { keyFigures } from "./key-figures.js";
import { levelMark } from "./marks.js";
import type { Paper } from "./page.js";
import { beside, type Piece, paragraph, stacked } from "./piece.js";
import type { Section } from "./section.js";
import { signPiece } from "./sign.js";
import { tickLine } from "./tick.js";

export interface ContentsLine {
  readonly title: string;
  readonly page: number;
}

/** What the first page tells besides the electrics, where it is known. */
export interface FrontApart {
  readonly hull?: HullFigures;
  readonly work?: WorkFigures;
}

/** Most findings and steps of the first page, and fewer where there is not room for them. */
const mostShown = [
  { findings: 5, steps: 4 },
  { findings: 4, steps: 4 },
  { findings: 4, steps: 3 },
  { findings: 3, steps: 3 },
  { findings: 2, steps: 2 },
  { findings: 1, steps: 1 },
] as const;
const mostOfAKind = [3, 2, 1] as const;

/**
 * The first page: what the boat is, the figures that matter most, what stands in the way, what to do first, where everything stands, and who
 * looked at it. Always one page.
 */
export function summarySection(
  figures: Figures,
  shows: Shows,
  paper: Paper,
  contents: readonly ContentsLine[],
  words: PaperWords,
  { hull, work }: FrontApart = {},
): Section {
  const { frame: say, of } = words;
  const widthMm = paper.right - paper.left;
  const leftMm = widthMm * 0.46;
  const rightAt = widthMm * 0.5;
  const rightMm = widthMm - rightAt;
  const strip = keyFigures(figures, words, widthMm);
  const foot = contentsPiece(contents, say.inThisPacket, widthMm);
  const sign = signPiece(say.signed, widthMm);
  const footMm = foot.heightMm + cautionWords(of.cautions, widthMm).heightMm + cautionPadMm + sign.heightMm;
  const roomMm = paper.top - paper.bottom - strip.heightMm - footMm - 3;
  const pageOf = (title: string) => contents.find((one) => one.title === title)?.page;
  const facts = fitting(mostOfAKind, roomMm, (most) => [
    subheading(say.boat, leftMm),
    ...boatFacts(figures, shows, words, leftMm, most),
  ]);
  const right = fitting(mostShown, roomMm, (most) => [
    subheading(say.inTheWay, rightMm),
    ...findingLines(figures, shows, words, rightMm, pageOf(words.findings.title), most.findings),
    ...(work === undefined
      ? []
      : firstSteps(figures, work, words, rightMm, pageOf(words.work.order.title), most.steps)),
  ]);
  const left = stacked([facts, ...boatDrawing(hull, leftMm, roomMm - facts.heightMm, say.boat, say)]);
  const page = stacked([
    strip,
    beside([
      { at: 0, piece: left },
      { at: rightAt, piece: right },
    ]),
  ]);
  return {
    title: figures.plan.source.name,
    subtitle: subtitle(figures, shows, words),
    pages: [
      [
        ...page.draw(paper.left, paper.top),
        ...foot.draw(paper.left, paper.bottom + footMm),
        ...cautionBox(of.cautions, paper, sign.heightMm),
        ...sign.draw(paper.left, paper.bottom + sign.heightMm),
      ],
    ],
  };
}

/** The fullest that is not too high; the barest where all are. */
function fitting<T>(choices: readonly T[], roomMm: number, pieces: (choice: T) => Piece[]): Piece {
  const made = choices.map((choice) => stacked(pieces(choice)));
  return made.find(({ heightMm }) => heightMm <= roomMm) ?? made.at(-1) ?? stacked([]);
}

/** A heading of the first page, which is short of room. */
function subheading(words: string, widthMm: number): Piece {
  const title = paragraph(
    { text: words, sizePt: 12, weight: "semibold", maxLines: 1, role: "heading" },
    widthMm,
  );
  return {
    heightMm: title.heightMm + 4.6,
    draw: (x, top) => [
      ...title.draw(x, top - 2.4),
      line(x, top - title.heightMm - 3, x + widthMm, top - title.heightMm - 3, strokes.fine),
    ],
  };
}

/** The boat from the side, as she floats, where her form is known and there is room. */
function boatDrawing(
  hull: HullFigures | undefined,
  widthMm: number,
  roomMm: number,
  what: string,
  { drawn }: PaperWords["frame"],
): Piece[] {
  const wantedMm = hull === undefined ? undefined : profileHeightMm(hull, widthMm);
  if (hull === undefined || wantedMm === undefined || roomMm < 12) return [];
  const heightMm = Math.min(wantedMm, roomMm);
  const draw = (left: number, bottom: number) =>
    figure(what, profileAfloat(hull, { left, bottom, widthMm, heightMm }, false)?.shapes ?? [], drawn);
  return [{ heightMm, draw: (x, top) => draw(x, top - heightMm) }];
}

/** What to take in hand: the next steps with a square each, and how much there is in all. */
function firstSteps(
  { findings }: Figures,
  work: WorkFigures,
  { frame: say, of }: PaperWords,
  widthMm: number,
  page: number | undefined,
  most: number,
): Piece[] {
  const { order } = work;
  const title = stepTitles(work.step.values(), of.steps);
  const stops = findings.some(({ level }) => level === "stop");
  const all = say.allSteps(order.steps.length, hours(order.workMin / 60), page);
  return [
    subheading(say.doFirst, widthMm),
    ...(stops ? [paragraph({ text: say.mendFirst, weight: "semibold" }, widthMm, 1.4)] : []),
    ...(order.steps.length === 0
      ? [paragraph({ text: say.noStepLeft }, widthMm)]
      : [
          ...order.steps
            .slice(0, most)
            .map(({ step }) => tickLine({ text: title(step), maxLines: 1 }, widthMm, 1.4)),
          paragraph({ text: all, colour: "soft", sizePt: 9.5 }, widthMm),
        ]),
  ];
}

const cautionPadMm = 5;
const cautionWords = ({ firstOfAll }: CautionWords, widthMm: number) =>
  paragraph({ text: firstOfAll }, widthMm - 10);

/** A framed word of caution over the names at the foot of the page. */
function cautionBox(cautions: CautionWords, paper: Paper, underMm: number): Shape[] {
  const widthMm = paper.right - paper.left;
  const words = cautionWords(cautions, widthMm);
  const heightMm = words.heightMm + cautionPadMm;
  const bottom = paper.bottom + underMm;
  return [
    box(paper.left, bottom, widthMm, heightMm, { stroke: strokes.line }),
    ...words.draw(paper.left + 5, bottom + heightMm - 2.6),
  ];
}

function subtitle({ plan }: Figures, shows: Shows, { frame, of }: PaperWords): string {
  const { craft, rules } = plan.source;
  const sizes = [craft.lengthM, craft.beamM].flatMap((lengthM) =>
    lengthM === undefined ? [] : [boatLengthWords(lengthM, shows)],
  );
  const material = craft.hullMaterial === undefined ? undefined : of.layout.material(craft.hullMaterial);
  const made = frame.made(material, craft.kind);
  return [made, sizes.join(" × "), of.labels.ruleSets[rules]].filter((part) => part !== "").join(" · ");
}

/** What must be put right before the work; where nothing must, what is worth a look. */
function findingLines(
  figures: Figures,
  shows: Shows,
  { frame: say, of }: PaperWords,
  widthMm: number,
  page: number | undefined,
  most: number,
): Piece[] {
  const gravest = levels.flatMap((level) => figures.findings.filter((finding) => finding.level === level));
  const inTheWay = gravest.filter(({ level }) => level === "stop" || level === "mend");
  const unchecked = gravest.filter(({ level }) => level === "unchecked");
  // where nothing is in the way, what nobody checked comes before what is good to know
  const shown = (inTheWay.length > 0 ? gravest : [...new Set([...unchecked, ...gravest])]).slice(0, most);
  const rest = gravest.length - shown.length;
  return [
    ...(inTheWay.length > 0
      ? []
      : [
          paragraph(
            {
              text: gravest.length === 0 ? say.nothingFound : say.nothingInTheWay(unchecked.length),
              weight: "semibold",
              maxLines: 2,
            },
            widthMm,
            1.6,
          ),
        ]),
    ...shown.map((finding): Piece => {
      const grave = finding.level === "stop" ? "semibold" : "regular";
      const words = {
        text: findingSentence(finding, shows, of.findings),
        weight: grave,
        maxLines: 2,
      } as const;
      const sentence = paragraph(words, widthMm - 7, 1.4);
      return {
        heightMm: sentence.heightMm,
        draw: (x, top) => [
          group(
            0,
            0,
            levelMark(finding.level, x + 2.2, top - 2.3, 1.9),
            of.labels.levels[finding.level].name,
          ),
          ...sentence.draw(x + 7, top),
        ],
      };
    }),
    ...(rest > 0
      ? [paragraph({ text: say.moreFindings(rest, page), colour: "soft", sizePt: 9.5 }, widthMm)]
      : []),
  ];
}

/** As many columns as leave every title whole, fewer where they are long. */
const contentsColumns = [6, 5, 4, 3] as const;
/** Between two columns, and what a page number takes of one [mm]. */
const contentsGapMm = 5;
const pageNumberMm = 8;

/** Titles with their pages, in columns across the page as wide as their titles. */
function contentsPiece(contents: readonly ContentsLine[], title: string, widthMm: number): Piece {
  if (contents.length === 0) return stacked([]);
  const type = { sizeMm: points(9.5), weight: "regular" } as const;
  const rowMm = type.sizeMm * 1.36;
  const columns = contentsColumns
    .map((count) => contentsIn(count, contents, widthMm, type))
    .find(({ spareMm }, index) => spareMm >= 0 || index === contentsColumns.length - 1);
  if (columns === undefined) return stacked([]);
  const { rows, parts } = columns;
  const list = {};
  const lines: Piece = {
    heightMm: rows * rowMm + 3,
    draw: (x, top) =>
      parts.flatMap(({ at, columnMm, own }) =>
        own.flatMap(({ title: name, page }, index) => {
          const left = x + at;
          const y = top - index * rowMm - type.sizeMm;
          return [
            ...partOf(
              [
                text(left, y, fitText(name, columnMm - pageNumberMm + 1, type), type),
                text(left + columnMm, y, String(page), { ...type, anchor: "end", weight: "semibold" }),
              ],
              { is: "item", list, mark: {} },
            ),
            line(left, y - 1.2, left + columnMm, y - 1.2, strokes.hair),
          ];
        }),
      ),
  };
  return stacked([subheading(title, widthMm), lines]);
}

/** The contents in so many columns: where each stands and how wide it is; less than nothing to spare where they do not fit [mm]. */
function contentsIn(count: number, contents: readonly ContentsLine[], widthMm: number, type: Type) {
  const rows = Math.ceil(contents.length / count);
  const groups = Array.from({ length: Math.ceil(contents.length / rows) }, (_, index) =>
    contents.slice(index * rows, (index + 1) * rows),
  );
  const neededMm = groups.map(
    (own) => pageNumberMm + Math.max(...own.map((one) => textWidthMm(one.title, type.sizeMm, type.weight))),
  );
  const spareMm =
    widthMm - contentsGapMm * (groups.length - 1) - neededMm.reduce((sum, each) => sum + each, 0);
  let at = 0;
  const parts = groups.map((own, index) => {
    const columnMm = (neededMm[index] ?? 0) + spareMm / groups.length;
    const part = { at, columnMm, own };
    at += columnMm + contentsGapMm;
    return part;
  });
  return { rows, parts, spareMm };
}
