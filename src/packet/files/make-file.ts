import { netlistOf } from "../../core/circuit/netlist.js";
import type { Whole } from "../../core/layout-figures.js";
import type { FaceName } from "../../core/plan/model/layout.js";
import type { Shows } from "../../core/plan/model/plan.js";
import { benchOf } from "../../core/proving/bench-network.js";
import { testSheet } from "../../core/proving/sheet/sheet.js";
import { waterCard } from "../../core/proving/water/card.js";
import { planWork } from "../../core/work/plan-work.js";
import { faceSheet } from "../../drawing/template-sheet.js";
import { dxfSheet } from "../../drawing/writers/dxf.js";
import type { PdfFonts } from "../../drawing/writers/pdf.js";
import { svgSheet } from "../../drawing/writers/svg.js";
import { paperInEnglish } from "../../words/paper/english.js";
import type { PaperWords } from "../../words/paper/paper-words.js";
import { type Apart, packetPdf, singleSheets } from "../packet.js";
import type { Page } from "../page.js";
import { shortPages } from "../short-packet.js";
import type { ShortScope } from "../short-scopes.js";
import { writePdf } from "../write-pdf.js";
import type { PlanTable } from "./table-names.js";
import { planTable } from "./tables.js";

/** The whole packet, or no more of it than one evening or one project needs; `nowMin` counts since 1970 on the owner's clock. */
export type PacketWanted =
  | { readonly file: "packet" }
  | { readonly file: "short"; readonly scope: ShortScope; readonly nowMin: number };

/** One file out of a plan. Whatever face asks for it, it has the same bytes. */
export type FileWanted =
  | PacketWanted
  | { readonly file: "sheet"; readonly title: string }
  /** One page of a sheet, counted from 1. */
  | { readonly file: "page"; readonly title: string; readonly page: number }
  | { readonly file: "circuit"; readonly corner: string }
  | { readonly file: "table"; readonly table: PlanTable }
  /** One face that is drilled, at true scale on a sheet of its own size. */
  | {
      readonly file: "template";
      readonly box: string;
      readonly face: FaceName;
      readonly form: "svg" | "dxf";
    };

export interface MadeFile {
  /** Added to the name of the plan: `.pdf`, ` conductor schedule.pdf`. */
  readonly ending: string;
  readonly type: string;
  /** Text is written as UTF-8. */
  readonly content: Uint8Array | string;
}

/** What can be asked for, of a plan as it is. */
export interface FileList {
  /** Steps of work that are left: without any there is no short packet. */
  readonly stepsLeft: number;
  readonly sheets: readonly { readonly title: string; readonly pages: number }[];
  readonly corners: readonly string[];
  readonly templates: readonly { readonly box: string; readonly face: FaceName }[];
}

/** What the packet prints besides the electrics. */
function apartOf(whole: Whole): Required<Apart> {
  const known = apart.get(whole) ?? workOutApart(whole);
  apart.set(whole, known);
  return known;
}

/** One sheet after another is asked of the same plan; the bands of the test sheet take their time. */
const apart = new WeakMap<Whole, Required<Apart>>();

const workOutApart = ({ figures, circuit, layout, hull }: Whole): Required<Apart> => ({
  hull,
  layout,
  work: planWork(figures, { layout, hull }),
  proof: { sheet: testSheet(benchOf(figures.plan, circuit), figures), card: waterCard(figures) },
});

/** Steps of the work that are left to do. */
export const stepsLeft = (whole: Whole): number => apartOf(whole).work.order.steps.length;

export function fileList(whole: Whole, shows: Shows, words: PaperWords = paperInEnglish): FileList {
  const { figures, circuit } = whole;
  return {
    stepsLeft: stepsLeft(whole),
    sheets: singleSheets(figures, shows, apartOf(whole), words).map(({ title, pages }) => ({
      title,
      pages: pages.length,
    })),
    corners: circuit.states.map(({ name }) => name),
    templates: whole.layout.boxes.flatMap(({ templates }) =>
      templates.map(({ box, face }) => ({ box, face })),
    ),
  };
}

/**
 * Makes a file of what was worked out.
 * @param fonts Of the house; needed for PDF only.
 * @throws RangeError if there is no sheet, page or corner of that name, or no step left for a short packet.
 */
export async function makeFile(
  whole: Whole,
  wanted: FileWanted,
  shows: Shows,
  fonts: () => Promise<PdfFonts> | PdfFonts,
  words: PaperWords = paperInEnglish,
): Promise<MadeFile> {
  const { figures, circuit, layout } = whole;
  switch (wanted.file) {
    case "packet": {
      const content = await packetPdf(figures, shows, await fonts(), undefined, apartOf(whole), words);
      return { ending: ".pdf", type: "application/pdf", content };
    }
    case "short": {
      const { scope, nowMin } = wanted;
      const work = planWork(figures, whole, nowMin);
      const pages = shortPages(figures, shows, { ...apartOf(whole), work }, scope, words);
      if (pages.length === 0) throw new RangeError("a step that is left required, got none");
      return pdfOf(whole, words.frame.scopes[scope], pages, await fonts(), words);
    }
    case "sheet": {
      const { title, pages } = sheetNamed(whole, shows, wanted.title, words);
      return pdfOf(whole, title, pages, await fonts(), words);
    }
    case "page": {
      const { title, pages } = sheetNamed(whole, shows, wanted.title, words);
      const page = pages[wanted.page - 1];
      if (!page) throw new RangeError(`a page 1…${pages.length} of ${title} required, got ${wanted.page}`);
      const number = pages.length === 1 ? "" : ` ${wanted.page}`;
      return textFile(` ${title.toLowerCase()}${number}.svg`, "image/svg+xml", svgSheet(page.sheet));
    }
    case "circuit": {
      if (!circuit.states.some(({ name }) => name === wanted.corner))
        throw new RangeError(`a corner of the plan required, got ${wanted.corner}`);
      const text = netlistOf(figures.plan, circuit, wanted.corner);
      return textFile(` ${wanted.corner}.cir`, "text/plain", text);
    }
    case "template": {
      const all = layout.boxes.flatMap(({ templates }) => templates);
      const template = all.find(({ box, face }) => box === wanted.box && face === wanted.face);
      if (!template)
        throw new RangeError(`a face that is drilled required, got ${wanted.box}, ${wanted.face}`);
      const ending = ` ${wanted.box} ${words.of.layout.faces[wanted.face]}.${wanted.form}`;
      const { drawn } = words.of;
      return wanted.form === "svg"
        ? textFile(ending, "image/svg+xml", svgSheet(faceSheet(template, "print", drawn)))
        : textFile(ending, "image/vnd.dxf", dxfSheet(faceSheet(template, "cut", drawn)));
    }
    case "table":
      return textFile(` ${wanted.table}.csv`, "text/csv", planTable(wanted.table, whole, words));
    default:
      return wanted satisfies never;
  }
}

async function pdfOf(
  whole: Whole,
  title: string,
  pages: readonly Page[],
  fonts: PdfFonts,
  words: PaperWords,
): Promise<MadeFile> {
  const content = await writePdf(
    pages.map(({ sheet }) => sheet),
    { title: `${whole.figures.plan.source.name}: ${title}`, language: words.language, fonts },
  );
  return { ending: ` ${title.toLowerCase()}.pdf`, type: "application/pdf", content };
}

function sheetNamed(whole: Whole, shows: Shows, title: string, words: PaperWords) {
  const sheets = singleSheets(whole.figures, shows, apartOf(whole), words);
  const alike = (sheet: { title: string }) => sheet.title.toLowerCase() === title.toLowerCase();
  const found = sheets.find((sheet) => sheet.title === title) ?? sheets.find(alike);
  if (!found)
    throw new RangeError(
      `a sheet of ${sheets.map((sheet) => sheet.title).join(", ")} required, got ${title}`,
    );
  return found;
}

function textFile(ending: string, type: string, text: string): MadeFile {
  return { ending, type, content: text };
}
