/** Names that are the same to the eye: letters composed or taken apart are one, width and marks that cannot be seen are told. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadEdits } from "../../../src/core/parts/tables/load-edits.js";
import { readLoadTable } from "../../../src/core/parts/tables/load-table.js";
import { readStockTable } from "../../../src/core/parts/tables/stock-table.js";
import { completePlan } from "../../../src/core/plan/complete.js";
import { applyEdit } from "../../../src/core/plan/edits/apply.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { looks } from "../../../src/core/quantity/look-alike.js";
import { nearestOf } from "../../../src/core/quantity/nearest.js";
import { readProblemSentence } from "../../../src/words/read-problems.js";
import { problemsInSpanish } from "../../../src/words/spanish/problems.js";
import { englishLeftIn } from "../../words/spanish.js";

const [e, eApart] = ["é", "e\u0301"];

/** A battery and a lamp; `lamp` is what the gear is called, `to` what the cable says of it. */
const planOf = (lamp: string, to = lamp, more = ""): string =>
  `skiffloom: 1
name: two lamps
rules: iso
batteries: {house: {chemistry: agm, capacity: 50 Ah}}
panels: {helm: {ways: {lights: {}}}}
gear:
  ${lamp}: {role: lighting, draws: 3 W}
${more}runs:
  feed: {from: house, to: helm, length: 1 m}
  cable: {from: helm / lights, to: ${to}, length: 2 m}
`;

const problemsOf = (text: string) => {
  const read = readPlan(text);
  return read.ok ? [] : read.problems;
};

describe("letters composed or taken apart", () => {
  test.each([
    ["plain writing", (text: string) => text],
    [
      "writing for the full reader",
      (text: string) => text.replace("name: two lamps", "name: |-\n  two lamps"),
    ],
  ])("a name is found whichever way it is written, in %s; the text stays as it is", (_, written) => {
    const text = written(planOf(`lumi${eApart}re`, `lumi${e}re`));
    const read = readPlan(text);
    if (!read.ok) throw new Error(read.problems.map(readProblemSentence).join("\n"));
    expect(read.plan.gear[0]?.name).toBe(`lumi${e}re`);
    expect(read.plan.runs[1]?.to.place).toBe(`lumi${e}re`);
    expect(read.document.text).toBe(text);
  });
  test("the same name twice is told as such, with line and column", () => {
    const text = planOf(`lumi${e}re`, `lumi${e}re`, `  lumi${eApart}re: {role: lighting, draws: 3 W}\n`);
    expect(problemsOf(text)).toMatchObject([
      { code: "duplicate key", line: 8, column: 3, firstLine: 7, found: `lumi${e}re` },
    ]);
    const across = planOf(`lumi${e}re`, `lumi${e}re`, `waypoints: {lumi${eApart}re: {}}\n`);
    expect(problemsOf(across)).toMatchObject([{ code: "name used twice", line: 8, firstLine: 7 }]);
  });
});

describe("names that differ in what cannot be told apart", () => {
  test.each([
    ["a blank without width", "la\u200Bmp", "la[U+200B]mp"],
    ["a joiner", "lamp\u200D", "lamp[U+200D]"],
    ["a soft hyphen", "la\u00ADmp", "la[U+00AD]mp"],
    ["a mark of direction", "\u200Elamp", "[U+200E]lamp"],
    ["wide letters", "\uFF4C\uFF41mp", "[U+FF4C][U+FF41]mp"],
  ])("%s", (_, name, spelt) => {
    const text = planOf("lamp", "lamp", `  ${name}: {role: lighting, draws: 3 W}\n`);
    const [problem, ...others] = problemsOf(text);
    expect(others).toEqual([]);
    expect(problem).toMatchObject({ code: "names alike", line: 8, column: 3, firstLine: 7, found: spelt });
    if (problem === undefined) return;
    expect(readProblemSentence(problem)).toContain(`“${spelt}” looks like the name on line 7`);
    const spanish = problemsInSpanish.sentence(problem);
    expect(spanish).toContain("línea 7");
    expect(englishLeftIn(spanish.replace(spelt, ""))).toEqual([]);
  });
  test("a blank of another width, and across sections", () => {
    const blank = planOf("deck lamp", "deck lamp", "  deck\u00A0lamp: {role: lighting, draws: 3 W}\n");
    expect(problemsOf(blank)).toMatchObject([{ code: "names alike", line: 8, found: "deck[U+00A0]lamp" }]);
    const across = planOf("lamp", "lamp", "waypoints: {la\u200Bmp: {}}\n");
    expect(problemsOf(across)).toMatchObject([{ code: "names alike", line: 8, column: 13, firstLine: 7 }]);
    const ways = planOf("lamp").replace("{lights: {}}", "{lights: {}, ligh\u2060ts: {}}");
    expect(problemsOf(ways)).toMatchObject([{ code: "names alike", line: 5, column: 36, firstLine: 5 }]);
  });
  test("a mention is no other thing: the name that was meant is offered, the mark spelt out", () => {
    expect(problemsOf(planOf("lamp", "la\u200Bmp"))).toMatchObject([
      { code: "unknown place", line: 10, found: "la[U+200B]mp", nearest: "lamp" },
    ]);
    expect(problemsOf(planOf("lamp", "\uFF4C\uFF41\uFF4D\uFF50"))).toMatchObject([{ nearest: "lamp" }]);
  });
  test("a name may hold such signs where none is mistaken for it", () => {
    expect(problemsOf(planOf("lamp \u{1F469}\u200D\u{1F527}"))).toEqual([]);
    expect(problemsOf(planOf("\uFF4C\uFF41\uFF4D\uFF50"))).toEqual([]);
  });
});

describe("edits", () => {
  const text = planOf(`lumi${e}re`);
  test("find a thing by its name taken apart, and write a new one composed", () => {
    const renamed = applyEdit(text, { edit: "rename", at: `lumi${eApart}re`, to: `caf${eApart}` });
    if (!renamed.ok) throw new Error(renamed.problem.code);
    expect(renamed.text).toBe(text.replaceAll(`lumi${e}re`, `caf${e}`));
    const apart = planOf(`lumi${eApart}re`);
    const set = applyEdit(apart, { edit: "set field", at: `lumi${e}re`, field: "draws", to: "4 W" });
    if (!set.ok) throw new Error(set.problem.code);
    expect(set.text).toBe(apart.replace("3 W", "4 W"));
    const away = applyEdit(apart, { edit: "rename", at: `lumi${e}re`, to: "lamp" });
    if (!away.ok) throw new Error(away.problem.code);
    expect(away.text).toBe(planOf("lamp"));
  });
  test("a name that is taken is taken however it is written", () => {
    const two = planOf("lamp", "lamp", `  lumi${e}re: {role: lighting, draws: 3 W}\n`);
    const to = `lumi${eApart}re`;
    expect(applyEdit(two, { edit: "rename", at: "lamp", to })).toMatchObject({
      problem: { code: "name taken" },
    });
    expect(applyEdit(two, { edit: "add", kind: "gear", name: to, as: "{draws: 1 W}" })).toMatchObject({
      problem: { code: "name taken" },
    });
  });
  test("a name that only looks taken is refused, and why", () => {
    const two = planOf("lamp", "lamp", "  sounder: {role: electronics, draws: 3 W}\n");
    expect(applyEdit(two, { edit: "rename", at: "sounder", to: "la\u200Bmp" })).toMatchObject({
      ok: false,
      problem: { code: "result unsound", problems: [{ code: "names alike", found: "la[U+200B]mp" }] },
    });
    expect(applyEdit(two, { edit: "remove", at: "la\u200Bmp" })).toMatchObject({
      problem: { code: "nothing so called", nearest: "lamp" },
    });
  });
});

describe("tables", () => {
  test("a load list goes by the plan's name, however its letters are put together", () => {
    const read = readPlan(planOf(`lumi${e}re`));
    if (!read.ok) throw new Error("plan");
    const { rows, problems } = readLoadTable(`name,draws\nlumi${eApart}re,5 W\n`);
    expect(problems).toEqual([]);
    expect(loadEdits(completePlan(read.plan), rows)).toEqual([
      { edit: "set field", at: `lumi${e}re`, field: "draws", to: "5 W" },
    ]);
  });
  test("two lines for one thing, or for what looks like one, are told with their lines", () => {
    expect(readLoadTable(`name,draws\nlumi${e}re,5 W\nlumi${eApart}re,6 W\n`).problems).toMatchObject([
      { problem: "name-twice", line: 3, column: "name", firstLine: 2 },
    ]);
    expect(readLoadTable("name,draws\nlamp,5 W\nla\u200Bmp,6 W\n").problems).toMatchObject([
      { problem: "names-alike", line: 3, column: "name", found: "la[U+200B]mp", firstLine: 2 },
    ]);
    expect(readStockTable("item,count\nM16 gland,2\nM16\u00A0gland,2\nM16 gland,1\n").problems).toMatchObject(
      [{ problem: "names-alike", line: 3, column: "item", found: "M16[U+00A0]gland" }],
    );
  });
});

// Unicode Standard Annex 15: form C is stable, and no part of a text in it is in another form; the engine's own normalize is the witness.
test("what a name looks like is the same for every way of writing it, and looks like itself", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme", maxLength: 12 }), (name) => {
      expect(looks(name.normalize("NFD"))).toBe(looks(name.normalize("NFC")));
      expect(looks(looks(name))).toBe(looks(name));
      expect(looks(name).normalize("NFC")).toBe(looks(name));
      expect(looks(`${name}\u200B`)).toBe(looks(name));
    }),
  );
  for (const blank of [" ", "  ", " bow  lamp ", "bow\u00A0lamp"])
    expect(looks(`${blank}\u200B`)).toBe(looks(blank));
  expect(looks(" bow  lamp ")).toBe("bow lamp");
  expect(nearestOf("\uFF4Camp", ["boat", "lamp"])).toBe("lamp");
});
