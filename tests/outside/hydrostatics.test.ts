import { describe, expect, test } from "vitest";
import { floats, loadOf, type Weight } from "../../src/core/hull/float/equilibrium.js";
import { drowningTable, holeAfloat } from "../../src/core/hull/float/holes-afloat.js";
import { immersedUnder } from "../../src/core/hull/float/immersed.js";
import { simpsonWeight } from "../../src/core/hull/float/simpson.js";
import { restOf, rightingCurve } from "../../src/core/hull/float/stability.js";
import { cutHull } from "../../src/core/hull/float/stations.js";
import { heightOver } from "../../src/core/hull/float/waterplane.js";
import { formFrom, type LinePoints } from "../../src/core/hull/form/form.js";
import type { Point } from "../../src/core/hull/vector.js";

// the old examples are in feet and long tons: 35 cubic feet of salt water a ton; the code only needs units that fit together
const seaTonsPerFt3 = 1 / 35;

function box(lengthM: number, beamM: number, depthM: number): LinePoints[] {
  const ends = [0, lengthM];
  const line = (name: string, y: number, z: number): LinePoints => ({
    name,
    knuckle: true,
    above: "flat",
    points: ends.map((x): Point => [x, y, z]),
  });
  return [line("keel", 0, 0), line("chine", beamM / 2, 0), line("sheer", beamM / 2, depthM)];
}
function boxHull(l: number, b: number, d: number) {
  const { form, problems } = formFrom(box(l, b, d));
  expect(problems).toEqual([]);
  if (!form) throw new Error("no form");
  return cutHull(form, false);
}
const at = (x: number, y: number, z: number, massKg: number, name = "weight"): Weight => ({
  name,
  massKg,
  at: [x, y, z],
});
function resting(hull: ReturnType<typeof cutHull>, weights: Weight[], density?: number) {
  const rest = restOf(hull, weights, density);
  if ("problem" in rest) throw new Error(rest.problem);
  return rest;
}

describe("Simpson's rule", () => {
  const simpson = (ordinates: readonly number[], spacing: number) =>
    spacing * ordinates.reduce((sum, y, i) => sum + simpsonWeight(ordinates.length, i) * y, 0);
  // marine engineer examination question (question read, answer computed): 650.6667 m²
  test("waterplane of 80 m with seven half-ordinates", () =>
    expect(2 * simpson([0.2, 4.0, 5.0, 5.2, 5.0, 4.0, 0.2], 80 / 6)).toBeCloseTo(650.6667, 3));
  // naval-architecture teaching text (published): h/3·(1, 4, 2, …); a sum of products of 92.3 at h = 20 m gives 1230.666 m². Its ordinates
  // were not read, so the multipliers are taken one by one.
  test("multipliers", () => {
    expect(simpson([1, 0, 0, 0, 0, 0, 0], 3)).toBeCloseTo(1, 12);
    expect(simpson([0, 1, 0], 3)).toBeCloseTo(4, 12);
    expect(simpson([0, 0, 1, 0, 0], 3)).toBeCloseTo(2, 12);
    // all of the 92.3 in one middle ordinate of weight 4; both sides of the boat
    expect(2 * simpson([0, 92.3 / 4, 0], 20)).toBeCloseTo(1230.666, 2);
  });
  test.each([5, 7, 9])("exact for a cubic on %i ordinates", (n) => {
    const h = 2 / (n - 1);
    const sum = simpson(
      Array.from({ length: n }, (_, i) => (i * h) ** 3 - i * h),
      h,
    );
    expect(sum).toBeCloseTo(4 - 2, 12);
  });
});

describe("Wigley's form (closed form; computed, midpoint integration agrees to 1e-5)", () => {
  const [L, B, T] = [10, 2, 0.5];
  const half = (x: number, z: number) => (B / 2) * (1 - ((2 * x) / L - 1) ** 2) * (1 - ((T - z) / T) ** 2);
  // upright topsides above the waterline, so that the waterplane is cut and not just touched
  const heights = [...Array.from({ length: 13 }, (_, j) => (T * j) / 12), 1.2 * T];
  const lines = heights.map((z, j): LinePoints => {
    const points = Array.from(
      { length: 21 },
      (_, i): Point => [(L * i) / 20, half((L * i) / 20, Math.min(z, T)), z],
    );
    return { name: `waterline ${j}`, knuckle: j === 0 || j >= 12, above: j < 12 ? "round" : "flat", points };
  });
  const { form } = formFrom(lines);
  if (!form) throw new Error("no form");
  const under = immersedUnder(cutHull(form, true), { up: [0, 0, 1], levelM: T });
  const share = (figure: number, exact: number) => Math.abs(figure / exact - 1);
  // 0.1 %, as asked
  test("volume 4.444444 m³", () => expect(share(under.volumeM3, 4.444444)).toBeLessThan(1e-3));
  test("waterplane 13.333333 m²", () => expect(share(under.planeAreaM2, 13.333333)).toBeLessThan(1e-3));
  test("centre of buoyancy 0.3125 m up", () => expect(share(under.centre[2], 0.3125)).toBeLessThan(1e-3));
  test("BM 0.685714 m", () =>
    expect(share(under.planeAcrossM4 / under.volumeM3, 0.685714)).toBeLessThan(1e-3));
  test("longitudinal second moment 66.666667 m⁴", () =>
    expect(share(under.planeAlongM4, 66.666667)).toBeLessThan(1e-3));
});

describe("box barge 4 m × 1.5 m, 600 kg, KG 0.5 m (closed form; computed)", () => {
  const hull = boxHull(4, 1.5, 0.8);
  const rest = resting(hull, [at(2, 0, 0.5, 600)]);
  test("draft 0.097561 m, freeboard the rest of the depth", () => {
    expect(rest.draftM).toBeCloseTo(0.097561, 6);
    expect(rest.freeboardM).toBeCloseTo(0.8 - 0.097561, 6);
  });
  test("GM 1.470655 m, BM along L²/12d", () => {
    expect(rest.gmM).toBeCloseTo(1.470655, 5);
    expect(rest.gmAlongM).toBeCloseTo(0.04878 + 16 / (12 * 0.097561) - 0.5, 3);
  });
  test("80 kg moved 0.5 m lists it 2.5920° (wall-sided)", () => {
    const shifted = resting(hull, [at(2, 0, 0.5, 520), at(2, -0.5, 0.5, 80)]);
    expect(shifted.floating.heelDeg).toBeCloseTo(2.592, 3);
  });
  test("levers follow the wall-sided formula up to where the bottom comes out", () => {
    const load = loadOf([at(2, 0, 0.2, 2400)]);
    const heavy = resting(hull, [at(2, 0, 0.2, 2400)]);
    const bm = 1.5 ** 2 / (12 * heavy.draftM);
    for (const { heelDeg, leverM } of rightingCurve(hull, load, [5, 10, 20])) {
      const a = (heelDeg * Math.PI) / 180;
      expect(leverM).toBeCloseTo(Math.sin(a) * (heavy.gmM + 0.5 * bm * Math.tan(a) ** 2), 4);
    }
  });
  test("port and starboard are alike", () => {
    const load = loadOf([at(2, 0, 0.5, 600)]);
    const [a, b] = rightingCurve(hull, load, [-25, 25]);
    expect(a?.leverM).toBeCloseTo(-(b?.leverM ?? 0), 9);
  });
});

describe("worked examples of seamanship books", () => {
  // Nicholls's Seamanship, p. 527 (published): box, beam 36 ft, draught 18 ft: KB 9, BM 6, KM 15 ft
  test("Nicholls p. 527: KM of a box", () => {
    const hull = boxHull(100, 36, 30);
    const rest = resting(hull, [at(50, 0, 10, 100 * 36 * 18 * seaTonsPerFt3)], seaTonsPerFt3);
    expect(rest.draftM).toBeCloseTo(18, 4);
    expect(rest.gmM + 10).toBeCloseTo(15, 4);
  });
  // p. 686 paper 8 q. 7 (question published, answer computed): 180 × 20 × 10 ft, draught 7 ft, GM 0, 40 tons from deck to bottom
  test("Nicholls p. 686: GM after shifting 40 tons down 10 ft, 0.5556 ft", () => {
    const hull = boxHull(180, 20, 10);
    const kg = 3.5 + 400 / 84;
    const rest = resting(hull, [at(90, 0, kg, 720)], seaTonsPerFt3);
    expect(rest.gmM).toBeCloseTo(0, 4);
    const after = resting(hull, [at(90, 0, (720 * kg - 40 * 10) / 720, 720)], seaTonsPerFt3);
    expect(after.gmM).toBeCloseTo(0.5556, 3);
  });
  // p. 686 (question published, answer computed): sinkage of a box by one inch takes L·B/(12·35) = 17.5 tons for 210 × 35 ft
  test("Nicholls p. 686: tons per inch", () => {
    const hull = boxHull(210, 35, 20);
    const tons = 210 * 35 * 10 * seaTonsPerFt3;
    const before = resting(hull, [at(105, 0, 5, tons)], seaTonsPerFt3);
    const after = resting(hull, [at(105, 0, 5, tons + 17.5)], seaTonsPerFt3);
    expect((after.draftM - before.draftM) * 12).toBeCloseTo(1, 4);
  });
  // marine engineer question (answer computed): 12 250 t, KM 8 m, KB 3.8 m, KG 8 m, 2 t moved 12 m: 5.5808°, wall-sided
  test("list when GM is nothing", () => {
    // a box with that displacement, KB and KM: draught 7.6 m, B²/(12·7.6) = 4.2 m
    const beam = Math.sqrt(4.2 * 12 * 7.6);
    const hull = boxHull(12250 / (beam * 7.6), beam, 15);
    const middle = 12250 / (beam * 7.6) / 2;
    const rest = floats(hull, loadOf([at(middle, 0, 8, 12248), at(middle, -12, 8, 2)]), {}, 1);
    if ("problem" in rest) throw new Error(rest.problem);
    expect(rest.heelDeg).toBeCloseTo(5.5808, 2);
  });
});

describe("a hull of circular sections: its metacentre stays at the centre, so GZ = GM·sin(heel) at every heel", () => {
  const round = (radius: number, length: number) => {
    const count = 60;
    const lines = Array.from({ length: count + 1 }, (_, i): LinePoints => {
      // from the keel up the port side, short of the top so that the sheers stay apart
      const a = (i / count) * 0.98 * Math.PI;
      const [y, z] = [i === 0 ? 0 : radius * Math.sin(a), radius * (1 - Math.cos(a))];
      return {
        name: `line ${i}`,
        knuckle: true,
        above: "flat",
        points: [0, length].map((x): Point => [x, y, z]),
      };
    });
    const { form } = formFrom(lines);
    if (!form) throw new Error("no form");
    return cutHull(form, false, 5);
  };
  // Nicholls's Seamanship, p. 527 (published): KM 16 ft, KG 13.8 ft, 6000 tons, heel 8°: GZ 0.306 ft, moment 1836 ft tons
  test("Nicholls p. 527: lever at 8°", () => {
    const length = (6000 * 35) / (Math.PI * 16 * 16 * 0.4);
    const load = loadOf([at(length / 2, 0, 13.8, 6000)]);
    const lever = rightingCurve(round(16, length), load, [8], seaTonsPerFt3)[0]?.leverM ?? 0;
    expect(lever).toBeCloseTo(0.306, 3);
    expect(lever * 6000).toBeGreaterThan(1833);
    expect(lever * 6000).toBeLessThan(1839);
  });
  // Ship Stability for Masters and Mates, exercise 14.4 (published): 1500 t, KG 2.7 m, KM 3.1 m, 10 t moved 10 m: list 9° 27'
  test("Masters and Mates 14.4: list of 9° 27'", () => {
    const length = 1500 / (1.025 * Math.PI * 3.1 * 3.1 * 0.4);
    const rest = floats(
      round(3.1, length),
      loadOf([at(length / 2, 0, 2.7, 1500), at(length / 2, 0, 0, 0)]),
      {},
      1.025,
    );
    if ("problem" in rest) throw new Error(rest.problem);
    expect(rest.heelDeg).toBeCloseTo(0, 6);
    const listed = floats(
      round(3.1, length),
      { massKg: 1500, centre: [length / 2, -100 / 1500, 2.7] },
      {},
      1.025,
    );
    if ("problem" in listed) throw new Error(listed.problem);
    // the polygon of 120 sides stands for the circle
    expect(Math.abs(listed.heelDeg - (9 + 27 / 60))).toBeLessThan(0.05);
  });
});

test("trim of a box by a shifted weight: tan(t) = w·d/(disp·GM along), wall-sided (closed form; computed)", () => {
  const hull = boxHull(4, 1.5, 0.8);
  const rest = resting(hull, [at(2, 0, 0.3, 580), at(2.6, 0, 0.3, 20)]);
  const t = (rest.floating.trimDeg * Math.PI) / 180;
  const bm = 16 / (12 * 0.097561);
  const gm = 0.04878 + bm - 0.3;
  // moments about the middle: disp·(GM + BM·tan²/2)·tan = w·d, exact while no corner leaves the water
  expect(600 * (gm + 0.5 * bm * Math.tan(t) ** 2) * Math.tan(t)).toBeCloseTo(20 * 0.6, 3);
  expect(rest.draftForeM).toBeGreaterThan(rest.draftAftM);
});

test("moving the battery aft lifts the bow and sinks the stern", () => {
  const hull = boxHull(4, 1.5, 0.8);
  const with60 = (x: number) => resting(hull, [at(2, 0, 0.3, 400), at(x, 0, 0.2, 60, "battery")]);
  const [forward, aft] = [with60(2.5), with60(1)];
  expect(aft.draftAftM).toBeGreaterThan(forward.draftAftM);
  expect(aft.draftForeM).toBeLessThan(forward.draftForeM);
});

test("a box too high for its beam lolls to where the wall-sided lever is nothing again: tan² = −2·GM/BM (computed)", () => {
  const hull = boxHull(4, 1.5, 1.2);
  const kg = 0.685;
  const draft = 2400 / (1025 * 6);
  const bm = 1.5 ** 2 / (12 * draft);
  const rest = resting(hull, [at(2, 0, kg, 2400)]);
  const gm = draft / 2 + bm - kg;
  expect(gm).toBeLessThan(0);
  expect(rest.problems[0]).toMatchObject({ problem: "unstable upright" });
  expect(Math.tan((rest.floating.heelDeg * Math.PI) / 180) ** 2).toBeCloseTo((-2 * gm) / bm, 3);
});

test("what weighs more than the whole hull can displace sinks, with both figures", () => {
  const rest = restOf(boxHull(4, 1.5, 0.8), [at(2, 0, 0.3, 6000)]);
  expect(rest).toMatchObject({ problem: "sinks", figure: 6000 });
});

// a box barge that heels about its middle keeps its displacement while neither bilge nor deck edge is reached (closed form): the lower
// edge of the deck comes to (D − T)·cos θ − (B/2)·sin θ over the water
test.each([-10, 0, 10, 12])("freeboard of a box barge heeled %d°", (heelDeg) => {
  const [length, beam, depth, massKg] = [4, 1.5, 0.6, 1200];
  const load = loadOf([at(length / 2, 0, 0.2, massKg)]);
  const [point] = rightingCurve(boxHull(length, beam, depth), load, [heelDeg]);
  const angle = (Math.abs(heelDeg) * Math.PI) / 180;
  const draftM = massKg / (1025 * length * beam);
  const expectedM = (depth - draftM) * Math.cos(angle) - (beam / 2) * Math.sin(angle);
  expect(point?.freeboardM).toBeCloseTo(expectedM, 5);
});

describe("holes afloat", () => {
  const hull = boxHull(4, 1.5, 0.6);
  const weights = [at(2, 0, 0.2, 1200)];
  const rest = resting(hull, weights);
  const heels = Array.from({ length: 25 }, (_, i) => 5 * (i - 12));
  const curve = rightingCurve(hull, loadOf(weights), heels);
  const table = drowningTable(hull, rest.floating, curve);
  const side = holeAfloat(table, "lamp", [2, 0.75, 0.4]);
  test("height over water", () => expect(side.heightM).toBeCloseTo(0.4 - 1200 / (1025 * 6), 6));
  test("a hole in the side of a box goes under at atan(2h/B), port down", () =>
    expect(side.heelUnderDeg).toBeCloseTo((-Math.atan(side.heightM / 0.75) * 180) / Math.PI, 1));
  test("a hole near the bow goes under by trim at atan(2h/L)", () => {
    const bow = holeAfloat(table, "socket", [4, 0, 0.4]);
    expect(bow.trimUnderDeg).toBeCloseTo((Math.atan(bow.heightM / 2) * 180) / Math.PI, 1);
  });
  test("the keel is under already", () => expect(heightOver(rest.floating.plane, [2, 0, 0])).toBeLessThan(0));
});
