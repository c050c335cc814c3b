/** Workings and sources in Spanish: no word left out, no description left in English. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { rules } from "../../src/core/findings/rules.js";
import { workingSymbols, workingTexts } from "../../src/core/findings/working-symbols.js";
import type { Source } from "../../src/core/reference/source.js";
import { workingInEnglish as english } from "../../src/words/finding-working.js";
import { pathWords } from "../../src/words/path-words.js";
import { givenTexts as texts } from "../../src/words/screen/en/given-texts.js";
import { givenTexts as textos } from "../../src/words/screen/es/given-texts.js";
import { sourcesInEnglish, sourceWords } from "../../src/words/source-words.js";
import { workingInSpanish as spanish } from "../../src/words/spanish/finding-working.js";
import { formulaInSpanish } from "../../src/words/spanish/formula.js";
import { pathInSpanish } from "../../src/words/spanish/path.js";
import { sourcesInSpanish } from "../../src/words/spanish/sources.js";
import { englishLeftIn, keysOf } from "./spanish.js";

const isSource = (value: object): value is Source =>
  "title" in value && "place" in value && "status" in value && typeof value.title === "string";

/** Every source that a table, a rule or a formula of the core names. */
function sourcesIn(value: unknown, seen = new Set<unknown>()): Source[] {
  if (typeof value !== "object" || value === null || seen.has(value)) return [];
  seen.add(value);
  if (isSource(value)) return [value];
  const inside = value instanceof Map ? [...value.values()] : Object.values(value);
  return inside.flatMap((one) => sourcesIn(one, seen));
}

const modules: readonly unknown[] = await Promise.all(
  ["reference", "findings", "findings/rules"].flatMap((room) => {
    const folder = new URL(`../../src/core/${room}/`, import.meta.url);
    return readdirSync(folder).flatMap((file) =>
      file.endsWith(".ts") ? import(new URL(file, folder).href) : [],
    );
  }),
);
const sources = sourcesIn(modules);

/** Titles of documents, which stay; and words that are English and Spanish alike. */
const documents =
  /\b(CFR Part \d+ Subpart I|NBS Handbook \d+|Copper Wire Tables|Electrical Installation Guide|UK Boat Safety Scheme|Canal Boat|Change \d)\b/g;
/** Words of the trade and of books that have a Spanish one here. */
const trade =
  /\b(table|chapter|clause|note|recalled|quoted|read|rule|small|craft|wire|tape|hole|gear|battery|maker|length|colou?rs?|annex|figure|own|cable for|holds?)\b/i;

describe("sources", () => {
  test("there are as many as the rules and the tables need", () => {
    expect(sources.length).toBeGreaterThan(100);
    expect(rules.length).toBeGreaterThan(50);
  });
  test.each([...new Set(sources.map((one) => JSON.stringify(one)))])("%s", (kept) => {
    const source: Source = JSON.parse(kept);
    const said = sourceWords(source, sourcesInSpanish).replace(documents, "");
    expect(englishLeftIn(said), said).toEqual([]);
    expect(said).not.toMatch(trade);
    const figures = (text: string) => (text.match(/\d+/g) ?? []).sort();
    const inEnglish = sourceWords(source, sourcesInEnglish).replace(documents, "");
    for (const figure of figures(inEnglish)) expect(figures(said)).toContain(figure);
  });
});

describe("steps of a working", () => {
  test.each(workingSymbols)("%s", (symbol) => {
    const said = spanish.symbols[symbol];
    expect(englishLeftIn(said)).toEqual([]);
    // letters of formulas are those of every language
    const letters = (text: string) => text.match(/(?<!\p{L})[Δ\p{Lu}Σ]+(?!\p{L})/gu) ?? [];
    expect(letters(said)).toEqual(letters(english.symbols[symbol]));
    if (/ \p{Ll}|^\p{Ll}/u.test(english.symbols[symbol].replace("ΔU / U nominal", "")))
      expect(said).not.toBe(english.symbols[symbol]);
  });
  test("values that are words", () => {
    for (const text of workingTexts) expect(spanish.texts[text]).not.toBe(english.texts[text]);
    const same = keysOf(texts).filter((key) => textos[key] === texts[key]);
    expect(same).toEqual([]);
    for (const key of keysOf(textos)) expect(englishLeftIn(textos[key])).toEqual([]);
  });
});

test("names of the plan stay in an id, what the figures added is told", () => {
  expect(pathWords("helm / lamps / fuse", pathInSpanish)).toBe("helm / lamps / fusible");
  expect(pathWords("main", pathInSpanish)).toBe("main");
  expect(pathWords("pump feed / house / return", pathInSpanish)).toBe("pump feed / house / retorno");
});

test("words in a formula are told, its letters stay", () => {
  expect(formulaInSpanish("U = U_source − ΔU")).toBe("U = U_fuente − ΔU");
  const formulas = readdirSync(new URL("../../src/core/working/", import.meta.url)).flatMap((file) =>
    [
      ...readFileSync(new URL(`../../src/core/working/${file}`, import.meta.url), "utf8").matchAll(
        /"([^"]*_[a-z]{3,}[^"]*)"/g,
      ),
    ].map(([, formula = ""]) => formula),
  );
  expect(formulas.length).toBeGreaterThan(10);
  // no subscript stays English but the few that are Spanish too
  for (const formula of formulas)
    for (const [, word] of formulaInSpanish(formula).matchAll(/_([a-z]{3,})/g))
      if (formula.includes(`_${word}`)) expect(["conductor", "nominal"]).toContain(word);
});
