/** What is proposed where a meter put to two points tells no more: a wire taken off, a look at a fuse, the load that draws most. */
import { describe, expect, test } from "vitest";
import type { Change } from "../../../src/core/proving/change.js";
import { diagnose } from "../../../src/core/proving/diagnose.js";
import { findFaults } from "../../../src/core/proving/faults.js";
import { nextReadings } from "../../../src/core/proving/next-reading.js";
import { heaviestOn, possibleReadings } from "../../../src/core/proving/possible-probes.js";
import type { Probe } from "../../../src/core/proving/probe.js";
import { type Reading, ReadingModel } from "../../../src/core/proving/reading-model.js";
import { polePairs } from "../../../src/core/proving/shadows.js";
import { spreadOf } from "../../../src/core/proving/spread.js";
import { nextWords, probeWords } from "../../../src/words/proving.js";
import { example, taken } from "./boats.js";

const { figures, circuit, bench } = example("utility");
const { plan } = figures;
const { pairs, shadows } = polePairs(bench);
const lamps = plan.gear.filter(({ group }) => group === "coaming lamp").map(({ name }) => name);

/** What a boat with this change in it shows, to the last digit. */
function shown(change: Change, probes: readonly Probe[]): Reading[] {
  const blank = probes.map((probe): Reading => ({ probe, value: 1 }));
  const model = new ReadingModel(bench, spreadOf(bench), blank, shadows);
  const { shown: onScale } = model.shown(change);
  return probes.map((probe, i) => {
    const value = onScale[i] ?? 0;
    return {
      probe,
      value: probe.kind === "ohm" ? Math.expm1(value) : probe.kind === "marking" ? Math.exp(value) : value,
    };
  });
}

const volts = (at: string, against: string, on = lamps): Probe => ({ kind: "voltage", at, against, on });
const ohms = (at: string, against: string, lifted?: readonly string[]): Probe => ({
  kind: "ohm",
  at,
  against,
  on: lamps,
  ...(lifted ? { lifted } : {}),
});

/** Everything on the lamps shorted at the far end of a cable, the fuse blown. */
function short(out: string): Change {
  const pair = pairs.find((one) => one.out === bench.branchOf.get(out));
  if (!pair) throw new Error(`no pair ${out}`);
  return {
    ohm: new Map([
      [pair.across, 0.02],
      [pair.guard, 1e10],
    ]),
  };
}

describe("a short", () => {
  const change = short("lamp chain 3 / helm / lamps / out");
  const asFound = shown(change, [
    volts("house +", "house -"),
    volts("coaming lamp 3 +", "coaming lamp 3 -"),
    ohms("helm / lamps +", "helm -"),
  ]);

  test("is told to the way without taking anything off, and a wire to take off is proposed", () => {
    const report = findFaults(bench, asFound);
    expect(report.suspects[0]?.kind).toBe("short");
    expect(report.notApart.length).toBeGreaterThan(3);
    const lifted = nextReadings(bench, report).filter(({ probe }) => probe.kind === "ohm" && probe.lifted);
    expect(lifted.length).toBeGreaterThan(3);
    expect(lifted[0] && nextWords(lifted[0])).toContain("cut its sealed butt");
    expect(lifted[0] && probeWords(lifted[0].probe)).toContain("taken off towards the supply");
  });

  test("a wire taken off before it leaves no short, one taken off behind it leaves it", () => {
    const off = (wire: string, at: string, against: string) =>
      shown(change, [ohms(at, against, [wire])])[0]?.value ?? 0;
    const before = off(
      "lamp chain 3 / helm / lamps / out",
      "coaming lamp 2 at joint +",
      "coaming lamp 2 at joint -",
    );
    const behind = off(
      "lamp chain 4 / helm / lamps / out",
      "coaming lamp 3 at joint +",
      "coaming lamp 3 at joint -",
    );
    expect(before).toBeGreaterThan(100);
    expect(behind).toBeLessThan(1);
  });

  test("following what is proposed, one cable stands alone, and a joint is only cut open when nothing else tells", () => {
    let readings = asFound;
    const opened: boolean[] = [];
    for (let round = 0; round < 8; round++) {
      const report = findFaults(bench, readings);
      if ((report.suspects[0]?.probability ?? 0) > 0.99) break;
      const [next] = nextReadings(bench, report);
      if (!next) break;
      opened.push(nextWords(next).includes("cut its"));
      readings = [...readings, ...shown(change, [next.probe])];
    }
    const report = findFaults(bench, readings);
    expect(report.suspects[0]).toMatchObject({ kind: "short", at: ["lamp chain 3 / helm / lamps / out"] });
    expect(report.suspects[0]?.probability).toBeGreaterThan(0.99);
    expect(opened.lastIndexOf(false)).toBeLessThan(
      opened.includes(true) ? opened.indexOf(true) : opened.length,
    );
  });

  test("no wire is taken off where no short is suspected", () => {
    const dim = shown({ extraOhm: new Map([[bench.branchOf.get("lamp trunk / return") ?? -1, 1.5]]) }, [
      volts("house +", "house -"),
      volts("coaming lamp 3 +", "coaming lamp 3 -"),
    ]);
    const lifted = possibleReadings(bench, findFaults(bench, dim)).filter(
      ({ probe }) => probe.kind === "ohm" && probe.lifted,
    );
    expect(lifted).toEqual([]);
  });
});

describe("a fuse of another rating", () => {
  const fuse = "helm / lamps / fuse";
  const well = shown({}, [volts("house +", "house -"), volts("coaming lamp 3 +", "coaming lamp 3 -")]);

  test("a look at it is proposed while the meter finds nothing", () => {
    const looks = nextReadings(bench, findFaults(bench, well)).filter(
      ({ probe }) => probe.kind === "marking",
    );
    expect(looks.map(({ probe }) => probe.at)).toContain(fuse);
    const [look] = looks;
    expect(look && probeWords(look.probe)).toContain("what is printed on");
  });

  test("what is printed decides: the plan's own rating clears it, another names it, however odd", () => {
    const rated = figures.protection.find(({ id }) => id === fuse)?.ratingA ?? 0;
    const marking: Probe = { kind: "marking", at: fuse, on: [] };
    const cleared = findFaults(bench, [...well, { probe: marking, value: rated }]);
    expect(cleared.otherRating.get(fuse) ?? 0).toBeLessThan(1e-6);
    for (const value of [rated * 3, 11]) {
      const [first] = findFaults(bench, [...well, { probe: marking, value }]).suspects;
      expect(first).toMatchObject({ kind: "wrong fuse", at: [fuse], figure: value });
      expect(first?.probability).toBeGreaterThan(0.999);
    }
  });

  test("beside another fault it is taken as it is, and the other fault is found", () => {
    const rated = figures.protection.find(({ id }) => id === fuse)?.ratingA ?? 0;
    const readings = [
      ...shown(short("lamp chain 3 / helm / lamps / out"), [
        volts("house +", "house -"),
        volts("coaming lamp 3 +", "coaming lamp 3 -"),
        ohms("helm / lamps +", "helm -"),
      ]),
      { probe: { kind: "marking", at: fuse, on: [] }, value: rated * 3 } as const,
    ];
    const report = findFaults(bench, readings);
    expect(report.explained).toBe(true);
    expect(report.suspects[0]?.kind).toBe("short");
    expect(report.suspects[0]?.shown[3]).toBeCloseTo(rated * 3, 6);
  });

  test("on record it is judged against the plan, and a name that is short is understood", () => {
    const rated = figures.protection.find(({ id }) => id === fuse)?.ratingA ?? 0;
    const verdict = (at: string, value: number) =>
      diagnose(figures, circuit, [taken(at, "", value, [], { kind: "marking" })]).judged[0]?.verdict;
    expect(verdict(fuse, rated)).toBe("within");
    expect(verdict("helm / lamps", rated + 2)).toBe("high");
    expect(verdict(fuse, rated / 2)).toBe("low");
  });
});

describe("a battery that sags", () => {
  test("the load that draws most of it is proposed, pumps and horns left alone", () => {
    const on = heaviestOn(bench, "house");
    const roles = plan.gear.filter(({ name }) => on.includes(name)).map(({ role }) => role);
    expect(on.length).toBeGreaterThan(0);
    for (const role of ["bilge pump", "pump", "sound signal", "propulsion"])
      expect(roles).not.toContain(role);
    const report = findFaults(bench, shown({}, [volts("house +", "house -")]));
    const loads = possibleReadings(bench, report).map(({ probe }) => probe);
    expect(loads).toContainEqual(volts("house +", "house -", [...on]));
  });
});

describe("points that float behind a break", () => {
  const trunk = bench.branchOf.get("lamp trunk / return") ?? -1;
  const open: Change = { ohm: new Map([[trunk, 1e10]]) };

  test("a meter across the gear shows nothing; to the other pole it shows what gear lets through, forwards only", () => {
    const [across, back, blocked] = shown(open, [
      volts("coaming lamp 3 +", "coaming lamp 3 -"),
      volts("coaming lamp 3 -", "house -"),
      volts("house +", "coaming lamp 3 -"),
    ]).map(({ value }) => value);
    expect(Math.abs(across ?? 1)).toBeLessThan(1e-3);
    expect(back).toBeGreaterThan(12);
    expect(Math.abs(blocked ?? 1)).toBeLessThan(1e-6);
  });

  test("a converter whose feed is broken shows no voltage at its input, in whichever wire the break is", () => {
    const launch = example("launch");
    const { figures: all, bench: own } = launch;
    const on = all.plan.gear.filter(({ group }) => group === "coaming lamp").map(({ name }) => name);
    const probe: Probe = { kind: "voltage", at: "step-down in +", against: "step-down -", on };
    for (const id of ["converter feed / return", "converter feed / drive / feed / out"]) {
      const row = own.branchOf.get(id) ?? -1;
      const model = new ReadingModel(own, spreadOf(own), [{ probe, value: 0 }], polePairs(own).shadows);
      expect(model.shown({}).shown[0]).toBeGreaterThan(20);
      expect(model.shown({ ohm: new Map([[row, 1e10]]) }).shown[0]).toBe(0);
    }
  });
});

test("behind a converter an ohmmeter finds a short from any lamp, wherever on the way it is", () => {
  const { figures: all, bench: own } = example("launch");
  const on = all.plan.gear.filter(({ group }) => group === "floor lamp").map(({ name }) => name);
  const { pairs: poles, shadows: possible } = polePairs(own);
  const way = [
    "saloon feed / step-down / feed / out",
    "port trunk / saloon / floor / out",
    "floor lamp chain 2 / saloon / floor / out",
  ];
  const probe: Probe = { kind: "ohm", at: "floor lamp 3 +", against: "floor lamp 3 -", on };
  const model = new ReadingModel(own, spreadOf(own), [{ probe, value: 1 }], possible);
  for (const id of way) {
    const pair = poles.find(({ out }) => out === own.branchOf.get(id));
    const change: Change = { ohm: new Map([[pair?.across ?? -1, 0.02]]) };
    expect(Math.expm1(model.shown(change).shown[0] ?? 0), id).toBeLessThan(2);
  }
  expect(Math.expm1(model.shown({}).shown[0] ?? 0)).toBeGreaterThan(1000);
});
