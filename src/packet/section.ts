import { textWidthMm } from "../drawing/fonts/measure.js";
import { fitText } from "../drawing/fonts/wrap.js";
import { line, points, strokes, text } from "../drawing/make.js";
import type { Shape } from "../drawing/shapes.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { flowFrom, heightWithFollowers } from "./flow.js";
import type { Page, Paper } from "./page.js";
import type { Piece } from "./piece.js";

/** A part of the packet: its title and the shapes of each of its pages. */
export interface Section {
  readonly title: string;
  /** Beside the title, on its first page and the following ones. */
  readonly subtitle: string;
  readonly pages: readonly (readonly Shape[])[];
  /** What its pages are made of, where it may begin under the end of another; left out: it begins a page of its own. */
  readonly pieces?: readonly Piece[];
  /** How far down the last of `pages` they come [mm]. */
  readonly downTo?: number;
}

/** A part that needs no page of its own. No pieces: no pages. */
export function flowing(title: string, subtitle: string, pieces: readonly Piece[], paper: Paper): Section {
  if (pieces.length === 0) return { title, subtitle, pages: [] };
  return { title, subtitle, pieces, ...flowFrom(paper.top, pieces, paper) };
}

/** What stands at the foot of every page: which boat, by which rules, and the mark of the plan as it was (`planMark`). */
export interface PlanWords {
  readonly name: string;
  readonly rules: string;
  readonly mark: string;
}

/** A page of a part, with the height its title stands at [mm]. */
interface Part {
  readonly section: Section;
  /** Which of its pages, from 0. */
  readonly index: number;
  readonly titleY: number;
  readonly shapes: readonly Shape[];
}
export type PackedSheet = readonly Part[];

/** From the end of one part to the title of the next under it, and from a title to what it heads [mm]. */
const toTitleMm = 13;
const underTitleMm = 8;
/** A part of several pages is begun under another only where so much of the page is left, and room for what it begins with [mm]. */
const leastRoomMm = 40;

/** Deals the parts out over sheets of paper: a short one goes under the end of the one before it where both may. */
export function packed(sections: readonly Section[], paper: Paper): PackedSheet[] {
  const sheets: Part[][] = [];
  const headY = paper.heightMm - 20;
  let downTo: number | undefined;
  for (const section of sections) {
    const { pieces, pages } = section;
    const titleY = (downTo ?? 0) - toTitleMm;
    const from = titleY - underTitleMm;
    const below = pieces !== undefined && downTo !== undefined && goesUnder(pieces, from - paper.bottom);
    const laid = below ? flowFrom(from, pieces, paper) : undefined;
    for (const [index, shapes] of (laid?.pages ?? pages).entries()) {
      const joins = below && index === 0;
      const part = { section, index, titleY: joins ? titleY : headY, shapes };
      const last = sheets.at(-1);
      if (joins && last !== undefined) last.push(part);
      else sheets.push([part]);
    }
    if (pages.length > 0) downTo = laid?.downTo ?? section.downTo;
  }
  return sheets;
}

function goesUnder(pieces: readonly Piece[], roomMm: number): boolean {
  if (pieces.reduce((sum, { heightMm }) => sum + heightMm, 0) <= roomMm) return true;
  return roomMm >= Math.max(leastRoomMm, beginningMm(pieces));
}

/** What stands before the first row of a table, and that row with what stays with it; words of introduction are not left alone. */
function beginningMm(pieces: readonly Piece[]): number {
  const row = Math.max(
    0,
    pieces.findIndex(({ head }) => head !== undefined),
  );
  const before = pieces.slice(0, row).reduce((sum, { heightMm }) => sum + heightMm, 0);
  return before + heightWithFollowers(pieces, row);
}

/** Puts heading and foot on every page and numbers them through. */
export function boundPages(
  sections: readonly Section[],
  paper: Paper,
  plan: PlanWords,
  { frame: words }: PaperWords,
): Page[] {
  const sheets = packed(sections, paper);
  const counts = new Map<Section, number>();
  for (const { section } of sheets.flat()) counts.set(section, (counts.get(section) ?? 0) + 1);
  return sheets.map((parts, at): Page => {
    const caption = parts
      .map(({ section, index }) => {
        const count = counts.get(section) ?? 1;
        return count === 1 ? section.title : words.sheetOf(section.title, index + 1, count);
      })
      .join(" · ");
    const shapes = [
      ...parts.flatMap((part) => [...partHeading(part, paper, words), ...part.shapes]),
      ...pageFoot(plan, at + 1, sheets.length, paper, words),
    ];
    const begins = parts.filter(({ index }) => index === 0).map(({ section }) => section.title);
    const size = { widthMm: paper.widthMm, heightMm: paper.heightMm };
    return {
      caption,
      parts: parts.map(({ section }) => section.title),
      sheet: { title: caption, ...size, shapes, begins },
    };
  });
}

/** The page each part begins on, counted from 1, by its title. */
export function firstPages(sheets: readonly PackedSheet[]): ReadonlyMap<string, number> {
  const pages = new Map<string, number>();
  for (const [at, parts] of sheets.entries())
    for (const { section, index } of parts) if (index === 0) pages.set(section.title, at + 1);
  return pages;
}

function partHeading({ section, index, titleY: y }: Part, paper: Paper, words: PaperWords["frame"]): Shape[] {
  // on its next pages a title is there to leaf by, not to hear again
  const again = index > 0;
  const titleType = { sizeMm: points(20), weight: "semibold", role: again ? "foot" : "title" } as const;
  const widthMm = paper.right - paper.left;
  const title = fitText(section.title, widthMm * 0.6, titleType);
  const subtitleType = {
    sizeMm: points(10.5),
    weight: "regular",
    ...(again ? { role: "foot" as const } : {}),
  } as const;
  const room = widthMm - textWidthMm(title, titleType.sizeMm, titleType.weight) - 6;
  const beside = `${section.subtitle}${index > 0 ? words.continued : ""}`.trim();
  return [
    text(paper.left, y, title, titleType),
    text(paper.right, y, fitText(beside, Math.min(room, widthMm * 0.56), subtitleType), {
      ...subtitleType,
      anchor: "end",
      colour: "soft",
    }),
    line(paper.left, y - 3.2, paper.right, y - 3.2, strokes.bold),
    line(paper.left, y - 3.2, paper.left + 14, y - 3.2, { colour: "accent", widthMm: 1.4 }),
  ];
}

function pageFoot(
  { name, rules, mark }: PlanWords,
  page: number,
  count: number,
  paper: Paper,
  words: PaperWords["frame"],
): Shape[] {
  const type = { sizeMm: points(8.5), weight: "regular", role: "foot" } as const;
  const y = 9.5;
  const middle = (paper.left + paper.right) / 2;
  const plan = ` · ${words.planMark(mark)}`;
  const nameMm =
    (paper.right - paper.left - textWidthMm(words.planningAid, type.sizeMm, type.weight)) / 2 - 3;
  const room = nameMm - textWidthMm(plan, type.sizeMm, type.weight);
  return [
    line(paper.left, y + 4, paper.right, y + 4, strokes.hair),
    text(paper.left, y, `${fitText(name, room, type)}${plan}`, { ...type, colour: "soft" }),
    text(middle, y, words.planningAid, { ...type, anchor: "middle", colour: "soft" }),
    text(paper.right, y, `${rules} · ${words.pageOf(page, count)}`, {
      ...type,
      anchor: "end",
      colour: "soft",
    }),
  ];
}
