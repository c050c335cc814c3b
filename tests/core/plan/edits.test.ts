import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { applyEdit, applyEdits } from "../../../src/core/plan/edits/apply.js";
import type { Edit } from "../../../src/core/plan/edits/edit.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { docExample, examplePlans, smallPlan } from "./doc-example.js";

function edited(text: string, edit: Edit): string {
  const result = applyEdit(text, edit);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  expect(readPlan(result.text).ok).toBe(true);
  return result.text;
}

/** Lines of the one text that are not in the other, in order: what an edit touched. */
function changedLines(before: string, after: string): { gone: string[]; come: string[] } {
  const old = before.split("\n");
  const now = after.split("\n");
  let start = 0;
  while (start < old.length && start < now.length && old[start] === now[start]) start += 1;
  let end = 0;
  while (end < old.length - start && end < now.length - start && old.at(-1 - end) === now.at(-1 - end))
    end += 1;
  return { gone: old.slice(start, old.length - end), come: now.slice(start, now.length - end) };
}

const cases: [Edit, string[], string[]][] = [
  [
    { edit: "set way fuse", at: "helm / lamps", to: "3 A" },
    ["      lamps: {switch: {rating: 10 A}, fuse: 5 A}   # forward"],
    ["      lamps: {switch: {rating: 10 A}, fuse: 3 A}   # forward"],
  ],
  [
    { edit: "set way fuse", at: "helm / bilge", to: "5 A" },
    ["        fuse: {rating: 3 A, device: breaker}"],
    ["        fuse: {rating: 5 A, device: breaker}"],
  ],
  [
    { edit: "set way fuse", at: "helm / bilge", to: "none" },
    ["        fuse: {rating: 3 A, device: breaker}"],
    ["        fuse: none"],
  ],
  [
    { edit: "set main fuse", at: "house", to: "30 A" },
    ["  house: {chemistry: agm, capacity: 50 Ah, main: {device: bolted fuse, rating: 40 A}}"],
    ["  house: {chemistry: agm, capacity: 50 Ah, main: {device: bolted fuse, rating: 30 A}}"],
  ],
  [
    { edit: "set main fuse", at: "helm", to: "{device: breaker, rating: 20 A}" },
    [],
    ["    main: {device: breaker, rating: 20 A}"],
  ],
  [
    { edit: "set run fuse", at: "trunk", to: "work out" },
    ["  trunk: {from: helm / lamps, to: fore box, length: 9 ft 4 in}"],
    ["  trunk: {from: helm / lamps, to: fore box, length: 9 ft 4 in, fuse: work out}"],
  ],
  [{ edit: "set run size", at: "pump line", to: "14 AWG" }, [], ["    size: 14 AWG"]],
  [{ edit: "set return size", at: "pump line", to: "2.5 mm²" }, [], ["    return size: 2.5 mm²"]],
  [{ edit: "set run return", at: "pump line", to: "shared" }, [], ["    return: shared"]],
  [
    { edit: "set run size", at: "feed line", to: "6 AWG" },
    ["  feed line: {from: house, to: helm, length: 6 ft, size: 8 AWG}"],
    ["  feed line: {from: house, to: helm, length: 6 ft, size: 6 AWG}"],
  ],
  [
    { edit: "set run joint", at: "lamp leads 2", end: "end", to: "sealed butt" },
    ["  lamp leads: {from: fore box, to: lamp, lengths: [2 ft, 18 in]}"],
    ["  lamp leads: {from: fore box, to: lamp, lengths: [2 ft, 18 in], joint: {end: sealed butt}}"],
  ],
  [
    { edit: "set run joint", at: "pump line", end: "both", to: "sealed butt" },
    [],
    ["    joint: sealed butt"],
  ],
  [{ edit: "set gear joint", at: "pump", to: "solder sleeve" }, [], ["    joint: solder sleeve"]],
  [
    { edit: "set run colours", at: "pump line", out: "red", return: "yellow" },
    [],
    ["    colours: {out: red, return: yellow}"],
  ],
  [{ edit: "set way always live", at: "helm / bilge", to: true }, [], ["        always live: true"]],
  [
    { edit: "set field", at: "pump", field: "draws", to: "3 A at 12 V" },
    ["    draws: 2.8 A at 12 V   # on the label"],
    ["    draws: 3 A at 12 V   # on the label"],
  ],
  [
    { edit: "set field", at: "lamp 2", field: "leads", to: "{size: 22 AWG, length: 8 in}" },
    ["  lamp: {count: 2, draws: 0.9 W, works: 9 V to 16 V}"],
    ["  lamp: {count: 2, draws: 0.9 W, works: 9 V to 16 V, leads: {size: 22 AWG, length: 8 in}}"],
  ],
  [{ edit: "set field", at: "lamp", field: "count", to: 2 }, [], []],
  [
    { edit: "set field", at: "plan", field: "name", to: "Reed: the #2" },
    ["name: Reed Bunting   # invented"],
    ['name: "Reed: the #2"   # invented'],
  ],
  [{ edit: "set field", at: "dusk", field: "lasts", to: "4 h" }, ["    lasts: 3 h"], ["    lasts: 4 h"]],
  [{ edit: "set field", at: "ambient", field: "hot", to: "40 °C" }, [], ["ambient: {hot: 40 °C}"]],
  [{ edit: "remove field", at: "helm / bilge", field: "switch" }, ["        switch: none"], []],
  [
    { edit: "remove field", at: "lamp", field: "works" },
    ["  lamp: {count: 2, draws: 0.9 W, works: 9 V to 16 V}"],
    ["  lamp: {count: 2, draws: 0.9 W}"],
  ],
  [
    { edit: "remove field", at: "feed line", field: "length" },
    ["  feed line: {from: house, to: helm, length: 6 ft, size: 8 AWG}"],
    ["  feed line: {from: house, to: helm, size: 8 AWG}"],
  ],
  [{ edit: "remove", at: "dusk" }, smallPlan.split("\n").slice(-7, -1), ["outings: {}"]],
  [
    { edit: "add", kind: "gear", name: "horn", as: "{role: sound signal, draws: 4 A}" },
    [],
    ["  horn: {role: sound signal, draws: 4 A}"],
  ],
  [{ edit: "add", kind: "way", name: "helm / horn", as: "{fuse: 5 A}" }, [], ["      horn: {fuse: 5 A}"]],
  [
    { edit: "add", kind: "charger", name: "sun", as: "{kind: solar, charges: house, output: 20 W}" },
    [],
    ["chargers: {sun: {kind: solar, charges: house, output: 20 W}}"],
  ],
];

describe("an edit touches its own lines and no other", () => {
  test.each(cases)("%j", (edit, gone, come) => {
    const after = edited(smallPlan, edit);
    const changed = changedLines(smallPlan, after);
    expect(changed).toEqual({ gone, come });
  });

  test("and keeps carriage returns", () => {
    const after = edited(smallPlan.replaceAll("\n", "\r\n"), {
      edit: "set run size",
      at: "pump line",
      to: "14 AWG",
    });
    expect(after.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
    expect(after).toContain("    length: 7 ft\r\n    size: 14 AWG\r\n");
  });

  test("on the docs' own example, changing one value there and back gives the very same file", () => {
    const text = docExample();
    const there = edited(text, { edit: "set field", at: "lamp trunk", field: "length", to: "10 ft" });
    expect(changedLines(text, there).come).toEqual(["    length: 10 ft"]);
    expect(edited(there, { edit: "set field", at: "lamp trunk", field: "length", to: "9 ft 4 in" })).toBe(
      text,
    );
  });
});

test("a rename follows the name everywhere", () => {
  const text = smallPlan
    .replace("  - [lamp, pump]", "  - [lamp 2, pump]")
    .replace("lamp leads: {from: fore box", "lamp leads: {from: fore box / lamps")
    .replace("{what: helm / lamps}", "{what: helm / lamps}\n      - {what: lamp 1}");
  let after = edited(text, { edit: "rename", at: "lamp", to: "floor lamp" });
  expect(after).toBe(
    text
      .replace("  lamp: {count", "  floor lamp: {count")
      .replace("to: lamp,", "to: floor lamp,")
      .replace("[lamp 2,", "[floor lamp 2,")
      .replace("{what: lamp 1}", "{what: floor lamp 1}"),
  );
  after = edited(text, { edit: "rename", at: "helm", to: "dash" });
  expect(after).toBe(
    text.replace("  helm:\n", "  dash:\n").replaceAll("helm / ", "dash / ").replace("to: helm", "to: dash"),
  );
  after = edited(text, { edit: "rename", at: "helm / lamps", to: "cabin" });
  expect(after).toBe(
    text
      .replace("      lamps: {", "      cabin: {")
      .replaceAll("helm / lamps", "helm / cabin")
      .replace("fore box / lamps", "fore box / cabin"),
  );
  expect(edited(text, { edit: "rename", at: "trunk", to: "main trunk" })).toBe(
    text.replace("  trunk: {", "  main trunk: {"),
  );
});

test("a line of the form is renamed in its readings, as an edge, and wherever something is counted off it", () => {
  const text = readFileSync("examples/second-season.yaml", "utf8");
  const after = edited(text, { edit: "rename", at: "lines / sheer", to: "gunwale" });
  const names = (of: string) => of.split("\n").filter((line) => /^(?!.*#).*\bsheer\b/.test(line));
  expect(names(text).length).toBeGreaterThan(15);
  expect(names(after)).toEqual([]);
  expect(after.replaceAll("gunwale", "sheer").replace(/#.*/g, "")).toBe(text.replace(/#.*/g, ""));
  expect(applyEdit(text, { edit: "rename", at: "lines / sheer", to: "keel" })).toMatchObject({
    ok: false,
    problem: { code: "name taken" },
  });
});

test("several edits are made one after the other, or none", () => {
  const done = applyEdits(smallPlan, [
    { edit: "add", kind: "gear", name: "horn", as: "{draws: 4 A}" },
    { edit: "add", kind: "run", name: "horn line", as: "{from: helm / lamps, to: horn, length: 3 ft}" },
    { edit: "rename", at: "horn", to: "foghorn" },
  ]);
  expect(done.ok && done.text).toContain("horn line: {from: helm / lamps, to: foghorn, length: 3 ft}");
  expect(
    applyEdits(smallPlan, [
      { edit: "remove", at: "dusk" },
      { edit: "remove", at: "dusk" },
    ]),
  ).toMatchObject({
    ok: false,
    problem: { code: "nothing so called" },
  });
  expect(applyEdits(smallPlan, [])).toMatchObject({ ok: true, text: smallPlan });
});

test.each<[Edit, object]>([
  [
    { edit: "set way fuse", at: "helm / lmps", to: "5 A" },
    { code: "nothing so called", nearest: "helm / lamps" },
  ],
  [{ edit: "set way fuse", at: "house", to: "5 A" }, { code: "wrong kind of thing" }],
  [{ edit: "set way fuse", at: "helm / lamps", to: "5 V" }, { code: "result unsound" }],
  [{ edit: "set way fuse", at: "helm / lamps", to: "{rating: 5 A" }, { code: "bad value" }],
  [{ edit: "set field", at: "lamp", field: "drawz", to: "5 W" }, { code: "result unsound" }],
  [{ edit: "set field", at: "lamp", field: "draws", to: "5 W\n  x: 1" }, { code: "bad value" }],
  [{ edit: "set field", at: "lamp", field: "count", to: Number.NaN }, { code: "bad value" }],
  [{ edit: "set field", at: "lamp", field: "draws", to: "1 W, count: 3" }, { code: "result unsound" }],
  [{ edit: "remove field", at: "lamp", field: "weight" }, { code: "no such field" }],
  [{ edit: "remove field", at: "lamp", field: "draws" }, { code: "result unsound" }],
  [{ edit: "remove", at: "house" }, { code: "result unsound" }],
  [{ edit: "remove", at: "plan" }, { code: "wrong kind of thing" }],
  [{ edit: "rename", at: "lamp", to: "pump" }, { code: "name taken" }],
  [{ edit: "rename", at: "lamp", to: "a / b" }, { code: "bad value" }],
  [{ edit: "add", kind: "gear", name: "lamp", as: "{draws: 1 W}" }, { code: "name taken" }],
  [
    { edit: "add", kind: "geer", name: "horn", as: "{draws: 1 W}" },
    { code: "unknown kind", nearest: "gear" },
  ],
  [{ edit: "add", kind: "way", name: "stern / x", as: "{}" }, { code: "nothing so called" }],
])("%j is refused, and nothing changes", (edit, problem) => {
  expect(applyEdit(smallPlan, edit)).toMatchObject({ ok: false, problem });
});

test("a plan that cannot be read cannot be edited", () => {
  expect(applyEdit("skiffloom: 9", { edit: "remove", at: "x" })).toMatchObject({
    ok: false,
    problem: { code: "plan unsound", problems: [{ code: "newer format" }] },
  });
});

const shared = smallPlan.replace(
  "  pump:\n    role",
  "  torch: {draws: 1 W, leads: &thin {size: 22 AWG, length: 8 in}}\n  glow: {draws: 1 W, leads: *thin}\n  pump:\n    role",
);
test("a value that stands in two places is left alone, with the reason", () => {
  for (const at of ["torch", "glow"])
    expect(applyEdit(shared, { edit: "set field", at, field: "leads / size", to: "20 AWG" })).toMatchObject({
      ok: false,
      problem: { code: "shared value" },
    });
  expect(edited(shared, { edit: "set field", at: "glow", field: "draws", to: "2 W" })).toContain(
    "glow: {draws: 2 W, leads: *thin}",
  );
});

test("odd ways of writing come through too", () => {
  const odd = `skiffloom: 1
name: odd
rules: us
panels:
  ? helm
  :
    ways: {lamps, "pump: aft": }
    main:
      device: breaker   # by the wheel
      rating: 20 A

      # spare note
    covered: true
gear: {"lamp #1": {draws: 1 W},}
`;
  expect(edited(odd, { edit: "set way fuse", at: "helm / lamps", to: "5 A" })).toContain(
    "ways: {lamps: {fuse: 5 A}, ",
  );
  expect(edited(odd, { edit: "set way fuse", at: "helm / pump: aft", to: "5 A" })).toContain(
    '"pump: aft": {fuse: 5 A} }',
  );
  expect(edited(odd, { edit: "set main fuse", at: "helm", to: "none" })).toContain("    main: none\n");
  expect(edited(odd, { edit: "set main fuse", at: "helm", to: "30 A" })).toBe(odd.replace("20 A", "30 A"));
  expect(edited(odd, { edit: "add", kind: "gear", name: "lamp", as: "{draws: 1 W}" })).toContain(
    '"lamp #1": {draws: 1 W}, lamp: {draws: 1 W},}',
  );
  expect(edited(odd, { edit: "remove", at: "lamp #1" })).toContain("gear: {");
  expect(edited(odd, { edit: "rename", at: "helm", to: "dash" })).toContain("? dash\n");
});

test("what is empty takes a value, and keeps the comment behind it", () => {
  const text = smallPlan.replace(
    "        switch: none\n",
    "        switch: none\n      spare:   # for later\n      last:\n",
  );
  const moved = text.replace("        fuse: {rating: 3 A, device: breaker}\n", "");
  expect(edited(moved, { edit: "set way fuse", at: "helm / spare", to: "5 A" })).toBe(
    moved.replace("spare:   # for later", "spare: {fuse: 5 A}   # for later"),
  );
  expect(edited(moved, { edit: "set way fuse", at: "helm / last", to: "5 A" })).toBe(
    moved.replace("      last:\n", "      last: {fuse: 5 A}\n"),
  );
});

test.each([{ name: "docs", text: docExample() }, { name: "small", text: smallPlan }, ...examplePlans()])(
  "on $name, the first and the last run may be given a size, and comments and all other lines stay",
  ({ text }) => {
    const read = readPlan(text);
    if (!read.ok) throw new Error("unsound");
    for (const { name } of [read.plan.runs[0], read.plan.runs.at(-1)].filter((run) => run !== undefined)) {
      const after = edited(text, { edit: "set run size", at: name, to: "4 AWG" });
      const { gone, come } = changedLines(text, after);
      expect(gone.length).toBeLessThanOrEqual(1);
      expect(come.length).toBeLessThanOrEqual(1);
    }
  },
);

test("an outing called as a piece of gear is: each is edited, renamed and removed by its own", () => {
  const named = smallPlan.replace("  dusk:\n", "  pump:\n");
  const start = edited(named, { edit: "set field", at: "outings / pump", field: "lasts", to: "5 h" });
  expect(changedLines(named, start)).toEqual({ gone: ["    lasts: 3 h"], come: ["    lasts: 5 h"] });
  const renamed = edited(named, { edit: "rename", at: "outings / pump", to: "lamp" });
  expect(changedLines(named, renamed)).toEqual({ gone: ["  pump:"], come: ["  lamp:"] });
  const gone = edited(named, { edit: "remove", at: "outings / pump" });
  expect(gone).toContain("  pump:\n    role: bilge pump");
  expect(gone).not.toContain("lasts: 3 h");
  const gear = edited(named, { edit: "set field", at: "pump", field: "draws", to: "3 A at 12 V" });
  expect(changedLines(named, gear).come).toEqual(["    draws: 3 A at 12 V   # on the label"]);
  const added = edited(smallPlan, { edit: "add", kind: "outing", name: "lamp", as: "{lasts: 1 h}" });
  expect(added).toContain("  lamp: {lasts: 1 h}");
});
