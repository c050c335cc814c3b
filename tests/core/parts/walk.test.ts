import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { workOutWhole } from "../../../src/core/layout-figures.js";
import { jointName, terminalName } from "../../../src/core/parts/item-names.js";
import type { LayoutFigures } from "../../../src/core/parts/layout-types.js";
import type { Plan } from "../../../src/core/plan/model/plan.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { layoutPlan } from "../findings/layout-boat.js";

/** One change of the plan, followed through everything that is cut, drilled and bought. */
interface Worked {
  readonly plan: Plan;
  readonly layout: LayoutFigures;
}

function worked(text: string): Worked {
  const read = readPlan(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems[0]));
  return { plan: read.plan, layout: workOutWhole(read.plan).layout };
}

const sum = (counts: readonly number[]): number => counts.reduce((total, count) => total + count, 0);
const neededOf = ({ parts }: LayoutFigures, kind: string, ends = ""): number =>
  sum(
    parts.list.lines.flatMap((line) => (line.kind === kind && line.item.endsWith(ends) ? [line.needed] : [])),
  );

/** What each table says, counted on its own. */
function counts({ layout }: Worked) {
  const { boxes, cuts, terminations } = layout;
  return {
    glands: neededOf(layout, "gland", "gland"),
    holes: sum(boxes.map((box) => sum(box.templates.map(({ holes }) => holes.length)))),
    pieces: sum(cuts.kinds.map(({ pieces }) => pieces.length)),
    cut: sum(cuts.kinds.map(({ plan }) => sum((plan?.lengths ?? []).map((length) => length.cuts.length)))),
    flags: cuts.labels.length,
    flagsToBuy: neededOf(layout, "label"),
    terminals: neededOf(layout, "terminal"),
    joints: neededOf(layout, "joint"),
    ends: terminations.ends.length,
  };
}

/** The tables agree with each other, whatever the plan. */
function agree({ plan, layout }: Worked): void {
  const { boxes, cables, cuts, parts, terminations } = layout;
  const laid = boxes.filter((box) => box.layout !== undefined);
  expect(neededOf(layout, "gland", "gland")).toBe(sum(laid.map((box) => box.cables.length)));
  for (const box of laid) {
    const drilled = box.templates.flatMap(({ holes }) => holes.map(({ id }) => id));
    if (box.from !== "drilled")
      expect(drilled.toSorted()).toEqual((box.layout?.entries ?? []).map(({ id }) => id).toSorted());
    for (const { id } of box.cables) expect(box.layout?.entries.map((entry) => entry.id)).toContain(id);
  }
  const pieces = cables.flatMap((cable) => cable.pieces.map(({ id }) => id));
  expect(cuts.kinds.flatMap((kind) => kind.pieces.map(({ piece }) => piece)).toSorted()).toEqual(
    pieces.toSorted(),
  );
  const cut = cuts.kinds.flatMap(({ plan: list }) => (list?.lengths ?? []).flatMap((length) => length.cuts));
  expect(cut.map(({ piece }) => piece).toSorted()).toEqual(pieces.toSorted());
  expect(cuts.labels.length).toBe(2 * pieces.length);
  expect(neededOf(layout, "label")).toBe(cuts.labels.length);
  const alone = terminations.ends.filter((end) => end.joint === undefined && terminalName(end) !== undefined);
  expect(neededOf(layout, "terminal")).toBe(alone.length);
  const joined = terminations.joints.filter(
    (joint) =>
      jointName(
        joint,
        terminations.ends.filter((end) => end.joint === joint.id && end.kind === joint.kind),
      ) !== undefined,
  );
  expect(neededOf(layout, "joint")).toBe(joined.length);
  const onHand = new Map(plan.stockParts.map(({ item, count }) => [item, count]));
  const sizes = new Map(plan.partOffers.map(({ item, pack, count }) => [`${item}\n${pack}`, count]));
  for (const { item, needed, spares, fromStock, toBuy, packs, leftOver } of parts.list.lines) {
    const have = onHand.get(item) ?? 0;
    expect(toBuy, item).toBe(Math.max(0, needed + spares - have));
    expect(fromStock, item).toBe(Math.min(have, needed + spares));
    if (packs.length === 0) continue;
    const bought = sum(packs.map(({ pack, times }) => times * (sizes.get(`${item}\n${pack}`) ?? 1)));
    expect(bought, item).toBeGreaterThanOrEqual(toBuy);
    expect(leftOver, item).toBe(have + bought - needed - spares);
  }
}

const shelf = `stock: {parts: {M16 gland: 1, wire flag: 3}}
prices:
  currency: EUR
  wire: [{size: 16 AWG, cores: 2, per metre: 1.95}]
  parts:
    - {item: M16 gland, count: 1, price: 1.90}
    - {item: "sealed butt, blue", pack: bag of 5, count: 5, price: 4.10}
`;

describe("one lamp less, of two with a cable each", () => {
  const before = worked(layoutPlan({ more: shelf }));
  const after = worked(layoutPlan({ more: shelf }).replace("lamp: {count: 2,", "lamp: {"));
  test("before and after, the tables agree", () => {
    agree(before);
    agree(after);
  });
  test("one gland, one hole, one piece, two flags and two joints less; the trunk and its joints stay", () => {
    const [a, b] = [counts(before), counts(after)];
    expect(a.glands - b.glands).toBe(1);
    expect(a.holes - b.holes).toBe(1);
    expect(a.pieces - b.pieces).toBe(1);
    expect(a.cut - b.cut).toBe(1);
    expect(a.flags - b.flags).toBe(2);
    expect(a.flagsToBuy - b.flagsToBuy).toBe(2);
    expect(a.ends - b.ends).toBe(4);
    // Gear without leads of its own: the run's end is its joint, out and return.
    expect(a.joints - b.joints).toBe(2);
    expect(a.terminals).toBe(b.terminals);
  });
  test("the packs and the price follow", () => {
    const glands = ({ layout }: Worked) => layout.parts.list.lines.find(({ item }) => item === "M16 gland");
    expect([glands(before)?.toBuy, glands(after)?.toBuy]).toEqual([2, 1]);
    expect((before.layout.parts.total?.minor ?? 0) - (after.layout.parts.total?.minor ?? 0)).toBeGreaterThan(
      190,
    );
  });
});

describe("an offcut on the shelf", () => {
  const trunkMm = worked(layoutPlan({ more: shelf }))
    .layout.cuts.kinds.flatMap(({ pieces }) => pieces)
    .find(({ piece }) => piece.startsWith("trunk"))?.lengthMm;
  const cutFrom = (lengthMm: number) => {
    const wire = `stock: {wire: [{size: 16 AWG, cores: 2, length: ${lengthMm} mm}], `;
    const { layout } = worked(layoutPlan({ more: shelf.replace("stock: {", wire) }));
    return layout.cuts.kinds
      .flatMap(({ plan }) => plan?.lengths ?? [])
      .filter(({ source }) => source === "offcut")
      .flatMap(({ cuts }) => cuts.map(({ piece }) => piece));
  };
  test("as long as the trunk does not hold it; two inches more do", () => {
    if (trunkMm === undefined) throw new Error("the trunk has a piece");
    expect(cutFrom(trunkMm).filter((piece) => piece.startsWith("trunk"))).toEqual([]);
    expect(cutFrom(trunkMm + 51).filter((piece) => piece.startsWith("trunk"))).toHaveLength(1);
  });
});

describe("a second power socket on the utility boat", () => {
  const text = readFileSync(new URL("../../../examples/utility.yaml", import.meta.url), "utf8");
  const socket =
    "  second socket: {role: socket, draws: 2 A at 12 V, behaves as: current, works: 10 V to 16 V, largest fuse: 15 A, joint: crimped butt, surroundings: splash}\n";
  const cable =
    "  second socket cable: {from: helm / power, to: second socket, length: 5 ft, joint: {start: crimped ring, end: crimped butt}, surroundings: splash, colours: {out: red, return: black}, protected from chafe: true}\n";
  const more = text.replace("\ngear:\n", `\ngear:\n${socket}`).replace("\nruns:\n", `\nruns:\n${cable}`);
  const [before, after] = [worked(text), worked(more)];
  test("before and after, the tables agree", () => {
    agree(before);
    agree(after);
  });
  test("one gland, one hole, one piece, two flags, two rings and two butts more, and the socket itself", () => {
    const [a, b] = [counts(before), counts(after)];
    expect(b.glands - a.glands).toBe(1);
    expect(b.holes - a.holes).toBe(1);
    expect(b.pieces - a.pieces).toBe(1);
    expect(b.cut - a.cut).toBe(1);
    expect(b.flags - a.flags).toBe(2);
    expect(b.flagsToBuy - a.flagsToBuy).toBe(2);
    expect(b.terminals - a.terminals).toBe(2);
    expect(b.joints - a.joints).toBe(2);
    expect(b.ends - a.ends).toBe(4);
    const gear = ({ layout }: Worked) => layout.parts.list.lines.filter(({ kind }) => kind === "gear").length;
    expect(gear(after) - gear(before)).toBe(1);
  });
  test("the box it goes into has another template; the other box is untouched", () => {
    const templates = ({ layout }: Worked, name: string) =>
      layout.boxes.find(({ box }) => box === name)?.templates;
    expect(templates(after, "helm")).not.toEqual(templates(before, "helm"));
    expect(templates(after, "fore box")).toEqual(templates(before, "fore box"));
  });
});

describe("the examples", () => {
  test.each(["tender", "utility", "launch"])("%s: the tables agree, and every cut list is proven", (name) => {
    const text = readFileSync(new URL(`../../../examples/${name}.yaml`, import.meta.url), "utf8");
    const one = worked(text);
    agree(one);
    expect(one.layout.cuts.kinds.map(({ plan }) => plan?.proof)).toEqual(
      one.layout.cuts.kinds.map(() => "proven"),
    );
  });
  test("what is missing after the shopping is nothing: every line is bought, on the shelf, or named as not priced", () => {
    const text = readFileSync(new URL("../../../examples/utility.yaml", import.meta.url), "utf8");
    const { layout } = worked(text);
    const { list, withoutPrice } = layout.parts;
    for (const { item, toBuy, packs } of list.lines)
      if (toBuy > 0 && packs.length === 0) expect(withoutPrice).toContain(item);
    expect(withoutPrice).toEqual(["deck panel", "sounder"]);
  });
});
