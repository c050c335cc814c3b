import { describe, expect, it } from "vitest";
import { applyEdits } from "../../../src/core/plan/edits/apply.js";
import type { Edit } from "../../../src/core/plan/edits/edit.js";

const lamps = (count: number) =>
  Array.from({ length: count }, (_, index) => `  lamp ${index}a: {draws: 1 W} # no ${index}\n`).join("");
const plan = (count: number, more = "") =>
  `skiffloom: 1\nname: many\nrules: iso\nbatteries:\n  house: {chemistry: agm, capacity: 100 Ah}\ngear:\n${lamps(count)}${more}`;

const settings = (count: number): Edit[] =>
  Array.from({ length: count }, (_, index) => ({
    edit: "set field",
    at: `lamp ${index}a`,
    field: "draws",
    to: `${index + 2} W`,
  }));

function textOf(text: string, edits: readonly Edit[]): string {
  const done = applyEdits(text, edits);
  if (!done.ok) throw new Error(JSON.stringify(done.problem));
  return done.text;
}

describe("many edits in one go", () => {
  it("gives what one after the other gives, comments and all", () => {
    const edits: Edit[] = [
      ...settings(12),
      { edit: "add", kind: "gear", name: "horn", as: "{draws: 4 A}" },
      { edit: "add", kind: "gear", name: "fan", as: "{draws: 1 A}" },
      { edit: "set field", at: "horn", field: "role", to: "sound signal" },
      { edit: "remove", at: "lamp 3a" },
      { edit: "remove", at: "lamp 4a" },
      { edit: "rename", at: "lamp 5a", to: "old lamp" },
      { edit: "set field", at: "old lamp", field: "draws", to: "9 W" },
    ];
    let one = plan(12);
    for (const edit of edits) one = textOf(one, [edit]);
    expect(textOf(plan(12), edits)).toBe(one);
    expect(one).toContain("lamp 11a: {draws: 13 W} # no 11");
    expect(one.indexOf("horn")).toBeLessThan(one.indexOf("fan"));
  });

  it("names the one edit of many that is wrong, and changes nothing", () => {
    const edits = settings(200);
    const wrong: Edit = { edit: "set field", at: "lamp 150a", field: "draws", to: "a lot" };
    edits[150] = wrong;
    const done = applyEdits(plan(200), edits);
    expect(done.ok ? undefined : done.problem.edit).toEqual(wrong);
    expect(done.ok ? undefined : done.problem.code).toBe("result unsound");
  });

  it("takes all that is in a section away", () => {
    const edits = Array.from({ length: 40 }, (_, index): Edit => ({ edit: "remove", at: `lamp ${index}a` }));
    expect(textOf(plan(40), edits)).toMatch(/gear: \{\}/);
  });

  // 2,000 readings would take minutes: past the runner's own limit
  it("sets 2,000 values in a plan of 2,000 pieces of gear", () => {
    const text = textOf(plan(2000), settings(2000));
    expect(text).toContain("lamp 1999a: {draws: 2001 W}");
  });
});

describe("items of lists", () => {
  const stock = `stock:
  wire:
    # the good spool
    - {size: 1.5 mm2, cores: 2, length: 14 m}
    - {size: 2.5 mm2, cores: 2, length: 6 m} # bow locker
    - size: 4 mm2
      length: 2 m
  parts: {M12 gland: 4}
`;
  const take = (index: number): Edit => ({ edit: "remove field", at: "stock", field: `wire / ${index}` });

  it("go with their line; the others keep theirs", () => {
    expect(textOf(plan(1, stock), [take(2)])).toBe(
      plan(1, stock).replace("    - {size: 2.5 mm2, cores: 2, length: 6 m} # bow locker\n", ""),
    );
    expect(textOf(plan(1, stock), [take(3)])).toBe(
      plan(1, stock).replace("    - size: 4 mm2\n      length: 2 m\n", ""),
    );
  });

  it("count anew after each one that goes", () => {
    const left = textOf(plan(1, stock), [take(1), take(1)]);
    expect(left).toContain("size: 4 mm2");
    expect(left).not.toContain("14 m");
    expect(left).not.toContain("6 m");
    expect(textOf(plan(1, stock), [take(1), take(1), take(1)])).toContain("wire: []");
  });

  it("go from lists written in one line", () => {
    const text = plan(1, "stock: {wire: [{size: 1.5 mm2, length: 1 m}, {size: 4 mm2, length: 2 m}]}\n");
    expect(textOf(text, [take(1)])).toContain("wire: [{size: 4 mm2, length: 2 m}]");
    expect(textOf(text, [take(2)])).toContain("wire: [{size: 1.5 mm2, length: 1 m}]");
  });

  it("that are not there are told", () => {
    const done = applyEdits(plan(1, stock), [take(9)]);
    expect(done.ok ? undefined : done.problem.code).toBe("no such field");
  });
});
