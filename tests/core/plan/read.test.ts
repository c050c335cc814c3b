import { describe, expect, test } from "vitest";
import { readPlan, readPlanBytes } from "../../../src/core/plan/read.js";
import type { ReadProblem } from "../../../src/core/plan/source/problem.js";
import { readProblemLine } from "../../../src/words/read-problems.js";
import { docExample, smallPlan } from "./doc-example.js";

function problemsOf(text: string): readonly ReadProblem[] {
  const read = readPlan(text);
  return read.ok ? [] : read.problems;
}
const head = "skiffloom: 1\nname: x\nrules: us\n";
const codes = (text: string) => problemsOf(text).map((problem) => problem.code);

test("what the docs show reads to SI numbers, and what is left out stays undefined", () => {
  const read = readPlan(docExample());
  if (!read.ok) throw new Error(read.problems.map(readProblemLine).join("\n"));
  const { plan } = read;
  const house = plan.batteries[0];
  expect(house).toMatchObject({
    name: "house",
    capacityAh: 50,
    ratedHours: 20,
    internalOhm: 0.009,
    fuelPartWithinM: 0.9,
    reserveShare: 0.5,
    main: { device: "bolted fuse", ratingA: 40, fromSourceM: 0.127, enclosed: false },
    master: { ratingA: 100 },
  });
  expect(plan.craft.lengthM).toBeCloseTo(4.5974, 12); // 181 in by hand
  const ways = new Map(plan.panels[0]?.ways.map((way) => [way.name, way]));
  expect(ways.get("lamps")).toEqual({ name: "lamps", switch: { ratingA: 10 }, alwaysLive: false });
  expect(ways.get("bilge")).toMatchObject({
    switch: "none",
    protection: { device: "blade fuse", ratingA: 5 },
    alwaysLive: true,
  });
  expect(ways.get("spare")).toEqual({ name: "spare", alwaysLive: false });
  const lamp = plan.gear[0];
  expect(lamp).toMatchObject({
    count: 6,
    draw: { kind: "power", powerW: 0.9 },
    minV: 9,
    maxV: 16,
    joint: "sealed butt",
  });
  expect(lamp).not.toHaveProperty("maxDropShare");
  const runs = new Map(plan.runs.map((run) => [run.name, run]));
  expect(runs.get("lamp trunk")).toMatchObject({
    from: { place: "helm", port: "lamps" },
    to: { place: "fore box" },
    jointAtStart: "crimped ring",
    jointAtEnd: "sealed butt",
    colours: { out: "red", return: "black" },
  });
  expect(runs.get("lamp trunk")).not.toHaveProperty("size");
  expect(runs.get("lamp leads")?.lengthsM).toHaveLength(6);
  expect(runs.get("battery feed")).toMatchObject({
    jointAtStart: "crimped ring",
    jointAtEnd: "crimped ring",
  });
  expect(plan.outings[0]).toMatchObject({ startClockH: 4.5, lastsH: 5, airC: 4, startCharge: 1 });
  expect(plan.outings[0]?.on[2]?.duty).toBeCloseTo(1 / 30, 15);
  expect(plan.outings[0]?.on[2]).toMatchObject({ fromH: 0, toH: 5, level: 1 });
  expect(plan.corners[0]).toEqual({ name: "dusk", charge: 0.6, copperC: 15, on: ["coaming lamp"] });
  expect(plan.oneAtATime).toEqual([["livewell pump", "wash pump"]]);
});

test("JSON is YAML too, and carriage returns and a byte order mark do no harm", () => {
  const json = '{"skiffloom": 1, "name": "x", "rules": "iso", "gear": {"lamp": {"draws": "1 W"}}}';
  expect(readPlan(json)).toMatchObject({
    ok: true,
    plan: { shows: { lengths: "millimetres", paper: "a4" } },
  });
  expect(readPlan(smallPlan.replaceAll("\n", "\r\n")).ok).toBe(true);
  expect(readPlan(`\ufeff${smallPlan}`).ok).toBe(true);
});

test("all problems are told at once, in the order of the file, each at its place", () => {
  const text = `${head}craft: {lenght: 5 m, beam: 12 V}
batteries:
  house: {chemistry: agm, capacity: 0 Ah}
gear:
  lamp: {draws: 1 W}
runs:
  a: {from: hose, to: lamp}
`;
  expect(problemsOf(text)).toEqual([
    expect.objectContaining({
      code: "unknown key",
      line: 4,
      column: 9,
      path: ["craft", "lenght"],
      nearest: "length",
    }),
    expect.objectContaining({
      code: "quantity",
      fault: "wrong kind",
      line: 4,
      column: 28,
      path: ["craft", "beam"],
      foundKind: "voltage",
    }),
    expect.objectContaining({
      code: "out of limits",
      line: 6,
      column: 37,
      expected: { kind: "above", limit: "0 Ah" },
    }),
    expect.objectContaining({
      code: "unknown place",
      line: 10,
      column: 13,
      path: ["runs", "a", "from"],
      nearest: "house",
    }),
  ]);
});

test("at most fifty problems, then the word that there are more", () => {
  const gear = Array.from({ length: 80 }, (_, index) => `  lamp ${index}: {draws: 5}`).join("\n");
  const problems = problemsOf(`${head}gear:\n${gear}\n`);
  expect(problems).toHaveLength(51);
  expect(problems.at(-1)?.code).toBe("more problems");
});

describe("forms", () => {
  test.each<[string, string]>([
    ["", "empty"],
    ["# nothing yet\n", "empty"],
    ["just text", "wrong form"],
    ["- a\n- b", "wrong form"],
    [`${head}---\nname: y`, "several documents"],
    [`${head}craft: !boat {length: 5 m}`, "tag"],
    [`${head}craft: &c {length: 5 m}\nambient: {<<: *c}`, "merge key"],
    [`${head}craft: *c`, "unknown alias"],
    [`${head}one at a time: &o [*o]`, "alias in itself"],
    [`${head}? [a]\n: b`, "key not a word"],
    [`${head}name: y`, "duplicate key"],
    [`${head}\tcraft: {}`, "yaml"],
    [`${head}craft: {length: 5 m`, "yaml"],
    [`${head}craft: [5 m]`, "wrong form"],
    [`${head}craft: {length: }`, "nothing written"],
    [`${head}craft: {length: ""}`, "nothing written"],
    [`${head}craft: {petrol on board: yes}`, "wrong form"],
    [`${head}craft: {hull: aluminum}`, "not one of"],
    [`${head}batteries: {b: {chemistry: agm}}`, "missing key"],
    [`${head}gear: {lamp: {draws: 1 W, count: two}}`, "number needed"],
    [`${head}gear: {lamp: {draws: 1 W, count: 1.5}}`, "number needed"],
    [`${head}gear: {lamp: {draws: 1 W, count: .inf}}`, "number needed"],
    [`${head}gear: {lamp: {draws: 1 W, count: 0}}`, "out of limits"],
    [`${head}gear: {lamp: {draws: 0 W}}`, "out of limits"],
    [`${head}gear: {lamp: {draws: 1 W, works: -1 V to 16 V}}`, "out of limits"],
    [`${head}gear: {lamp: {draws: 1 A at 0 V}}`, "out of limits"],
    [`${head}gear: {lamp: {draws: 1 W, count: 100000}, other: {draws: 1 W, count: 2}}`, "too much gear"],
    [`${head}gear: {work out: {draws: 1 W}}`, "bad name"],
    [`${head}gear: {" lamp": {draws: 1 W}}`, "bad name"],
    [`${head}gear: {"a\\nb": {draws: 1 W}}`, "bad name"],
    [`${head}gear: {"half \\ud83d of a letter": {draws: 1 W}}`, "bad name"],
    [`${head}panels: {helm: {ways: {feed: {}}}}`, "bad name"],
    [`${head}corners: {c: {charge: 50 %, voltage: 12 V}}`, "both keys"],
    [`${head}prices: {wire: [{size: 16 AWG}]}`, "neither key"],
    [`${head}prices: {wire: [{size: 16 AWG, per metre: -1}]}`, "out of limits"],
    [`${head}outings: {o: {lasts: 3 h, on: [{what: x, from: 2 h, to: 1 h}]}}`, "ends before it begins"],
    [`${head}outings: {o: {lasts: 3 h, on: [{what: x, to: 4 h}]}}`, "after the end"],
    [`${head}outings: {o: {lasts: 0 h}}`, "out of limits"],
    ["skiffloom: 2\nnew section: {}", "newer format"],
    ["skiffloom: 0\nname: x", "no such format"],
    ["name: x\nrules: us", "missing key"],
  ])("%j: %s", (text, code) => expect(codes(text)).toContain(code));

  test("a newer format is refused with that reason alone", () => {
    expect(problemsOf("skiffloom: 7\nwhatever: [1]\n")).toEqual([
      {
        code: "newer format",
        line: 1,
        column: 12,
        path: ["skiffloom"],
        found: "7",
        expected: { kind: "count", of: [1] },
      },
    ]);
  });

  test("names that mean something to JavaScript are names like any other", () => {
    const read = readPlan(
      `${head}gear: {__proto__: {draws: 1 W}, constructor: {draws: 2 W}, toString: {draws: 3 W}}`,
    );
    expect(read.ok && read.plan.gear.map((gear) => gear.name)).toEqual([
      "__proto__",
      "constructor",
      "toString",
    ]);
    expect(codes(`${head}__proto__: {polluted: true}\nconstructor: 1`)).toEqual([
      "unknown key",
      "unknown key",
    ]);
    expect(codes(`${head}gear: {lamp: {draws: 1 W, __proto__: {}}}`)).toEqual(["unknown key"]);
    expect(Object.hasOwn(Object.prototype, "polluted")).toBe(false);
  });

  test("a value may be used twice through an alias", () => {
    const read = readPlan(
      `${head}gear:\n  a: {draws: 1 W, leads: &thin {size: 22 AWG, length: 8 in}}\n  b: {draws: 1 W, leads: *thin}\n`,
    );
    expect(read.ok && read.plan.gear[1]?.leads).toEqual(read.ok && read.plan.gear[0]?.leads);
  });

  test("numbers, true words and dates may be names and texts as they stand", () => {
    const read = readPlan(
      "skiffloom: 1\nname: 2024-05-01\nrules: us\ngear: {1: {draws: 1 W}, true: {draws: 1 W}}",
    );
    expect(read.ok && [read.plan.name, ...read.plan.gear.map((gear) => gear.name)]).toEqual([
      "2024-05-01",
      "1",
      "true",
    ]);
  });
});

describe("references", () => {
  const spoil = (from: string, to: string) => {
    if (!smallPlan.includes(from)) throw new Error(`the small plan has no ${from}`);
    return problemsOf(smallPlan.replace(from, to));
  };
  test.each<[string, string, object]>([
    ["from: house, to", "from: hause, to", { code: "unknown place", nearest: "house" }],
    ["from: helm / lamps", "from: helm / lamp", { code: "unknown way", nearest: "helm / lamps" }],
    ["from: house, to", "from: house / out, to", { code: "no outlets" }],
    ["from: fore box, to", "from: fore box / lmps, to", { code: "unknown way", nearest: "lamps" }],
    ["from: house, to: helm", "from: helm, to: helm", { code: "itself" }],
    ["to: lamp, lengths", "to: trunk, lengths", { code: "unknown place" }],
    [
      "lengths: [2 ft, 18 in]",
      "lengths: [2 ft, 18 in, 1 ft]",
      { code: "wrong count", expected: { kind: "count", of: [1, 2] } },
    ],
    ["length: 6 ft, size", "length: 6 ft, carries: bilg, size", { code: "unknown way", nearest: "bilge" }],
    ["[lamp, pump]", "[lamp, pmp]", { code: "unknown gear", nearest: "pump" }],
    ["{what: helm / lamps}", "{what: helm / lams}", { code: "unknown way", nearest: "helm / lamps" }],
    ["{what: helm / lamps}", "{what: fore box}", { code: "unknown gear" }],
    [
      "  fore box: {joins: tee}",
      "  fore box: {joins: tee}\n  pump: {}",
      { code: "name used twice", firstLine: 18 },
    ],
    ["  trunk: {", "  lamp 2: {", { code: "name used twice" }],
    ["  lamp: {count", "  lamp 1: {draws: 1 W}\n  lamp: {count", { code: "name used twice" }],
  ])("%s → %s", (from, to, problem) =>
    expect(spoil(from, to)).toContainEqual(expect.objectContaining(problem)),
  );

  test("one piece of gear with a count may be named by its number", () => {
    expect(spoil("[lamp, pump]", "[lamp 2, pump]")).toEqual([]);
    expect(spoil("[lamp, pump]", "[lamp 3, pump]")).toMatchObject([{ code: "unknown gear" }]);
  });

  test("a way's name alone must be clear", () => {
    const two = smallPlan.replace("boxes:\n", "  stern:\n    ways: {lamps: {}}\nboxes:\n");
    expect(problemsOf(two)).toEqual([]);
    expect(problemsOf(two.replace("from: fore box, to", "from: fore box / lamps, to"))).toMatchObject([
      { code: "ambiguous way", expected: { of: ["helm / lamps", "stern / lamps"] } },
    ]);
  });

  test("chargers and parallel batteries name batteries", () => {
    const text = `${head}batteries: {a: {chemistry: agm, capacity: 5 Ah, parallel with: [a, b]}}
chargers: {sun: {kind: solar, charges: c, output: 30 W}}`;
    expect(codes(text)).toEqual(["itself", "unknown battery", "unknown battery"]);
  });
});

describe("bytes", () => {
  const bytes = (...parts: (number[] | string)[]) =>
    new Uint8Array(
      parts.flatMap((part) => (typeof part === "string" ? [...new TextEncoder().encode(part)] : part)),
    );
  test("UTF-8 as Node's own decoder reads it", () => {
    for (const text of ["", "abc", "½ Ω °C ″ 日本", "🛶 a", "\u{10ffff}", "x".repeat(20_000)]) {
      const read = readPlanBytes(new TextEncoder().encode(`skiffloom: 1\nrules: us\nname: "${text}a"\n`));
      const name = read.ok ? read.plan.name : read.problems[0]?.code;
      expect(name).toBe(text.length > 2000 ? "out of limits" : `${text}a`);
    }
  });
  test.each<[string, Uint8Array, number, number]>([
    ["a lone lead byte", bytes("a: é\nb: ", [0xc3]), 2, 4],
    ["a stray byte", bytes("a: ", [0x80]), 1, 4],
    ["an overlong form", bytes([0xc0, 0xaf]), 1, 1],
    ["an overlong form of three", bytes([0xe0, 0x80, 0xaf]), 1, 1],
    ["a surrogate", bytes([0xed, 0xa0, 0x80]), 1, 1],
    ["too great a point", bytes([0xf4, 0x90, 0x80, 0x80]), 1, 1],
    ["UTF-16", bytes([0xff, 0xfe, 0x61, 0]), 1, 1],
  ])("%s is refused where it stands", (_what, given, line, column) =>
    expect(readPlanBytes(given)).toEqual({
      ok: false,
      problems: [{ code: "not utf-8", line, column, path: [] }],
    }),
  );
});

test("every problem of a plan has its sentence", () => {
  const text = `${head}craft: {lenght: 5 m, beam: 12 V, length: 5}\ngear: {lamp: {draws: 1 W, float switch: on}}`;
  expect(problemsOf(text).map(readProblemLine)).toEqual([
    "line 4, column 9, craft / lenght: There is no key “lenght” here. Did you mean “length”?",
    "line 4, column 28, craft / beam: “12 V” is a voltage. Expected a length like “790 mm”.",
    "line 4, column 42, craft / length: “5” has no unit. Expected a length like “790 mm”. Perhaps “5 mm”?",
    "line 5, column 41, gear / lamp / float switch: Expected true or false, found “on”. Perhaps “true”?",
  ]);
});
