import { describe, expect, test } from "vitest";
import { chooseBox } from "../../../src/core/box/choose-box.js";
import { packContents } from "../../../src/core/box/contents.js";
import { drillOrder } from "../../../src/core/box/drill-order.js";
import type { BoxBody } from "../../../src/core/box/face.js";
import { type BoxRequest, layOutBox } from "../../../src/core/box/layout.js";
import { faceTemplates } from "../../../src/core/box/template.js";

const body = (widthMm: number, heightMm: number, depthMm: number): BoxBody => ({
  widthMm,
  heightMm,
  depthMm,
  wallMm: 3,
  material: "abs",
  mounted: "wall",
});
const lamps = (count: number): BoxRequest => ({
  cables: Array.from({ length: count }, (_, k) => ({
    id: `lamp lead ${k + 1}`,
    diameterMm: 5.2,
    conductorMm: 2,
  })),
  otherEntries: [],
  contents: [{ id: "tee block", widthMm: 40, heightMm: 20, tallMm: 25 }],
  spareEntries: 1,
  glands: { series: "metric" },
});

describe("one box", () => {
  test("glands, holes, contents and spare entries, template and order of drilling agree", () => {
    const box = body(170, 120, 75);
    const answer = layOutBox(box, lamps(4));
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    const { layout } = answer;
    expect(layout.entries).toHaveLength(5);
    expect(layout.faults).toEqual([]);
    const [template] = faceTemplates("fore box", box, layout.faces, layout.entries);
    expect(template).toMatchObject({ face: "down", widthMm: 176, heightMm: 78, barMm: 100 });
    template?.holes.forEach((hole) => {
      const entry = layout.entries.find((one) => one.id === hole.id);
      expect(hole.x - (entry?.x ?? 0)).toBeCloseTo(3, 9);
      expect(hole.holeMm).toBe(12.5);
    });
    const order = drillOrder(box, layout.entries);
    expect(order.map((step) => step.tool)).toEqual(["punch", "twist drill", "step drill", "deburring tool"]);
    expect(order.every((step) => step.entries.length === 5)).toBe(true);
    expect(order[2]).toMatchObject({ diameterMm: 12.5, support: ["lid on", "block behind wall"] });
  });
  test("one lamp less is one gland, one hole and one mark less", () => {
    const five = layOutBox(body(170, 120, 75), lamps(5));
    const four = layOutBox(body(170, 120, 75), lamps(4));
    if (!five.ok || !four.ok) throw new Error("both fit");
    expect(five.layout.glands.length - four.layout.glands.length).toBe(1);
    expect(five.layout.entries.length - four.layout.entries.length).toBe(1);
  });
  test("room behind the glands is taken off the base", () => {
    const answer = layOutBox(body(170, 120, 75), lamps(2));
    // thread 8 − wall 3, bend 4 × 2, conductor 2
    expect(answer).toMatchObject({ ok: true, layout: { floor: { y0: 15, y1: 120, x0: 0 } } });
  });
  test("the upward face is used last, and said", () => {
    const answer = layOutBox(body(80, 60, 40), lamps(12));
    expect(answer).toMatchObject({ ok: true });
    if (answer.ok)
      expect(new Set(answer.layout.faults.map((one) => one.fault))).toEqual(new Set(["upward-face"]));
  });
  test("too tall for the lid", () => {
    const request = { ...lamps(1), contents: [{ id: "breaker", widthMm: 20, heightMm: 20, tallMm: 70 }] };
    expect(layOutBox(body(170, 120, 75), request)).toMatchObject({
      ok: false,
      problems: [{ problem: "too-tall", content: "breaker", limitMm: 65 }],
    });
  });
  test("a cable no gland takes", () => {
    const request = { ...lamps(1), cables: [{ id: "main", diameterMm: 40, conductorMm: 15 }] };
    expect(layOutBox(body(170, 120, 75), request)).toMatchObject({
      ok: false,
      problems: [{ problem: "no-gland-fits", cable: "main" }],
    });
  });
});

describe("the owner's own box", () => {
  const holes = [
    { id: "h1", on: "down" as const, x: 40, y: 35, holeMm: 12.5 },
    { id: "h2", on: "down" as const, x: 90, y: 35, holeMm: 12.8 },
    { id: "h3", on: "down" as const, x: 150, y: 35, holeMm: 20.5 },
  ];
  test("is taken as it is", () => {
    const answer = layOutBox(body(170, 120, 75), { ...lamps(2), holes });
    expect(answer).toMatchObject({ ok: true, layout: { faults: [], entries: [{ x: 40 }, { x: 90 }] } });
  });
  test("and its faults are told, open holes too", () => {
    const close = [holes[0], { id: "x", on: "down" as const, x: 55, y: 35, holeMm: 16 }].filter(
      (one) => one !== undefined,
    );
    const answer = layOutBox(body(170, 120, 75), { ...lamps(1), holes: close });
    expect(answer).toMatchObject({
      ok: true,
      layout: { faults: [{ fault: "thin-web" }, { fault: "nuts-touch" }] },
    });
  });
  test("one hole too few", () => {
    expect(layOutBox(body(170, 120, 75), { ...lamps(3), holes })).toMatchObject({
      ok: false,
      problems: [{ problem: "no-hole-for-cable", holeMm: 12.5, holesMm: [20.5] }],
    });
  });
});

describe("choosing from a catalogue (invented)", () => {
  const catalogue = [
    { id: "small", body: body(80, 60, 40), priceMinor: 900 },
    { id: "middle", body: body(120, 90, 50), priceMinor: 1600 },
    { id: "large", body: body(200, 150, 75), priceMinor: 1400 },
    { id: "huge", body: body(300, 200, 100) },
  ];
  test("the smallest, the cheapest, and why the next smaller fails", () => {
    const choice = chooseBox(catalogue, lamps(17));
    expect(choice.smallest?.id).toBe("middle");
    expect(choice.cheapest?.id).toBe("large");
    expect(choice.nextSmaller).toMatchObject({
      id: "small",
      problems: [{ problem: "too-many-entries", proof: "not found" }],
    });
    expect(choice.withoutPrice).toEqual(["huge"]);
  });
  test("none does", () => {
    const choice = chooseBox(catalogue, {
      ...lamps(1),
      contents: [{ id: "amplifier", widthMm: 400, heightMm: 300, tallMm: 50 }],
    });
    expect(choice.smallest).toBeUndefined();
    expect(choice.refused.map((one) => one.id)).toEqual(["small", "middle", "large", "huge"]);
    expect(choice.nextSmaller?.id).toBe("huge");
  });
});

describe("contents", () => {
  const floor = { x0: 0, y0: 0, x1: 100, y1: 60, depthMm: 50, keepOuts: [] };
  const piece = (id: string, widthMm: number, heightMm: number) => ({
    id,
    widthMm,
    heightMm,
    tallMm: 20,
    workingMm: 0,
  });
  test("a base filled to the last millimetre", () => {
    const answer = packContents(floor, [piece("a", 60, 60), piece("b", 40, 30), piece("c", 30, 40)]);
    expect(answer).toMatchObject({ ok: true });
    // pinwheel of four around a hole: no straight cut parts it
    const wheel = packContents({ ...floor, x1: 50, y1: 50 }, [
      piece("a", 30, 20),
      piece("b", 30, 20),
      piece("c", 30, 20),
      piece("d", 30, 20),
      piece("e", 10, 10),
    ]);
    expect(wheel.ok).toBe(true);
  });
  test("a hair too much is proven not to go", () => {
    expect(
      packContents({ ...floor, x1: 99.9 }, [piece("a", 60, 60), piece("b", 40, 30), piece("c", 30, 40)]),
    ).toMatchObject({ ok: false, proof: "proven" });
  });
  test("working room lies between contents, half of it at the edge", () => {
    const two = [piece("a", 45, 50), piece("b", 45, 50)].map((one) => ({ ...one, workingMm: 5 }));
    expect(packContents(floor, two).ok).toBe(true);
    expect(packContents({ ...floor, x1: 99.9 }, two).ok).toBe(false);
  });
  test("nothing lies on a corner post", () => {
    const posts = [{ x: 0, y: 0, widthMm: 10, heightMm: 10 }];
    const answer = packContents({ ...floor, keepOuts: posts }, [piece("a", 90, 60)]);
    expect(answer).toMatchObject({ ok: true, placed: [{ x: 10 }] });
  });
});
