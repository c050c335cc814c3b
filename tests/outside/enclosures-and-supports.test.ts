import { describe, expect, test } from "vitest";
import { workOutWhole } from "../../src/core/layout-figures.js";
import { readPlan } from "../../src/core/plan/read.js";
import { legSupports, supportRule } from "../../src/core/route/supports.js";
import { layoutPlan, soundBox } from "../core/findings/layout-boat.js";

/*
 * IEC 60529 (degrees of protection by enclosures) was read at second hand, in public summaries that agree with each other: of a
 * dealer in boat electronics, of a maker's manual, and a test house's extract of clause 6 (what a numeral implies). Published.
 */
describe("IEC 60529, second numeral", () => {
  const levels = (ip: string, surroundings: string): string[] => {
    const text = layoutPlan({ box: soundBox.replace("IP65", ip) }).replace(
      "covered: true, surroundings: splash",
      `covered: true, surroundings: ${surroundings}`,
    );
    const read = readPlan(text);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const { findings } = workOutWhole(read.plan).figures;
    return findings
      .filter(({ rule, at }) => rule === "box-water" && at === "fore box")
      .map(({ level }) => level);
  };
  test.each(["IP", "65", "IP9", "IP69", "IPX", "IP65/", "IP71", "waterproof"])(
    "%j is no IP code that is understood",
    (ip) => {
      const read = readPlan(layoutPlan({ box: soundBox.replace("IP65", ip) }));
      expect(read.ok ? [] : read.problems.map(({ path }) => path)).toEqual([["boxes", "fore box", "ip"]]);
    },
  );

  // Clause 6: "Up to and including second characteristic numeral 6, the designation implies compliance also with the requirements
  // for all lower characteristic numerals"; immersion implies no jets (from memory). What a place asks for: common practice, no source.
  test.each([
    ["IP63", "splash", ["mend"]],
    ["IP64", "splash", []],
    ["IP65", "splash", []],
    ["IP66", "splash", []],
    ["IP67", "splash", []],
    ["IP65", "wet", ["mend"]],
    ["IP66", "wet", []],
    ["IP67", "wet", ["unchecked"]],
    ["IP68", "wet", ["unchecked"]],
    ["IP66/IP67", "wet", []],
    ["IP65/67", "wet", ["mend"]],
    ["IPX4", "splash", []],
    ["IP66/IP67", "bilge", []],
    ["IP66", "bilge", ["mend"]],
    ["IP67", "bilge", []],
    ["IP68", "bilge", []],
  ])("%s in a place that is %s: %j", (ip, surroundings, expected) =>
    expect(levels(ip, surroundings)).toEqual(expected),
  );
});

describe("how far apart cables are held", () => {
  const apart = (
    rules: "us" | "iso",
    what: Parameters<typeof supportRule>[1],
    lengthM: number,
    terminal = false,
  ) => legSupports("leg", lengthM, supportRule(rules, what), terminal);

  // ISO 10133:2012 7.3 and 7.4, read in a public extract (published): conductors 450 mm; battery conductors to the switch 300 mm,
  // the first support not more than 1 m from the terminal; other sheathed conductors 450 mm.
  test.each([
    [["sheathed"], 0.45],
    [["unsheathed"], 0.45],
    [["battery conductor"], 0.3],
    [["sheathed", "battery conductor"], 0.3],
  ] as const)("ISO 10133, %j: %d m", (what, limitM) => {
    expect(supportRule("iso", [...what]).maxApartM).toBe(limitM);
    for (const lengthM of [0.2, 0.45, 0.451, 0.9, 1.37, 4]) {
      const { apartM, atM } = apart("iso", [...what], lengthM);
      expect(apartM).toBeLessThanOrEqual(limitM + 1e-9);
      // no more than it takes: one fewer would hang too far
      expect(lengthM / atM.length).toBeGreaterThan(limitM - 1e-9);
    }
  });

  // "Wire and cable runs need to be supported throughout their length at least every 18 inches or 450 mm": ABYC E-11 as quoted in
  // a public column by its publisher's curriculum director (published). 46 CFR 183.340 (b)(4), read (published): metal supports
  // "spaced not more than 610 millimeters (24 inches) apart"; vessels of not more than 65 ft may follow that publisher instead.
  test("US small craft: 18 in, within the 24 in of 46 CFR", () => {
    for (const what of ["sheathed", "unsheathed", "battery conductor"] as const) {
      const { maxApartM } = supportRule("us", [what]);
      expect(maxApartM / 0.0254).toBeCloseTo(18, 9);
      expect(maxApartM).toBeLessThan(0.61);
    }
    expect(apart("us", ["sheathed"], 6 * 0.3048).atM.map((at) => Math.round(at / 0.0254))).toEqual([
      18, 36, 54,
    ]);
  });
});
