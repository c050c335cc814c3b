import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { workOutWhole } from "../../src/core/layout-figures.js";
import { readPlan } from "../../src/core/plan/read.js";
import { planChanges } from "../../src/core/working/plan-changes.js";
import { changesInEnglish as english, figureName, thingLines } from "../../src/words/change-words.js";
import { changesTold } from "../../src/words/changes-told.js";
import { changesInSpanish as spanish } from "../../src/words/spanish/change-words.js";
import { englishLeftIn, keysOf } from "./spanish.js";

const wholeOf = (text: string) => {
  const read = readPlan(text);
  if (!read.ok) throw new Error("does not read");
  return { ...workOutWhole(read.plan), document: read.document };
};
const before = readFileSync("examples/tender.yaml", "utf8");
const figures = (text: string) => (text.match(/\d+(\.\d+)?/g) ?? []).sort();

describe("a change of plan in Spanish", () => {
  const after = before
    .replace("count: 2 ", "count: 3 ")
    .replace("lengths: [3 ft 2 in, 2 ft]", "lengths: [3 ft 2 in, 2 ft, 18 in]")
    .replace("draws: 12 W", "draws: 30 W");
  const changes = planChanges(wholeOf(before), wholeOf(after));
  const { shows } = wholeOf(before).figures.plan.source;
  const told = changesTold(changes, shows, spanish);
  const inEnglish = changesTold(changes, shows);

  test("tells what the English words tell: the same heads, as many lines, the same figures", () => {
    expect(told.map(({ about }) => about)).toEqual(["written", "figures", "findings", "parts", "work"]);
    expect(inEnglish.map(({ about }) => about)).toEqual(told.map(({ about }) => about));
    for (const [i, { about, counts, sentences, rows }] of told.entries()) {
      const other = inEnglish[i];
      expect(counts.map(figures), about).toEqual(other?.counts.map(figures));
      expect(sentences.map(figures), about).toEqual(other?.sentences.map(figures));
      expect(
        rows.map((row) => figures(row.join(" "))),
        about,
      ).toEqual(other?.rows.map((row) => figures(row.join(" "))));
    }
    for (const about of ["findings", "work"] as const) {
      const sentences = told.find((one) => one.about === about)?.sentences ?? [];
      const others = new Set(inEnglish.find((one) => one.about === about)?.sentences);
      expect(sentences.length).toBeGreaterThan(0);
      for (const sentence of sentences) expect(others.has(sentence), sentence).toBe(false);
    }
  });
  test("a thing, a figure and a step are told in Spanish words", () => {
    const lines = [
      ...thingLines({ section: "runs", name: "cable de proa", change: "added", fields: [] }, spanish),
      ...thingLines({ section: "gear", name: "sonda", change: "removed", fields: [] }, spanish),
      ...thingLines(
        { section: "outings", name: "alba", change: "changed", fields: [{ key: "lasts", after: "5 h" }] },
        spanish,
      ),
      figureName(
        { figure: { of: "hours to reserve", outing: "alba", battery: "a bordo" }, at: "a bordo" },
        spanish,
      ),
      spanish.moreSteps.come(1),
      spanish.moreSteps.gone(7),
      spanish.workLeft("5 h", "6 h"),
    ];
    expect(lines).toEqual([
      "tendido cable de proa: se añade",
      "equipo sonda: se quita",
      "salida al agua alba: lasts sin escribir → 5 h",
      "horas hasta la reserva en la salida «alba»",
      "y 1 paso nuevo más",
      "y 7 pasos más que ya no hacen falta",
      "trabajo por hacer: 5 h → 6 h",
    ]);
  });
  test("no word of its tables is left in English", () => {
    for (const table of ["figures", "sections", "things", "ofFindings", "ofSteps"] as const)
      for (const [key, word] of Object.entries<string>(spanish[table])) {
        expect(englishLeftIn(word), word).toEqual([]);
        expect(word, key).not.toBe(new Map(Object.entries<string>(english[table])).get(key));
      }
    for (const level of keysOf(english.levels))
      expect(spanish.levels[level].name).not.toBe(english.levels[level].name);
  });
});

test("as many metres cut otherwise are told, run by run, in both languages", () => {
  const plan = (a: string, b: string) => `skiffloom: 1
name: trial
rules: iso
batteries: {house: {chemistry: agm, capacity: 50 Ah}}
panels: {helm: {ways: {fore: {}, aft: {}}}}
gear: {fore lamp: {role: lighting, draws: 2 W}, aft lamp: {role: lighting, draws: 2 W}}
runs:
  feed: {from: house, to: helm, length: 1 m}
  fore cable: {from: helm / fore, to: fore lamp, length: ${a}}
  aft cable: {from: helm / aft, to: aft lamp, length: ${b}}
`;
  const [old, young] = [wholeOf(plan("2 m", "3 m")), wholeOf(plan("2.5 m", "2.5 m"))];
  const changes = planChanges(old, young);
  // the sum stays, so the shopping list has nothing to say of it
  expect(changes.parts).toEqual([]);
  const cutMm = (whole: typeof old, run: string) =>
    whole.layout.cuts.kinds.flatMap(({ pieces }) => pieces).find((piece) => piece.run === run)?.lengthMm;
  expect(changes.cuts).toEqual(
    ["fore cable", "aft cable"].map((run) => ({
      run,
      beforeMm: cutMm(old, run),
      afterMm: cutMm(young, run),
    })),
  );
  const { shows } = old.figures.plan.source;
  const said = (words?: typeof spanish) =>
    changesTold(changes, shows, words).find(({ about }) => about === "parts")?.sentences ?? [];
  expect(said().map(figures)).toEqual(said(spanish).map(figures));
  expect(said()[0]).toMatch(/^fore cable: to cut \d+.mm → \d+.mm$/);
  expect(said(spanish)[0]).toMatch(/^fore cable: cortar /);
});
