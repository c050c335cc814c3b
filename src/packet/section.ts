import { textWidthMm } from "../drawing/fonts/measure.js";
import { fitText } from "../drawing/fonts/wrap.js";
import { line, points, strokes, text } from "../drawing/make.js";
import type { Shape } from "../drawing/shapes.js";
import { planningAid } from "../words/labels.js";
import type { Page, Paper } from "./page.js";

/** A part of the packet that begins a page of its own: its title and the shapes of each of its pages. */
export interface Section {
  readonly title: string;
  /** Beside the title, on its first page and the following ones. */
  readonly subtitle: string;
  readonly pages: readonly (readonly Shape[])[];
}

/** What stands at the foot of every page: which boat, by which rules, and the mark of the plan as it was (`planMark`). */
export interface PlanWords {
  readonly name: string;
  readonly rules: string;
  readonly mark: string;
}

/** Puts heading and foot on every page and numbers them through. */
export function boundPages(sections: readonly Section[], paper: Paper, plan: PlanWords): Page[] {
  const count = sections.reduce((sum, section) => sum + section.pages.length, 0);
  let number = 0;
  return sections.flatMap((section) =>
    section.pages.map((shapes, index): Page => {
      number += 1;
      const caption =
        section.pages.length === 1
          ? section.title
          : `${section.title}, sheet ${index + 1} of ${section.pages.length}`;
      const drawn = [
        ...pageHeading(section, index > 0, paper),
        ...shapes,
        ...pageFoot(plan, `page ${number} of ${count}`, paper),
      ];
      return {
        caption,
        sheet: { title: caption, widthMm: paper.widthMm, heightMm: paper.heightMm, shapes: drawn },
      };
    }),
  );
}

/** The page each section begins on, counted from 1. */
export function firstPages(sections: readonly { readonly pages: readonly unknown[] }[]): number[] {
  let next = 1;
  return sections.map((section) => {
    const first = next;
    next += section.pages.length;
    return first;
  });
}

function pageHeading(section: Section, continued: boolean, paper: Paper): Shape[] {
  const y = paper.heightMm - 20;
  const titleType = { sizeMm: points(20), weight: "semibold" } as const;
  const widthMm = paper.right - paper.left;
  const title = fitText(section.title, widthMm * 0.6, titleType);
  const subtitleType = { sizeMm: points(10.5), weight: "regular" } as const;
  const room = widthMm - textWidthMm(title, titleType.sizeMm, titleType.weight) - 6;
  const beside = `${section.subtitle}${continued ? " (continued)" : ""}`.trim();
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

function pageFoot({ name, rules, mark }: PlanWords, page: string, paper: Paper): Shape[] {
  const type = { sizeMm: points(8.5), weight: "regular" } as const;
  const y = 9.5;
  const middle = (paper.left + paper.right) / 2;
  const plan = ` · plan ${mark}`;
  const nameMm = (paper.right - paper.left - textWidthMm(planningAid, type.sizeMm, type.weight)) / 2 - 3;
  const room = nameMm - textWidthMm(plan, type.sizeMm, type.weight);
  return [
    line(paper.left, y + 4, paper.right, y + 4, strokes.hair),
    text(paper.left, y, `${fitText(name, room, type)}${plan}`, { ...type, colour: "soft" }),
    text(middle, y, planningAid, { ...type, anchor: "middle", colour: "soft" }),
    text(paper.right, y, `${rules} · ${page}`, { ...type, anchor: "end", colour: "soft" }),
  ];
}
