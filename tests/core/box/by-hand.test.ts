// Entries whose place the owner has chosen: a law each, no source outside.
import { describe, expect, test } from "vitest";
import { workOutWhole } from "../../../src/core/layout-figures.js";
import { applyEdit, applyEdits } from "../../../src/core/plan/edits/apply.js";
import type { Edit } from "../../../src/core/plan/edits/edit.js";
import { readPlan } from "../../../src/core/plan/read.js";

const plan = (box: string) => `skiffloom: 1
name: Two boxes, invented
rules: iso
batteries:
  house: {chemistry: agm, capacity: 30 Ah, main: {device: bolted fuse, rating: 30 A, from source: 120 mm}}
panels:
  helm: {ways: {lamps: {switch: {rating: 10 A}}}}
boxes:
  fore box: ${box}
box catalogue:
  small: {inside: [80 mm, 60 mm, 45 mm], boss: 8 mm, lid lip: 4 mm, price: 9 EUR}
  middling: {inside: [120 mm, 90 mm, 60 mm], boss: 10 mm, lid lip: 5 mm, price: 14 EUR}
  large: {inside: [190 mm, 140 mm, 80 mm], boss: 12 mm, lid lip: 5 mm, price: 23 EUR}
gear:
  lamp: {count: 3, role: lighting, draws: 1 W}
runs:
  feed: {from: house, to: helm, length: 1 m}
  trunk: {from: helm / lamps, to: fore box, length: 2 m}
  leads: {from: fore box, to: lamp, length: 1 m}
`;

function boxOf(text: string) {
  const read = readPlan(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { layout, figures } = workOutWhole(read.plan);
  const [box] = layout.boxes;
  if (!box?.layout) throw new Error("no layout");
  return { box, laid: box.layout, layout, figures };
}

const own = plan("{joins: bus, inside: [140 mm, 100 mm, 60 mm], boss: 8 mm, lid lip: 4 mm}");
/** What writing a length may round away [mm]. */
const hundredth = (mm: number) => Math.round(mm * 100) / 100;
const where = ({ laid }: ReturnType<typeof boxOf>) =>
  laid.entries.map(({ id, on, x, y }) => ({ id, on, x: hundredth(x), y: hundredth(y) }));
const put = (id: string, at: string): Edit => ({
  edit: "set field",
  at: "fore box",
  field: `entries / ${id}`,
  to: at,
});
function withEdits(text: string, ...edits: Edit[]): string {
  const edited = applyEdits(text, edits);
  if (!edited.ok) throw new Error(JSON.stringify(edited.problem));
  return edited.text;
}

describe("an entry placed by hand", () => {
  test("lies where it was put, no other moves, and it is still to be drilled", () => {
    const before = boxOf(own);
    const [first] = where(before);
    if (!first) throw new Error("no entry");
    const moved = boxOf(
      withEdits(own, put(first.id, `{on: ${first.on}, at: [${first.x + 2} mm, ${first.y} mm]}`)),
    );
    expect(where(moved)).toEqual(
      where(before).map((entry) => (entry.id === first.id ? { ...entry, x: entry.x + 2 } : entry)),
    );
    expect(moved.box).toMatchObject({ from: "own", byHand: true });
    expect(moved.box.drilling.length).toBeGreaterThan(0);
    const hole = moved.box.templates.flatMap(({ holes }) => holes).find(({ id }) => id === first.id);
    // a template is of the outside: the wall, 3 mm where none is told, stands before the inner corner
    expect(hole?.x).toBeCloseTo(first.x + 2 + 3, 6);
  });
  test("put onto its neighbour, it is found", () => {
    const [first, second] = where(boxOf(own));
    if (!first || !second) throw new Error("two entries are needed");
    const { laid, figures } = boxOf(
      withEdits(own, put(first.id, `{on: ${second.on}, at: [${second.x + 3} mm, ${second.y} mm]}`)),
    );
    expect(laid.faults.map(({ at }) => at)).toContain(first.id);
    expect(figures.findings.filter(({ at }) => at === "fore box").length).toBeGreaterThan(0);
  });
  test("follows its run to another name", () => {
    const text = withEdits(own, put("trunk", "{on: down, at: [70 mm, 25 mm]}"));
    const renamed = applyEdit(text, { edit: "rename", at: "trunk", to: "bow trunk" });
    if (!renamed.ok) throw new Error(JSON.stringify(renamed.problem));
    expect(where(boxOf(renamed.text))).toContainEqual({ id: "bow trunk", on: "down", x: 70, y: 25 });
  });
});

describe("a box of the catalogue", () => {
  test("that is named is that one, and it is the one to buy, until another name is given", () => {
    const cheapest = boxOf(plan("{joins: bus}"));
    const named = boxOf(plan("{joins: bus, catalogue box: large}"));
    expect(cheapest.box.bought?.name).not.toBe("large");
    expect(named.box).toMatchObject({ from: "catalogue", bought: { name: "large" }, body: { widthMm: 190 } });
    const bought = named.layout.parts.list.lines.filter(({ kind }) => kind === "box");
    expect(bought).toMatchObject([{ item: "large", needed: 1 }]);
  });
  test("keeps its places when it gets another name; a name of none is refused", () => {
    const text = plan(
      "{joins: bus, catalogue box: middling, entries: {trunk: {on: down, at: [50 mm, 25 mm]}}}",
    );
    const renamed = applyEdit(text, { edit: "rename", at: "middling", to: "grey box" });
    if (!renamed.ok) throw new Error(JSON.stringify(renamed.problem));
    expect(boxOf(renamed.text).box.bought?.name).toBe("grey box");
    expect(where(boxOf(renamed.text))).toContainEqual({ id: "trunk", on: "down", x: 50, y: 25 });
    expect(readPlan(plan("{joins: bus, catalogue box: midling}"))).toMatchObject({
      ok: false,
      problems: [{ code: "not one of", found: "midling", nearest: "middling" }],
    });
  });
});

test("in a box that is drilled already a cable takes the hole of its own name", () => {
  const laid = boxOf(own).laid.entries;
  const box = (called: (id: string) => string) => {
    const holes = laid.map(
      ({ id, on, x, y, holeMm }) => `${called(id)}: {on: ${on}, at: [${x} mm, ${y} mm], hole: ${holeMm} mm}`,
    );
    return boxOf(own.replace("inside:", `holes: {${holes.join(", ")}}, inside:`)).laid.entries;
  };
  const xOf = (id: string, of: readonly { id: string; x: number }[]) =>
    of.find((entry) => entry.id === id)?.x ?? Number.NaN;
  const swapped = box((id) => (id === "leads 1" ? "leads 3" : id === "leads 3" ? "leads 1" : id));
  expect(xOf("leads 1", laid)).not.toBeCloseTo(xOf("leads 3", laid), 1);
  expect(
    xOf(
      "leads 1",
      box((id) => id),
    ),
  ).toBeCloseTo(xOf("leads 1", laid), 2);
  expect(xOf("leads 1", swapped)).toBeCloseTo(xOf("leads 3", laid), 2);
});
