import type { Figures } from "../core/figures-types.js";
import type { HullFigures } from "../core/hull/figures.js";
import type { LayoutFigures } from "../core/parts/layout-types.js";
import type { Shows } from "../core/plan/model/plan.js";
import { planMark } from "../core/plan/plan-mark.js";
import type { SheetSection } from "../core/proving/sheet/types.js";
import type { WaterCard } from "../core/proving/water/card.js";
import type { WorkFigures } from "../core/work/plan-work.js";
import type { DrawnFrom } from "../drawing/work/step-drawing.js";
import type { PdfFonts } from "../drawing/writers/pdf.js";
import { paperInEnglish } from "../words/paper/english.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { assumptionsSection } from "./assumptions-section.js";
import { boxSheets } from "./box-sheets.js";
import { builtSection } from "./built-section.js";
import { cautionsSection } from "./cautions-section.js";
import { conductorSchedule } from "./conductor-schedule.js";
import { cutList } from "./cut-list.js";
import { diagramSection } from "./diagram-section.js";
import { eveningsSection } from "./evenings-section.js";
import { findingsSection } from "./findings-section.js";
import { floatSection } from "./float-section.js";
import { holeList } from "./hole-list.js";
import { loadList } from "./load-list.js";
import { marksSections } from "./marks-sections.js";
import { orderSection } from "./order-section.js";
import { outingSections } from "./outing-sections.js";
import { type Page, type Paper, paperOf } from "./page.js";
import { protectionSchedule } from "./protection-schedule.js";
import { runSheet } from "./run-sheet.js";
import { boundPages, firstPages, type PackedSheet, packed, type Section } from "./section.js";
import { shoppingList } from "./shopping-list.js";
import { type ContentsLine, summarySection } from "./summary-section.js";
import { surveySection } from "./survey-section.js";
import { terminationsSection } from "./terminations-section.js";
import { testSheetSection } from "./test-sheet.js";
import { waterCardSection } from "./water-card.js";
import { wireFlags } from "./wire-flags.js";
import { writePdf } from "./write-pdf.js";

/** What is worked out apart from the electrics, and printed where it is given. */
export interface Apart {
  readonly hull?: HullFigures;
  readonly layout?: LayoutFigures;
  /** Order of work and as built. */
  readonly work?: WorkFigures;
  /** Test sheet, and the card for the water. */
  readonly proof?: { readonly sheet: readonly SheetSection[]; readonly card: WaterCard };
}

/**
 * The packet as pages: summary, which pages to take along for which evening, loads, conductors, protection, findings, assumptions, diagram, outings; where the hull is given its survey,
 * marks, holes and float; where the layout is given boxes with their templates, runs, cuts, terminations, flags
 * and shopping list; order of work and as built; test sheet and water card; cautions.
 */
export function packetPages(
  figures: Figures,
  shows: Shows,
  apart: Apart = {},
  words: PaperWords = paperInEnglish,
): Page[] {
  const paper = paperOf(shows.paper);
  const sections = packetSections(figures, shows, paper, apart, words);
  const sheets = packed(sections, paper);
  const evenings = apart.work === undefined ? [] : eveningsOf(apart.work, sheets, paper, words);
  const before = evenings.reduce((sum, { pages }) => sum + pages.length, 0);
  const contents = [
    ...evenings.map(({ title }) => ({ title, page: 2 })),
    ...contentsOf(sections, firstPages(sheets), 1 + before),
  ];
  const summary = summarySection(figures, shows, paper, contents, words, apart);
  return boundPages([summary, ...evenings, ...sections], paper, planWords(figures, words), words);
}

/** Which pages to take along when; how many pages that takes itself is found by asking until it stays. */
function eveningsOf(
  work: WorkFigures,
  sheets: readonly PackedSheet[],
  paper: Paper,
  words: PaperWords,
): Section[] {
  let own = 1;
  for (let tries = 0; tries < 3; tries += 1) {
    const section = eveningsSection(work, sheets, 1 + own, paper, words);
    if (section.pages.length === 0) return [];
    if (section.pages.length === own) return [section];
    own = section.pages.length;
  }
  return [];
}

export const planWords = ({ plan: { source } }: Figures, { of }: PaperWords) => ({
  name: source.name,
  rules: of.labels.ruleSets[source.rules],
  mark: planMark(source),
});

/** Every part of the packet that has something to say, after the summary. */
function packetSections(
  figures: Figures,
  shows: Shows,
  paper: Paper,
  apart: Apart,
  words: PaperWords,
): Section[] {
  const { hull, layout, work, proof } = apart;
  return [
    loadList(figures, paper, words),
    conductorSchedule(figures, shows, paper, words),
    protectionSchedule(figures, shows, paper, words),
    findingsSection(figures, shows, paper, words),
    assumptionsSection(figures, paper, words),
    diagramSection(figures, shows, paper, words),
    ...outingSections(figures, paper, words),
    ...(hull === undefined ? [] : hullSections(hull, shows, paper, words)),
    ...(layout === undefined ? [] : layoutSections(layout, shows, paper, words)),
    ...(work === undefined
      ? []
      : [
          orderSection(work, shows, paper, words, drawnFrom(figures, apart)),
          builtSection(figures, work, shows, paper, words),
        ]),
    ...(proof === undefined
      ? []
      : [testSheetSection(proof.sheet, paper, words), waterCardSection(proof.card, paper, words)]),
    cautionsSection(figures, shows, paper, words),
  ].filter(({ pages }) => pages.length > 0);
}

const drawnFrom = (figures: Figures, { hull, layout }: Apart): DrawnFrom | undefined =>
  hull === undefined || layout === undefined ? undefined : { figures, hull, layout };

/** The parts of a packet by title, each as pages of its own: one prints what is wanted today. */
export function singleSheets(
  figures: Figures,
  shows: Shows,
  apart: Apart = {},
  words: PaperWords = paperInEnglish,
): { readonly title: string; readonly pages: readonly Page[] }[] {
  const paper = paperOf(shows.paper);
  return packetSections(figures, shows, paper, apart, words).map((section) => ({
    title: section.title,
    pages: boundPages([section], paper, planWords(figures, words), words),
  }));
}

function hullSections(hull: HullFigures, shows: Shows, paper: Paper, words: PaperWords): Section[] {
  return [
    surveySection(hull, shows, paper, words),
    ...marksSections(hull, shows, paper, words),
    holeList(hull, shows, paper, words),
    floatSection(hull, shows, paper, words),
  ];
}

function layoutSections(layout: LayoutFigures, shows: Shows, paper: Paper, words: PaperWords): Section[] {
  return [
    shoppingList(layout, shows, paper, words),
    ...boxSheets(layout, paper, words),
    runSheet(layout, shows, paper, words),
    cutList(layout, shows, paper, words),
    terminationsSection(layout, shows, paper, words),
    wireFlags(layout, paper, words),
  ];
}

/** What the first page lists: parts of one sort (`Box: …`, `Marks: …`) on one line, by the page the first begins on, those before counted. */
function contentsOf(
  sections: readonly Section[],
  starts: ReadonlyMap<string, number>,
  before: number,
): ContentsLine[] {
  const lines = new Map<string, number>();
  for (const { title } of sections) {
    const [sort = title] = title.split(": ");
    if (!lines.has(sort)) lines.set(sort, before + (starts.get(title) ?? 0));
  }
  return [...lines].map(([title, page]) => ({ title, page }));
}

/** The packet as one PDF. The same figures give the same bytes. `createdAt` is written into the document where given. */
export function packetPdf(
  figures: Figures,
  shows: Shows,
  fonts: PdfFonts,
  createdAt?: Date,
  apart: Apart = {},
  words: PaperWords = paperInEnglish,
): Promise<Uint8Array> {
  const sheets = packetPages(figures, shows, apart, words).map(({ sheet }) => sheet);
  const title = words.frame.packet(figures.plan.source.name);
  return writePdf(sheets, {
    title,
    language: words.language,
    fonts,
    ...(createdAt === undefined ? {} : { createdAt }),
  });
}
