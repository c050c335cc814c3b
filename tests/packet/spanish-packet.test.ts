/** The packet in Spanish: nothing of it left in English, nothing that no longer fits, the same file from the page's door and the command line's. */
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { workOutWhole } from "../../src/core/layout-figures.js";
import { benchOf } from "../../src/core/proving/bench-network.js";
import { testSheet } from "../../src/core/proving/sheet/sheet.js";
import { waterCard } from "../../src/core/proving/water/card.js";
import { planWork } from "../../src/core/work/plan-work.js";
import { fileList, makeFile } from "../../src/packet/files/make-file.js";
import { packetPages } from "../../src/packet/packet.js";
import { shortPages } from "../../src/packet/short-packet.js";
import { shortScopes } from "../../src/packet/short-scopes.js";
import { paperWords } from "../../src/words/paper/fetch.js";
import type { PaperWords } from "../../src/words/paper/paper-words.js";
import { command } from "../cli/command.js";
import { fonts } from "../drawing/help.js";
import { poppler } from "../drawing/poppler.js";
import { englishLeftIn, pairsOf } from "../words/spanish.js";
import { overlaps, planAt, textsOf } from "./pages.js";

const [english, spanish] = await Promise.all([paperWords("en"), paperWords("es")]);

/** Written alike in both languages. */
const alsoSpanish = new Set(["usual"]);
/** What standards and their publishers are called in any language. */
const documents = /33 CFR Part 183 Subpart I|NBS Handbook|Copper Wire Tables|Electrical Installation Guide/g;

describe.each(["tender", "utility", "launch"])("the packet of examples/%s.yaml", (name) => {
  const path = `examples/${name}.yaml`;
  const plan = planAt(path);
  const whole = workOutWhole(plan);
  const { figures, circuit, layout, hull } = whole;
  const sheet = testSheet(benchOf(figures.plan, circuit), figures, { samples: 100 });
  const apart = {
    hull,
    layout,
    proof: { sheet, card: waterCard(figures) },
    work: planWork(figures, whole, 0),
  };
  const pagesIn = (words: PaperWords) => [
    ...packetPages(figures, plan.shows, apart, words),
    ...shortScopes.flatMap((scope) => shortPages(figures, plan.shows, apart, scope, words)),
  ];
  const textsIn = (pages: ReturnType<typeof pagesIn>) =>
    pages.flatMap(({ sheet: one }) => textsOf(one).map(({ text }) => text.text.replaceAll(documents, "")));
  const pages = pagesIn(spanish);
  const inSpanish = textsIn(pages);
  const written = readFileSync(path, "utf8");
  // a line may end at a hyphen of a name
  const owners = new Set([...pairsOf(written), ...pairsOf(written.replaceAll("-", " "))]);
  const ownWords = new Set(written.toLowerCase().match(/\p{L}+/gu));

  test("no two words in a row are those of the English one, but for names and notes of the plan", () => {
    const known = new Set(textsIn(pagesIn(english)).flatMap(pairsOf));
    const left = inSpanish.flatMap((text) =>
      pairsOf(text).flatMap((pair) => (known.has(pair) && !owners.has(pair) ? [`${pair}: ${text}`] : [])),
    );
    expect([...new Set(left)]).toEqual([]);
  });

  test("no small word of English is left, but for those of the plan", () => {
    const left = inSpanish.flatMap((text) =>
      englishLeftIn(text).flatMap((word) =>
        alsoSpanish.has(word.toLowerCase()) || ownWords.has(word.toLowerCase()) ? [] : [`${word}: ${text}`],
      ),
    );
    expect(left).toEqual([]);
  });

  test("no words stand on other words, and all stay on the page", () => {
    for (const { sheet: one, caption } of pages) {
      expect(overlaps(one), caption).toEqual([]);
      for (const { bounds, text } of textsOf(one)) {
        expect(bounds.minX, text.text).toBeGreaterThanOrEqual(0);
        expect(bounds.maxX, text.text).toBeLessThanOrEqual(one.widthMm);
      }
    }
  });
});

describe("as files", () => {
  const whole = workOutWhole(planAt("examples/tender.yaml"));
  const { shows } = whole.figures.plan.source;

  test("the command line writes what the page makes, in Spanish, and says so in the document", async () => {
    const folder = mkdtempSync(join(tmpdir(), "skiffloom-spanish-"));
    try {
      const to = join(folder, "cuaderno.pdf");
      const ran = await command(["packet", "examples/tender.yaml", "--language", "es", "--to", to]);
      expect(ran).toMatchObject({ status: 0, err: "" });
      const made = await makeFile(whole, { file: "packet" }, shows, () => fonts, spanish);
      const written = readFileSync(to);
      expect(Buffer.compare(written, Buffer.from(made.content))).toBe(0);
      const read = poppler("pdftotext", written);
      for (const said of ["Orden de trabajo", "Lista de la compra", "Conductores", "batería", "caída"])
        expect(read).toContain(said);
      expect(read).not.toMatch(/Order of work|Shopping list|Planning aid|page \d+ of/);
      expect(written.toString("latin1")).toContain("(es)");
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  test("a sheet goes by its Spanish title, on its own and page by page", async () => {
    const { sheets } = fileList(whole, shows, spanish);
    expect(sheets.map(({ title }) => title)).toContain("Puntas");
    // of a boat whose ends take several pages
    const larger = workOutWhole(planAt("examples/utility.yaml"));
    const page = await makeFile(
      larger,
      { file: "page", title: "puntas", page: 1 },
      larger.figures.plan.source.shows,
      () => fonts,
      spanish,
    );
    expect(page.ending).toBe(" puntas 1.svg");
    expect(String(page.content)).toContain("terminal de anillo");
    const listed = await command(["sheet", "examples/tender.yaml", "--language", "es"]);
    expect(listed.out).toContain("Orden de trabajo");
  });

  test("a language that there is not is refused", async () => {
    const ran = await command(["packet", "examples/tender.yaml", "--language", "xx"]);
    expect(ran.status).not.toBe(0);
    expect(ran.err).toContain("--language takes en or es");
  });
});
