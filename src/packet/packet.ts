import type { Figures } from "../core/figures-types.js";
import type { HullFigures } from "../core/hull/figures.js";
import type { Shows } from "../core/plan/model/plan.js";
import type { WorkFigures } from "../core/work/plan-work.js";
import { type PdfFonts, pdfDocument } from "../drawing/writers/pdf.js";
import { ruleSetWords } from "../words/labels.js";
import { assumptionsSection } from "./assumptions-section.js";
import { builtSection } from "./built-section.js";
import { cautionsSection } from "./cautions-section.js";
import { conductorSchedule } from "./conductor-schedule.js";
import { diagramSection } from "./diagram-section.js";
import { findingsSection } from "./findings-section.js";
import { floatSection } from "./float-section.js";
import { holeList } from "./hole-list.js";
import { loadList } from "./load-list.js";
import { marksSections } from "./marks-sections.js";
import { orderSection } from "./order-section.js";
import { outingSections } from "./outing-sections.js";
import { type Page, type Paper, paperOf } from "./page.js";
import { protectionSchedule } from "./protection-schedule.js";
import { boundPages, firstPages, type Section } from "./section.js";
import { summarySection } from "./summary-section.js";
import { surveySection } from "./survey-section.js";

/** What is worked out apart from the electrics, and printed where it is given. */
export interface Apart {
  readonly hull?: HullFigures;
  /** Order of work and as built. */
  readonly work?: WorkFigures;
}

/**
 * The packet as pages: summary, loads, conductors, protection, findings, assumptions, diagram, outings; where the hull is given its survey,
 * marks, holes and float; cautions.
 */
export function packetPages(figures: Figures, shows: Shows, { hull, work }: Apart = {}): Page[] {
  const paper = paperOf(shows.paper);
  const sections: Section[] = [
    loadList(figures, shows, paper),
    conductorSchedule(figures, shows, paper),
    protectionSchedule(figures, shows, paper),
    findingsSection(figures, shows, paper),
    assumptionsSection(figures, paper),
    diagramSection(figures, shows, paper),
    ...outingSections(figures, paper),
    ...(hull === undefined ? [] : hullSections(hull, shows, paper)),
    ...(work === undefined
      ? []
      : [orderSection(work, shows, paper), builtSection(figures, work, shows, paper)]),
    cautionsSection(figures, shows, paper),
  ].filter(({ pages }) => pages.length > 0);
  const starts = firstPages([{ pages: ["summary"] }, ...sections]);
  const contents = sections.map(({ title }, index) => ({ title, page: starts[index + 1] ?? 0 }));
  const summary = summarySection(figures, shows, paper, contents);
  const { name, rules } = figures.plan.source;
  return boundPages([summary, ...sections], paper, { name, rules: ruleSetWords[rules] });
}

function hullSections(hull: HullFigures, shows: Shows, paper: Paper): Section[] {
  return [
    surveySection(hull, shows, paper),
    ...marksSections(hull, shows, paper),
    holeList(hull, shows, paper),
    floatSection(hull, shows, paper),
  ];
}

/** The packet as one PDF. The same figures give the same bytes. `createdAt` is written into the document where given. */
export function packetPdf(
  figures: Figures,
  shows: Shows,
  fonts: PdfFonts,
  createdAt?: Date,
  apart: Apart = {},
): Promise<Uint8Array> {
  const sheets = packetPages(figures, shows, apart).map(({ sheet }) => sheet);
  const title = `${figures.plan.source.name}: electrical packet`;
  return pdfDocument(sheets, {
    title,
    language: "en",
    fonts,
    ...(createdAt === undefined ? {} : { createdAt }),
  });
}
