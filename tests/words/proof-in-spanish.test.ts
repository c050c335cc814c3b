/** What readings tell, the sheet of tests and the card for the water, in Spanish: nothing left out, nothing left in English, the same figures and names. */
import { describe, expect, test } from "vitest";
import type { Probe } from "../../src/core/proving/probe.js";
import { testSheet } from "../../src/core/proving/sheet/sheet.js";
import { type SheetTest, type SheetTestKind, sheetTests } from "../../src/core/proving/sheet/types.js";
import { faultKinds, type Suspect } from "../../src/core/proving/suspect.js";
import type { Unplaced } from "../../src/core/proving/taken/adapt.js";
import type { JudgedReading, Verdict } from "../../src/core/proving/taken/judge.js";
import { waterCard } from "../../src/core/proving/water/card.js";
import { joints } from "../../src/core/reference/joints.js";
import { english } from "../../src/words/proof/english.js";
import type { ProofWords } from "../../src/words/proof/proof-words.js";
import {
  bandWords,
  changeSentence,
  nextWords,
  ohmWords,
  pointWords,
  suspectSentence,
  takenWords,
  verdictSentence,
} from "../../src/words/proving.js";
import { points } from "../../src/words/spanish/points.js";
import { proofInSpanish as spanish } from "../../src/words/spanish/proof.js";
import { expectedWords, howWords, sectionWords, settingWords } from "../../src/words/test-sheet.js";
import { fuseWords, spareFuseWords, switchWords, usageWords } from "../../src/words/water-card.js";
import { example, taken } from "../core/proving/boats.js";
import { englishLeftIn, sameFigures } from "./spanish.js";

/** English words of the trade that have a Spanish one here. */
const trade =
  /undefined|\b(volts|amperes|ohms|wire|lead|plus|minus|positive|negative|fuse|switch|master|joint|on|off|open|meter|clamp|eyes|way|battery|port|starboard|beam)\b/i;

function noEnglish(said: string): void {
  expect(englishLeftIn(said), said).toEqual([]);
  expect(said).not.toMatch(trade);
}
/** Names as an owner could write them, with no word of either language in them. */
const wire = "xtrunk / xelm / xamps / out";
const names = ["xtrunk", "xelm", "xamps", "xorn", "xouse"];

/** Said in both languages: the same figures, no English left, and the same names in it. */
function both(say: (words: ProofWords) => string): string {
  const [inSpanish, inEnglish] = [say(spanish), say(english)];
  sameFigures(inSpanish, inEnglish);
  expect(inSpanish).not.toBe(inEnglish);
  noEnglish(inSpanish);
  for (const name of names) expect(inSpanish.includes(name), inSpanish).toBe(inEnglish.includes(name));
  return inSpanish;
}

const suspect = (kind: Suspect["kind"], more: Partial<Suspect> = {}): Suspect => ({
  kind,
  at: kind === "well" ? [] : [wire],
  parts: [],
  probability: 0.4,
  extraOhm: [],
  shown: [],
  misfit: 1,
  explains: true,
  ...more,
});

describe("suspects", () => {
  test.each(faultKinds)("%s", (kind) => {
    const [said] = [both((words) => suspectSentence(suspect(kind), words))];
    expect(said).toMatch(/^[A-Z].*\.$/u);
  });
  test("two places, with what each has too much and which part first", () => {
    const two = suspect("two resistances", {
      at: [wire, "xorn / lead / return"],
      extraOhm: [1.25, 1.3e4],
      parts: ["conductor", "end: crimped ring"],
    });
    expect(both((words) => suspectSentence(two, words))).toBe(
      "Dos uniones o contactos en mal estado: xtrunk, su conductor positivo (xelm / xamps) y xorn, su propio conductor negativo, 1.25\u00a0Ω y 13.0\u00a0kΩ más de lo debido. Mira primero el conductor mismo.",
    );
  });
  test.each(["xelm / fuse", "xelm / switch", "xelm / main", "xelm / master", "xorn / lead / out"])(
    "at %s",
    (at) => {
      for (const kind of ["resistance", "open", at.includes("lead") ? "short" : "wrong fuse"] as const)
        both((words) => suspectSentence(suspect(kind, { at: [at], figure: 15 }), words));
    },
  );
  test("a low battery tells what it lacks", () => {
    expect(
      both((words) => suspectSentence(suspect("battery low", { at: ["xouse"], figure: -0.45 }), words)),
    ).toContain("0.45");
  });
  test("every part and every kind of joint, at either end", () => {
    const kinds = Object.keys(joints);
    expect(kinds.length).toBeGreaterThan(10);
    for (const part of [
      ...Object.keys(english.proving.parts),
      ...kinds.flatMap((kind) => [kind, `start: ${kind}`, `end: ${kind}`]),
    ]) {
      const said = both((words) => suspectSentence(suspect("resistance", { parts: [part, ""] }), words));
      expect(said, part).toMatch(/ Mira primero (el|los) \p{L}+[\p{L} ]*\.$/u);
    }
  });
});

const probes: readonly Probe[] = [
  { kind: "voltage", at: "xorn +", against: "xouse -", on: [] },
  { kind: "voltage", at: "xorn at joint +", against: "xelm bus -", on: ["xamps 1", "xamps 2", "xorn"] },
  { kind: "current", at: "xelm / xamps / fuse", on: ["xorn"] },
  { kind: "ohm", at: "xelm fused +", against: "xelm main -", on: [] },
  { kind: "ohm", at: "xelm master +", against: "xorn -", on: ["xorn"], lifted: [wire, "xtrunk / return"] },
  { kind: "marking", at: "xelm / main", on: [] },
];

describe("readings to take", () => {
  test.each(probes)("$kind at $at", (probe) => {
    const next = { probe, bits: 1, effort: 1, wouldShow: [] };
    both((words) => nextWords(next, words));
    const cut = both((words) => nextWords({ ...next, opens: "sealed butt" }, words));
    expect(cut).toContain("cortar su empalme a tope estanco");
    expect(both((words) => nextWords({ ...next, opens: "screw terminal" }, words))).not.toContain("cortar");
  });
  test("points are those the findings name, and what stands open is said so", () => {
    expect(spanish.proving.points).toBe(points);
    expect(pointWords("xelm fused -", points)).toBe("xelm − (detrás de su fusible)");
    expect(ohmWords(Number.POSITIVE_INFINITY, spanish)).toBe("abierto");
    for (const kind of ["voltage", "current", "ohm"] as const)
      noEnglish(bandWords(kind, { expected: 12, low: -1, high: 1e8 }, spanish));
  });
});

const judged = (verdict: Verdict, more: Partial<JudgedReading> = {}): JudgedReading => ({
  taken: taken("xorn +", "xouse -", 12.3),
  verdict,
  differsFrom: [],
  ...more,
});

describe("readings on record", () => {
  test.each(["within", "low", "high", "impossible", "unchecked"] as const)("%s", (verdict) => {
    both((words) => verdictSentence(judged(verdict), words));
    for (const wouldFitTimes of [1000, 1e-3])
      both((words) => verdictSentence(judged(verdict, { wouldFitTimes, differsFrom: [2, 6] }), words));
  });
  const unplaced: readonly Unplaced[] = [
    { why: "no such point", name: "xorn" },
    { why: "no such branch", name: "xorn" },
    { why: "no such gear", name: "xorn" },
    { why: "no such way", name: "xorn" },
    { why: "second point missing" },
    { why: "same point twice" },
  ];
  test.each(unplaced)("$why", (one) => {
    const said = both((words) => verdictSentence(judged("unchecked", { unplaced: one }), words));
    expect(said.includes("xorn")).toBe("name" in one);
    expect(takenWords(judged("unchecked"), spanish)).toBe("xorn + a xouse -");
  });
  test("beside those of a finished project", () => {
    const [probe] = probes;
    if (!probe) throw new Error("no probe");
    const change = {
      now: taken("xorn +", "xouse -", 11.2),
      before: taken("xorn +", "xouse -", 12.1),
      project: "xitting",
      change: -0.9,
      sigma: 0.1,
      changed: true,
      reading: { probe, value: 11.2 },
    };
    const said = both((words) => changeSentence(change, words));
    expect(said).toContain("Ahora 11.20\u00a0V; cuando se terminó xitting, 12.10\u00a0V");
  });
});

/** Names of the examples are English, and stay as their owner wrote them. */
const without = (said: string, plan: readonly string[]) =>
  plan.reduce((left, name) => left.replaceAll(name, "×"), said);

describe.each(["tender", "utility", "launch"])("the examples' sheet and card: %s", (name) => {
  const { figures, bench } = example(name);
  const { plan } = figures;
  const named = [
    ...plan.panels.flatMap((panel) => [panel.name, ...panel.ways.map((way) => way.name)]),
    ...[plan.gear, plan.runs, plan.batteries, plan.converters, plan.source.outings].flatMap((list) =>
      list.map((one) => one.name),
    ),
    ...plan.gear.map(({ group }) => group),
  ].toSorted((a, b) => b.length - a.length);
  const same = (say: (words: ProofWords) => string) => {
    sameFigures(say(spanish), say(english));
    noEnglish(without(say(spanish), named));
  };

  test("every test, where and how, what to expect, with what", () => {
    const sheet = testSheet(bench, figures, { samples: 100 });
    for (const section of sheet) {
      same((words) => sectionWords(section, words));
      for (const one of section.tests) {
        for (const say of [howWords, expectedWords, settingWords]) same((words) => say(one, words));
        same((words) => `${words.sheet.tests[one.test]} ${words.sheet.stops[one.stop]}`);
      }
    }
  });
  test("the card", () => {
    const card = waterCard(figures);
    for (const way of card.ways) same((words) => `${fuseWords(way, words)} ${switchWords(way, words)}`);
    for (const use of card.batteries.flatMap(({ uses }) => uses)) same((words) => usageWords(use, words));
    for (const spare of card.spareFuses) same((words) => spareFuseWords(spare, words));
  });
});

test.each(sheetTests)("test of the sheet: %s", (kind: SheetTestKind) => {
  const base: SheetTest = { id: "x", test: kind, at: "xorn", stop: "outside the band" };
  both((words) => `${words.sheet.tests[kind]}: ${howWords(base, words)}`);
  for (const arcDeg of [112.5, 135, 360])
    both((words) => howWords({ ...base, test: "seen from", arcDeg }, words));
  both((words) => settingWords(base, words));
  both((words) => expectedWords(base, words));
  for (const probe of probes) {
    const own = { ...base, probe };
    both((words) => howWords(own, words));
    both((words) =>
      settingWords({ ...own, setting: probe.kind === "current" ? "clamp 20 A" : "2 kΩ" }, words),
    );
    if (probe.kind !== "marking" && probe.kind !== "current")
      both((words) => expectedWords({ ...own, band: { expected: 12, low: 11, high: 13 } }, words));
  }
  both((words) => expectedWords({ ...base, leastOhm: 1e6 }, words));
  both((words) => expectedWords({ ...base, mostV: 0.05 }, words));
  both((words) => expectedWords({ ...base, arcDeg: 360 }, words));
});

test("no word of any list is the English one", () => {
  const lists = (words: ProofWords): readonly Readonly<Record<string, string>>[] => [
    words.proving.points,
    words.proving.verdicts,
    words.proving.faults,
    words.proving.parts,
    words.proving.wouldFit,
    words.sheet.tests,
    words.sheet.stops,
    words.sheet.expected,
    words.water.switches,
    words.water.devices,
    words.water.things,
  ];
  const inEnglish = lists(english);
  lists(spanish).forEach((list, at) => {
    for (const [key, word] of Object.entries(list)) {
      expect(word, key).not.toBe(inEnglish[at]?.[key]);
      noEnglish(word);
    }
  });
});
