/**
 * What whoever hears the packet is told, read back by poppler (`pdfinfo -struct-text`), which knows nothing of how it was written. The terms are those of
 * ISO 32000-1, 14.8 (from memory): Document, H1, H2, P, L / LI / LBody, Table / TR / TH / TD, Figure with Alt, artifacts.
 */
import { beforeAll, describe, expect, test } from "vitest";
import { workOutWhole } from "../../src/core/layout-figures.js";
import { benchOf } from "../../src/core/proving/bench-network.js";
import { testSheet } from "../../src/core/proving/sheet/sheet.js";
import { waterCard } from "../../src/core/proving/water/card.js";
import { planWork } from "../../src/core/work/plan-work.js";
import { text } from "../../src/drawing/make.js";
import { figure } from "../../src/drawing/parts.js";
import type { Shape } from "../../src/drawing/shapes.js";
import { pdfDocument } from "../../src/drawing/writers/pdf.js";
import { flow } from "../../src/packet/flow.js";
import { packetPdf } from "../../src/packet/packet.js";
import { paperOf } from "../../src/packet/page.js";
import { itemOf, paragraph } from "../../src/packet/piece.js";
import { groupedTable, table } from "../../src/packet/table.js";
import { paperInEnglish } from "../../src/words/paper/english.js";
import { paperInSpanish } from "../../src/words/spanish/paper.js";
import { fonts } from "../drawing/help.js";
import { poppler } from "../drawing/poppler.js";
import { planAt } from "./pages.js";

interface Element {
  readonly type: string;
  readonly attributes: Map<string, string>;
  readonly words: string[];
  readonly inside: Element[];
}

/** The tree that poppler prints, by its indents. */
function treeOf(pdf: Uint8Array): Element {
  const root: Element = { type: "root", attributes: new Map(), words: [], inside: [] };
  const open: { readonly indent: number; readonly element: Element }[] = [{ indent: -1, element: root }];
  for (const line of poppler("pdfinfo", pdf, ["-struct-text"]).split("\n")) {
    const indent = line.search(/\S/);
    if (indent < 0) continue;
    const attribute = /^ *\/(\S+) (.*)$/.exec(line);
    const words = /^ *"(.*)"$/.exec(line);
    if (attribute !== null) open.at(-1)?.element.attributes.set(attribute[1] ?? "", attribute[2] ?? "");
    else if (words !== null) {
      while ((open.at(-1)?.indent ?? -1) >= indent) open.pop();
      open.at(-1)?.element.words.push(words[1] ?? "");
    } else {
      const type = /^ *([A-Za-z0-9]+)/.exec(line)?.[1] ?? "";
      while ((open.at(-1)?.indent ?? -1) >= indent) open.pop();
      const element: Element = { type, attributes: new Map(), words: [], inside: [] };
      open.at(-1)?.element.inside.push(element);
      open.push({ indent, element });
    }
  }
  return root;
}

function* all(element: Element): Generator<Element> {
  for (const inner of element.inside) {
    yield inner;
    yield* all(inner);
  }
}
const ofType = (element: Element, type: string) => [...all(element)].filter((one) => one.type === type);
const said = (element: Element): string =>
  [...element.words, ...[...all(element)].flatMap(({ words }) => words)].join(" ");

const sheetOf = (shapes: readonly Shape[]) => ({ title: "sheet", widthMm: 297, heightMm: 210, shapes });
const write = (pages: readonly (readonly Shape[])[], language = "en") =>
  pdfDocument(pages.map(sheetOf), { title: "pages", language, fonts });
const paper = paperOf("a4");

describe("pieces", () => {
  test("a table over three pages is one, its head told once, every row as wide as it", async () => {
    const columns = [
      { heading: "", share: 1, hand: "tick" },
      { heading: "name", share: 4 },
      { heading: "figure", share: 2, align: "right" },
    ] as const;
    const rows = Array.from({ length: 60 }, (_, at) => ({
      cells: ["", `thing ${at}`, at % 3 === 0 ? "" : `${at}.5 V`],
      ...(at === 7 ? { note: { text: "a note across" } } : {}),
    }));
    const pages = flow(table(columns, rows, 200), paper);
    expect(pages.length).toBeGreaterThan(2);
    const tree = treeOf(await write(pages));
    const tables = ofType(tree, "Table");
    expect(tables).toHaveLength(1);
    const [one] = tables;
    if (one === undefined) return;
    expect(ofType(one, "TH").map(said)).toEqual(["", "name", "figure"]);
    expect(ofType(one, "TH").every(({ attributes }) => attributes.get("Scope") === "/Column")).toBe(true);
    const body = ofType(one, "TR").slice(1);
    expect(body).toHaveLength(61);
    const names = body.flatMap((row) => (row.inside.length === 3 ? [said(row.inside[1] ?? row)] : []));
    expect(names).toEqual(rows.map(({ cells }) => cells[1]));
    const note = body[8];
    expect(note?.inside.map((cell) => [said(cell), cell.attributes.get("ColSpan")])).toEqual([
      ["a note across", "3"],
    ]);
  });
  test("names of groups head their rows, and are told once where they go on", async () => {
    const columns = [
      { heading: "name", share: 4 },
      { heading: "figure", share: 2 },
    ];
    const groups = ["first", "second"].map((name) => ({
      name,
      rows: Array.from({ length: 40 }, (_, at) => ({ cells: [`${name} ${at}`, "1"] })),
    }));
    const pages = flow(groupedTable(columns, groups, 200, ", continued"), paper);
    const tree = treeOf(await write(pages));
    const heads = ofType(tree, "TH").filter(({ attributes }) => attributes.get("Scope") === "/Row");
    expect(heads.map(said)).toEqual(["first", "second"]);
    expect(said(tree)).not.toContain("continued");
    expect(ofType(tree, "TR")).toHaveLength(83);
  });
  test("lines of a paragraph are one, its words apart; a list has its items; a drawing stands for its words", async () => {
    const list = {};
    const long =
      "a long paragraph of words that go over the end of their line more than once, as paragraphs do";
    const pieces = [
      paragraph({ text: long }, 40),
      itemOf(list, paragraph({ text: "one" }, 40)),
      itemOf(list, paragraph({ text: "two and more words than go on one line of it" }, 40)),
    ];
    const drawn = figure("a boat", [text(20, 20, "bow"), text(40, 20, "stern")], paperInEnglish.frame.drawn);
    const pdf = await write([[...(flow(pieces, paper)[0] ?? []), ...drawn]]);
    const tree = treeOf(pdf);
    const paragraphs = ofType(tree, "P");
    expect(paragraphs.map(said)).toEqual([long]);
    expect(ofType(tree, "L")).toHaveLength(1);
    expect(ofType(tree, "LI").map(said)).toEqual(["one", "two and more words than go on one line of it"]);
    expect(Buffer.from(pdf).toString("latin1")).toContain(
      "/Alt (Drawing: a boat. Written in it: bow; stern.)",
    );
  });
});

const whole = workOutWhole(planAt("examples/tender.yaml"));
const { figures, circuit, layout, hull } = whole;
const apart = {
  hull,
  layout,
  proof: {
    sheet: testSheet(benchOf(figures.plan, circuit), figures, { samples: 100 }),
    card: waterCard(figures),
  },
  work: planWork(figures, whole, 0),
};

describe.each([
  ["English", paperInEnglish],
  ["Spanish", paperInSpanish],
])("the packet of the tender in %s", (_, words) => {
  let pdf: Uint8Array;
  let tree: Element;
  beforeAll(async () => {
    pdf = await packetPdf(figures, figures.plan.source.shows, fonts, undefined, apart, words);
    tree = treeOf(pdf);
  }, 60_000);

  test("says its language and its title, and has a mark for each part", () => {
    const raw = Buffer.from(pdf).toString("latin1");
    expect(raw).toContain(`/Lang (${words.language})`);
    expect(raw).toContain("/DisplayDocTitle true");
    expect(poppler("pdfinfo", pdf)).toMatch(/Tagged: +yes/);
    const outline = raw.match(/\/Title /g)?.length ?? 0;
    // the document's own title, and one for each part
    expect(outline - 1).toBe(ofType(tree, "H1").length);
  });

  test("every word of its pages is told once or is furniture: nothing is left out of the order", () => {
    const bag = (all_: string) => {
      const counts = new Map<string, number>();
      for (const word of all_.match(/[\p{L}\p{N}]+/gu) ?? []) counts.set(word, (counts.get(word) ?? 0) + 1);
      return counts;
    };
    const printed = bag(poppler("pdftotext", pdf));
    const told = bag(said(tree));
    const unknown = [...told].filter(([word, count]) => count > (printed.get(word) ?? 0));
    // a word cut at a hyphen or between two lines is read in two ways by the two readers
    expect(unknown.length).toBeLessThan(told.size * 0.02);
    const count = (counts: Map<string, number>) => [...counts.values()].reduce((sum, one) => sum + one, 0);
    expect(count(told)).toBeGreaterThan(count(printed) * 0.85);
  });

  test("the foot of the pages and what comes again are not told", () => {
    expect(said(tree)).not.toMatch(/page \d+ of \d+|página \d+ de \d+/);
    expect(said(tree)).not.toContain(words.frame.planningAid);
    const titles = ofType(tree, "H1").map(said);
    expect(new Set(titles).size).toBe(titles.length);
  });

  test("tables have heads, and rows as wide as they", () => {
    const tables = ofType(tree, "Table");
    expect(tables.length).toBeGreaterThan(10);
    for (const one of tables) {
      const widths = new Set(
        ofType(one, "TR").map(({ inside }) =>
          inside.reduce((sum, { attributes }) => sum + Number(attributes.get("ColSpan") ?? 1), 0),
        ),
      );
      expect(widths.size, said(one).slice(0, 200)).toBe(1);
      expect(ofType(one, "TH").length, said(one).slice(0, 200)).toBeGreaterThan(0);
    }
  });

  test("every drawing has a text in its place, in the language of the page", () => {
    const raw = Buffer.from(pdf).toString("latin1");
    const figures = raw.split("/S /Figure").slice(1);
    expect(figures.length).toBe(ofType(tree, "Figure").length);
    expect(figures.length).toBeGreaterThan(5);
    for (const one of figures) expect(one.slice(0, 40)).toMatch(/^\n\/Alt [(<]./);
    expect(raw).toContain(words.language === "es" ? "/Alt (Dibujo: " : "/Alt (Drawing: ");
  });
});
