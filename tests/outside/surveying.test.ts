import { spawnSync } from "node:child_process";
import { describe, expect, test } from "vitest";
import { flatFace } from "../../src/core/hull/faces/face.js";
import type { Spot } from "../../src/core/hull/faces/patch.js";
import { adjust } from "../../src/core/hull/marks/adjust.js";
import { edgeReferences } from "../../src/core/hull/marks/along-square.js";
import { checkBandM } from "../../src/core/hull/marks/band.js";
import { crossingCovariance, crossingDeg, ellipseOf, type Ray } from "../../src/core/hull/marks/ellipse.js";
import { type Mark, markFor, type Wanted } from "../../src/core/hull/marks/mark.js";
import type { Network } from "../../src/core/hull/marks/network.js";
import { type ReferencePoint, readingSigmaM, type Tape } from "../../src/core/hull/marks/tape.js";
import { settingOut } from "../../src/core/reference/setting-out.js";

/**
 * Where two tapes alone put a mark that was looked for some way off, by the least squares that judge readings on the boat: nothing else
 * binds it, and what it is measured from stands still.
 */
function spotByTwoTapes(from: readonly [Spot, Spot], readM: readonly [number, number], near: Spot): Spot {
  const size = Math.max(...readM);
  const face = flatFace(
    [0, 0, 0],
    [1, 0, 0],
    [0, 0, 1],
    [near, [near[0] + size, near[1]], [near[0], near[1] + size]],
  );
  const references = from.map(
    (spot, i): ReferencePoint => ({ name: `r${i}`, at: [spot[0], 0, spot[1]], spot, sigmaM: 0 }),
  );
  const network: Network = {
    face,
    marks: [{ name: "m", spot: near }],
    references,
    lies: "straight",
    sigmaM: 1,
  };
  const { offsets } = adjust(
    network,
    readM.map((read, i) => ({ mark: "m", from: `r${i}`, readM: read })),
    { markM: () => 1e5 * size, referenceM: () => 1e-9 * size, readingM: () => 1e-6 * size },
  );
  const [along = Number.NaN, up = Number.NaN] = offsets.get("m") ?? [];
  return [near[0] + along, near[1] + up];
}

describe("two distances from two points", () => {
  const [south, north]: [Spot, Spot] = [
    [10000, 10000],
    [13462.56, 11373.62],
  ];
  // looked for a tenth of the distance off. Published positions have as many digits as the tolerance
  test.each([
    // solved algebra exercise on a public tutoring site (published; its page misprints −99/53 as −1.97)
    [
      "algebra exercise, one side",
      [
        [-3, -6],
        [-1, 1],
      ],
      [17, 10],
      [5, 9],
      1e-6,
    ],
    [
      "algebra exercise, the other",
      [
        [-3, -6],
        [-1, 1],
      ],
      [17, 10],
      [-99 / 53, 581 / 53],
      1e-6,
    ],
    // surveying assignment (question published, answer computed)
    ["control survey, P", [south, north], [3051.63, 1980.27], [13001.2586, 9447.8292], 1e-3],
    ["control survey, its mirror", [south, north], [3051.63, 1980.27], [11806.5286, 12459.4512], 1e-3],
    // open-access coordinate-geometry chapter: the two lengths computed from its azimuths, fed back (published data, answer computed)
    [
      "coordinate geometry",
      [
        [614.8, 2255.9],
        [791.53, 2517.03],
      ],
      [195.4924, 280.6293],
      [524.9018, 2429.496],
      2e-3,
    ],
    [
      "right triangle (computed)",
      [
        [0, 0],
        [6, 0],
      ],
      [5, 5],
      [3, 4],
      1e-6,
    ],
  ] as const)("%s", (_name, from, readM, [x, y], toleranceM) => {
    const found = spotByTwoTapes(from, readM, [x + 0.06 * readM[0], y - 0.08 * readM[0]]);
    expect(Math.hypot(found[0] - x, found[1] - y)).toBeLessThan(toleranceM);
  });
});

const rayTo = (from: Spot, to: Spot, sigmaM: number): Ray => {
  const d = Math.hypot(to[0] - from[0], to[1] - from[1]);
  return { along: (to[0] - from[0]) / d, up: (to[1] - from[1]) / d, sigmaM };
};

describe("error ellipse N = Σ u·uᵀ/σ² (computed checks of the reference table)", () => {
  test.each([
    {
      p: [3, 4],
      a: [0, 0],
      b: [6, 0],
      angle: 73.7398,
      sx: 0.005893,
      sy: 0.004419,
      major: 0.005893,
      minor: 0.004419,
      point: 0.007366,
    },
    {
      p: [5, 1],
      a: [0, 0],
      b: [10, 0],
      angle: 157.3801,
      sx: 0.003606,
      sy: 0.018028,
      major: 0.018028,
      minor: 0.003606,
      point: 0.018385,
    },
  ] as const)("P at $p", ({ p, a, b, angle, sx, sy, major, minor, point }) => {
    const rays = [rayTo(a, p, 0.005), rayTo(b, p, 0.005)] as const;
    const q = crossingCovariance(rays);
    if (!q) throw new Error("no crossing");
    const ellipse = ellipseOf(q);
    expect(crossingDeg(...rays)).toBeCloseTo(angle, 3);
    expect(Math.sqrt(q.aa)).toBeCloseTo(sx, 6);
    expect(Math.sqrt(q.uu)).toBeCloseTo(sy, 6);
    expect(ellipse.majorM).toBeCloseTo(major, 6);
    expect(ellipse.minorM).toBeCloseTo(minor, 6);
    expect(ellipse.pointErrorM).toBeCloseTo(point, 6);
    // equal spreads: σ/(√2·sin(g/2)) and σ/(√2·cos(g/2)), the long one the larger
    const half = (angle * Math.PI) / 360;
    const axes = [0.005 / (Math.SQRT2 * Math.sin(half)), 0.005 / (Math.SQRT2 * Math.cos(half))];
    expect(ellipse.majorM).toBeCloseTo(Math.max(...axes), 6);
    expect(ellipse.minorM).toBeCloseTo(Math.min(...axes), 6);
  });
  test("half of all marks: a circle of σ·√(2·ln 2) when both spreads are equal, 0.6745 σ when one is nothing", () => {
    expect(ellipseOf({ aa: 1, au: 0, uu: 1 }).halfRadiusM).toBeCloseTo(Math.sqrt(2 * Math.log(2)), 4);
    expect(ellipseOf({ aa: 1, au: 0, uu: 1e-8 }).halfRadiusM).toBeCloseTo(0.6745, 3);
  });
});

describe("a mark on a board, held against plain geometry", () => {
  const board = flatFace(
    [0, 0, 0],
    [1, 0, 0],
    [0, 0, 1],
    [
      [0, 0],
      [9, 0],
      [9, 9],
      [0, 9],
    ],
  );
  const tape: Tape = { sigmaM: 0.001, graduationM: 1e-6, longestM: 20, lies: "straight", side: "outside" };
  const spots: Record<string, Spot> = { a: [0, 0], b: [6, 0], c: [7, 7] };
  const references = Object.entries(spots).map(
    ([name, spot]): ReferencePoint => ({ name, at: [spot[0], 0, spot[1]], spot, sigmaM: 0 }),
  );
  const markAt = (spot: Spot, wanted: Wanted): Mark =>
    markFor(
      board,
      { name: "m", spot },
      { references, onEdges: edgeReferences(board, references), tape, wanted },
    );
  const distanceM = (from: string, to: Spot) =>
    Math.hypot(to[0] - (spots[from]?.[0] ?? Number.NaN), to[1] - (spots[from]?.[1] ?? Number.NaN));

  // second method: one reading of the pair is spoilt, the mark found where the two circles cross then, and the third tape laid to it
  test.each([[[3, 4]], [[1.5, 5]], [[5, 2]]] as const)(
    "at %j the check brings out what it says it does, and its band is three spreads of what the three tapes do to it",
    (spot) => {
      const mark = markAt(spot, "two tapes");
      const [first = "", second = ""] = mark.readings.map(({ from }) => from);
      const check = mark.check?.from ?? "";
      const from: [Spot, Spot] = [spots[first] ?? [0, 0], spots[second] ?? [0, 0]];
      const spoilt = [0, 1].map((which) => {
        const errorM = 1e-4;
        const readM = [distanceM(first, spot), distanceM(second, spot)] as [number, number];
        readM[which] = (readM[which] ?? 0) + errorM;
        return (
          (distanceM(check, spotByTwoTapes(from, readM, [spot[0] + 0.1, spot[1] - 0.1])) -
            distanceM(check, spot)) /
          errorM
        );
      });
      const spreadM = 0.001 * Math.hypot(1, ...spoilt);
      // the slopes are those of a tenth of a millimetre: to a thousandth
      expect(Math.abs((checkBandM(mark) ?? 0) / (3 * spreadM) - 1)).toBeLessThan(1e-3);
      const leastSeen = Math.min(...spoilt.map(Math.abs));
      expect(leastSeen).toBeLessThan(0.99 * Math.max(...spoilt.map(Math.abs)));
      expect(Math.abs((mark.check?.findsM ?? 0) / ((3 * spreadM) / leastSeen) - 1)).toBeLessThan(1e-3);
    },
  );

  test("a square off an edge strays sideways by its own tilt as well as by the tape (computed)", () => {
    const upM = 0.8;
    const { method, covariance } = markAt([2, upM], "along then square");
    expect(method).toBe("along then square");
    const tapeM = readingSigmaM(tape, 0);
    const strayM = Math.hypot(tapeM, upM * Math.tan((settingOut.square.sigmaDeg * Math.PI) / 180));
    expect(strayM).toBeGreaterThan(5 * tapeM);
    expect(Math.sqrt(covariance?.aa ?? 0) / strayM).toBeCloseTo(1, 3);
    expect(Math.sqrt(covariance?.uu ?? 0) / tapeM).toBeCloseTo(1, 6);
    expect(covariance?.au).toBeCloseTo(0, 12);
  });
});

/** Reading of each mark from each reference, over a generated flat face. A seeded sequence, so that a failure repeats. */
function generated(seed: number) {
  let state = seed;
  const next = () => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return state / 2147483648;
  };
  const face = flatFace(
    [0, 0, 0],
    [1, 0, 0],
    [0, 0, 1],
    [
      [-9, -9],
      [9, -9],
      [9, 9],
      [-9, 9],
    ],
  );
  const references = Array.from({ length: 4 }, (_, i): ReferencePoint => {
    const spot: Spot = [
      i % 2 === 0 ? -1 + next() * 0.4 : 1.5 + next() * 0.4,
      i < 2 ? next() * 0.2 : 1 + next() * 0.2,
    ];
    return { name: `r${i}`, at: [spot[0], 0, spot[1]], spot, sigmaM: 0 };
  });
  const marks = Array.from({ length: 3 }, (_, i) => ({
    name: `m${i}`,
    spot: [i * 0.4 + next() * 0.1, 0.4 + next() * 0.3] as const,
  }));
  const measured = marks.flatMap((mark) =>
    references.map((reference) => {
      const [x, y] = reference.spot ?? [0, 0];
      return {
        mark: mark.name,
        from: reference.name,
        readM: Math.hypot(mark.spot[0] + 0.004 - x, mark.spot[1] - 0.003 - y) + (next() - 0.5) * 0.004,
      };
    }),
  );
  const network: Network = { face, marks, references, lies: "straight", sigmaM: 0.001 };
  return { network, measured };
}

const witness = `
import json, sys
try:
    import numpy as np
    from scipy.optimize import least_squares
except ImportError:
    sys.exit("scipy is not installed (Debian: python3-scipy)")
out = []
for case in json.load(sys.stdin):
    marks, refs, read, spread = case["marks"], case["refs"], case["read"], case["spread"]
    def residuals(p):
        off = p.reshape(-1, 2)
        place = np.vstack([marks, refs]) + off
        r = [(np.hypot(*(place[m] - place[len(marks) + f])) - d) / spread["read"] for m, f, d in read]
        return np.array(r + list((off[:len(marks)] / spread["mark"]).ravel()) + list((off[len(marks):] / spread["ref"]).ravel()))
    fit = least_squares(residuals, np.zeros(2 * (len(marks) + len(refs))), method="lm", xtol=1e-15, ftol=1e-15, gtol=1e-15)
    out.append({"x": fit.x.tolist(), "cost": 2 * fit.cost, "cov": np.linalg.inv(fit.jac.T @ fit.jac).diagonal().tolist()})
print(json.dumps(out))
`;

describe("least squares against scipy's (witness)", () => {
  test("places, misfit and spreads agree on 20 generated networks", () => {
    const cases = Array.from({ length: 20 }, (_, i) => generated(i + 1));
    const spread = { read: 0.001, mark: 0.05, ref: 0.002 };
    const asked = cases.map(({ network, measured }) => ({
      marks: network.marks.map(({ spot }) => spot),
      refs: network.references.map(({ spot }) => spot),
      read: measured.map((one) => [Number(one.mark.slice(1)), Number(one.from.slice(1)), one.readM]),
      spread,
    }));
    const ran = spawnSync("python3", ["-c", witness], { input: JSON.stringify(asked), encoding: "utf8" });
    if (ran.status !== 0) throw new Error(`the witness did not run: ${ran.error?.message ?? ran.stderr}`);
    const answers: { x: number[]; cost: number; cov: number[] }[] = JSON.parse(ran.stdout);
    for (const [i, { network, measured }] of cases.entries()) {
      const ours = adjust(network, measured, {
        markM: () => spread.mark,
        referenceM: () => spread.ref,
        readingM: () => spread.read,
      });
      const theirs = answers[i];
      if (!theirs) throw new Error("no answer");
      const offsets = [...ours.offsets.values()].flat();
      // both iterate until steps vanish; 1 µm is a thousandth of a graduation
      for (const [k, x] of theirs.x.entries())
        expect(Math.abs((offsets[k] ?? Number.NaN) - x)).toBeLessThan(1e-6);
      expect(Math.abs(ours.misfit / theirs.cost - 1)).toBeLessThan(1e-6);
      for (const [k, variance] of theirs.cov.entries())
        expect((ours.covariance[k]?.[k] ?? 0) / variance).toBeCloseTo(1, 3);
    }
  });
});
