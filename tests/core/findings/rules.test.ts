import { describe, expect, test } from "vitest";
import { checkPlan } from "../../../src/core/findings/check.js";
import type { Finding } from "../../../src/core/findings/finding.js";
import { type RuleId, rules } from "../../../src/core/findings/rules.js";
import { editSentence } from "../../../src/words/edits.js";
import { findingSentence, workingLines } from "../../../src/words/findings.js";
import { ruleText } from "../../../src/words/rules.js";
import { findingsInSpanish } from "../../../src/words/spanish/findings.js";
import { boat } from "./boat.js";
import type { RuleCase } from "./case.js";
import { batteryCases } from "./cases/batteries.js";
import { boxCases } from "./cases/boxes.js";
import { conductorCases } from "./cases/conductors.js";
import { floatCases } from "./cases/hull-float.js";
import { formCases } from "./cases/hull-form.js";
import { holeCases } from "./cases/hull-holes.js";
import { markCases } from "./cases/hull-marks.js";
import { jointCases } from "./cases/joints.js";
import { layoutCases } from "./cases/layout.js";
import { partCases } from "./cases/parts.js";
import { protectionCases } from "./cases/protection.js";
import { readingCases } from "./cases/readings.js";
import { supplyCases } from "./cases/supply.js";
import { voltageCases } from "./cases/voltage.js";
import { wayCases } from "./cases/ways.js";
import { workCases } from "./cases/work.js";

/** A rule without a case does not compile. */
const cases: Readonly<Record<RuleId, RuleCase>> = {
  ...supplyCases,
  ...voltageCases,
  ...conductorCases,
  ...protectionCases,
  ...jointCases,
  ...batteryCases,
  ...layoutCases,
  ...boxCases,
  ...wayCases,
  ...partCases,
  ...formCases,
  ...markCases,
  ...holeCases,
  ...floatCases,
  ...workCases,
  ...readingCases,
};

/** A sentence without what the owner has called things. */
const withoutNames = (sentence: string, { at, with: others = [] }: Finding) =>
  [at, ...others].reduce((rest, name) => rest.replaceAll(name.toLowerCase(), ""), sentence.toLowerCase());

/** What a sentence tells with a unit: `2.9 %`, `7.5 A`. */
const figuresIn = (sentence: string) =>
  sentence.match(/[0-9][0-9.]*\u00a0\S+[A-Za-z%°]/g)?.filter((told) => !/years|days/.test(told)) ?? [];

const gravity = ["unchecked", "mind", "mend", "stop"];

test("the sound boat has no findings", () => {
  expect(checkPlan(boat())).toEqual([]);
});

describe.each(rules.map((rule) => [rule.id, rule] as const))("%s", (id, rule) => {
  const { raises, quiet = [] }: RuleCase = cases[id];

  test.each(raises.map((one, index) => [index, one] as const))("raises, %i", (_index, raised) => {
    const found = checkPlan(raised.boat()).filter((one) => one.rule === id);
    const here = found.find(({ at, level }) => at === raised.at && level === raised.level);
    expect(here, JSON.stringify(found)).toBeDefined();
    if (raised.figure !== undefined) expect(here?.figure).toBeCloseTo(raised.figure, 9);
    if (raised.limit !== undefined) expect(here?.limit).toBeCloseTo(raised.limit, 9);
  });

  test.each(raises.map((one, index) => [index, one] as const))("is told in words, %i", (_index, raised) => {
    const shows = { lengths: "inches", conductors: "awg", paper: "letter" } as const;
    for (const finding of checkPlan(raised.boat()).filter((one) => one.rule === id)) {
      const sentence = findingSentence(finding, shows);
      expect(sentence).toMatch(/^[A-Z0-9].*\.$/s);
      expect(sentence).not.toMatch(/undefined|NaN|\[object|–/);
      if (raised.says !== undefined && finding.at === raised.at) expect(sentence).toMatch(raised.says);
      const inSpanish = findingSentence(finding, shows, findingsInSpanish);
      expect(inSpanish).toMatch(/^[A-ZÁÉÍÓÚÑ0-9¿«].*[.]$/s);
      expect(withoutNames(inSpanish, finding)).not.toMatch(
        /undefined|nan\b|\[object|–|\b(?:the|of|is|are|and|with|its|not|years|days)\b/,
      );
      // the same figures and places, whatever the words
      for (const told of figuresIn(sentence)) expect(inSpanish).toContain(told);
      for (const line of [...workingLines(finding, shows), ...(finding.remedies ?? []).map(editSentence)])
        expect(line).not.toMatch(/undefined|NaN|\[object/);
    }
  });

  test.each([boat, ...quiet].map((one, index) => [index, one] as const))(
    "keeps quiet, %i",
    (_index, quietBoat) => {
      expect(checkPlan(quietBoat()).filter((one) => one.rule === id)).toEqual([]);
    },
  );

  test("its words stand in both languages, apart", () => {
    for (const part of ["title", "why", "mend"] as const)
      expect(ruleText(id, findingsInSpanish)[part]).not.toBe(ruleText(id)[part]);
  });

  test("its level is the gravest it gives, and it has sources", () => {
    const given = raises.map(({ level }) => gravity.indexOf(level));
    expect(Math.max(...given)).toBe(gravity.indexOf(rule.level));
    expect(rule.sources.us.length).toBeGreaterThan(0);
    expect(rule.sources.iso.length).toBeGreaterThan(0);
  });
});
