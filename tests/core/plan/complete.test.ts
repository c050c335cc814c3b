import { describe, expect, test } from "vitest";
import { completePlan } from "../../../src/core/plan/complete.js";
import type { CompletePlan } from "../../../src/core/plan/completed.js";
import { readPlan } from "../../../src/core/plan/read.js";

function complete(sections: string): CompletePlan {
  const read = readPlan(`skiffloom: 1\nname: trial\nrules: us\n${sections}`);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return completePlan(read.plan);
}

const supply = `
batteries: {house: {chemistry: agm, capacity: 50 Ah, main: {device: bolted fuse, rating: 30 A}}}
panels: {helm: {ways: {lamps: {}, pump: {always live: true}}}}`;

describe("rows", () => {
  const plan = complete(`${supply}
boxes: {fore box: {}}
gear: {lamp: {count: 3, role: lighting, draws: 1 W, surroundings: wet}}
runs:
  feed: {from: house, to: helm, length: 1 m}
  trunk: {from: helm / lamps, to: fore box, length: 2 m, joint: {start: crimped fork}}
  chain: {from: fore box, to: lamp, reaches: chain, lengths: [1 m, 2 m, 3 m], joint: {start: solder sleeve, end: sealed butt}}`);

  test("a count becomes single pieces of one group", () => {
    expect(plan.gear.map(({ name }) => name)).toEqual(["lamp 1", "lamp 2", "lamp 3"]);
    expect(new Set(plan.gear.map(({ group }) => group))).toEqual(new Set(["lamp"]));
  });

  test("a chain goes from one piece to the next, each with its own length", () => {
    const chain = plan.runs.filter(({ group }) => group === "chain");
    expect(chain.map(({ from, to, lengthM }) => [from.place, to.place, lengthM])).toEqual([
      ["fore box", "lamp 1", 1],
      ["lamp 1", "lamp 2", 2],
      ["lamp 2", "lamp 3", 3],
    ]);
  });

  test("the start joint of a chain is that of its first cable only", () => {
    const chain = plan.runs.filter(({ group }) => group === "chain");
    expect(chain.map(({ jointAtStart }) => jointAtStart)).toEqual([
      "solder sleeve",
      "sealed butt",
      "sealed butt",
    ]);
  });

  test("every cable carries the way it hangs on", () => {
    expect(plan.runs.map(({ name, carries }) => [name, carries])).toEqual([
      ["feed", ["house / feed"]],
      ["trunk", ["helm / lamps"]],
      ["chain 1", ["helm / lamps"]],
      ["chain 2", ["helm / lamps"]],
      ["chain 3", ["helm / lamps"]],
    ]);
  });

  test("an assumption is noted once for the whole row", () => {
    const notes = plan.assumptions.filter(({ at, field }) => at === "lamp" && field === "joint");
    expect(notes).toHaveLength(1);
  });
});

describe("circuits", () => {
  test("runs may be written from the gear to the panel", () => {
    const plan = complete(`${supply}
gear: {pump: {draws: 2 A}}
runs: {feed: {from: helm, to: house, length: 1 m}, lead: {from: pump, to: helm / pump, length: 2 m}}`);
    expect(plan.circuitOf.get("pump")).toBe("helm / pump");
    expect(plan.looseEnds).toEqual([]);
  });

  test("one cable carries several ways to a box, and each goes on by its name", () => {
    const plan = complete(`${supply}
boxes: {fore box: {}}
gear: {lamp: {draws: 1 W}, pump: {draws: 2 A}}
runs:
  feed: {from: house, to: helm, length: 1 m}
  trunk: {from: helm, to: fore box, carries: [lamps, pump], return: shared, length: 3 m}
  lamp lead: {from: fore box / lamps, to: lamp, length: 1 m}
  pump lead: {from: fore box / pump, to: pump, length: 1 m}`);
    expect(plan.circuitOf.get("lamp")).toBe("helm / lamps");
    expect(plan.circuitOf.get("pump")).toBe("helm / pump");
    expect(plan.boxes[0]?.returns).toBe("joined");
  });

  test("behind a converter the circuit has the converter's voltage and the battery at its root", () => {
    const plan = complete(`
batteries: {drive: {chemistry: lifepo4, voltage: 24 V, capacity: 100 Ah}}
converters: {buck: {output: 12.5 V, most output: 20 A}}
panels: {helm: {ways: {sounder: {}}}}
gear: {sounder: {role: electronics, draws: 9 W}}
runs:
  in: {from: drive, to: buck / in, length: 1 m}
  out: {from: buck / out, to: helm, length: 1 m}
  lead: {from: helm / sounder, to: sounder, length: 2 m}`);
    expect(plan.circuits.get("helm / sounder")).toEqual({
      id: "helm / sounder",
      supply: "buck",
      battery: "drive",
      nominalV: 12,
    });
  });
});

describe("loose ends", () => {
  test.each([
    [
      "gear not fed",
      "lamp",
      "gear: {lamp: {draws: 1 W}}\nruns: {feed: {from: house, to: helm, length: 1 m}}",
    ],
    ["panel not fed", "helm", ""],
    ["box not fed", "box", "boxes: {box: {}}\nruns: {feed: {from: house, to: helm, length: 1 m}}"],
    [
      "run carries nothing",
      "lead",
      "gear: {a: {draws: 1 W}, b: {draws: 1 W}}\nruns: {lead: {from: a, to: b, length: 1 m}}",
    ],
    [
      "way unclear",
      "lead",
      "boxes: {box: {}}\ngear: {lamp: {draws: 1 W}}\nruns:\n  feed: {from: house, to: helm, length: 1 m}\n  trunk: {from: helm, to: box, carries: [lamps, pump], length: 1 m}\n  lead: {from: box, to: lamp, length: 1 m}",
    ],
    [
      "converter loop",
      "a",
      "converters: {a: {output: 12 V, most output: 5 A}, b: {output: 12 V, most output: 5 A}}\nruns: {ab: {from: a / out, to: b / in, length: 1 m}, ba: {from: b / out, to: a / in, length: 1 m}}",
    ],
  ] as const)("%s", (kind, at, sections) => {
    const plan = complete(`${supply}\n${sections}`);
    expect(plan.looseEnds.some((end) => end.kind === kind && end.at === at)).toBe(true);
  });
});

describe("the voltage marked on a battery", () => {
  const nominalV = (chemistry: string, marked: string) =>
    complete(`batteries: {house: {chemistry: ${chemistry}, capacity: 50 Ah, voltage: ${marked}}}`)
      .batteries[0]?.nominalV;

  // common practice, no source: LiFePO4 is marked by its cells, 3.2 V each, four to a 12 V block
  test.each([
    ["12 V", 12],
    ["12.8 V", 12],
    ["13.2 V", 12],
    ["24 V", 24],
    ["25.6 V", 24],
    ["36 V", 36],
    ["38.4 V", 36],
    ["48 V", 48],
    ["51.2 V", 48],
  ])("of LiFePO4, %s, stands for blocks of four cells", (marked, wanted) => {
    expect(nominalV("lifepo4", marked)).toBeCloseTo(wanted, 12);
  });

  test("of lead is taken as it is", () => {
    expect(nominalV("agm", "6 V")).toBe(6);
    expect(nominalV("flooded", "12 V")).toBe(12);
  });
});
