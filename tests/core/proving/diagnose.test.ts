import { describe, expect, test } from "vitest";
import { diagnose } from "../../../src/core/proving/diagnose.js";
import { example, taken } from "./boats.js";

const lamps = ["coaming lamp"];

describe("the dim lamps of the second season", () => {
  const { figures, circuit } = example("second-season");
  const own = figures.plan.source.work.readings;

  test("readings outside their band are said, the others are not", () => {
    const { judged } = diagnose(figures, circuit);
    expect(judged.map(({ verdict }) => verdict)).toEqual([
      "within",
      "within",
      "low",
      "within",
      "high",
      "within",
    ]);
  });

  test("the bad minus wire of the trunk is the likeliest, and named alone once the box was measured", () => {
    const { faults, next } = diagnose(figures, circuit);
    expect(faults?.suspects[0]).toMatchObject({ kind: "resistance", at: ["lamp trunk / return"] });
    expect(faults?.suspects[0]?.extraOhm[0]).toBeGreaterThan(0.8);
    expect(faults?.suspects[0]?.extraOhm[0]).toBeLessThan(1.0);
    expect(next.length).toBeGreaterThan(0);
    const box = taken("fore box | helm / lamps +", "fore box -", 12.18, lamps);
    const after = diagnose(figures, circuit, [...own, box]);
    expect(after.faults?.suspects[0]?.at).toEqual(["lamp trunk / return"]);
    expect(after.faults?.suspects[0]?.probability).toBeGreaterThan(0.95);
    expect(after.faults?.notApart).toEqual([0]);
  });

  test("against the readings of the finished project only what the fault touches has changed", () => {
    const { changes, agedFaults } = diagnose(figures, circuit);
    const changed = changes.filter((one) => one.changed).map(({ now }) => [now.at, now.against]);
    expect(changed).toEqual([
      ["coaming lamp 6 at joint +", "coaming lamp 6 at joint -"],
      ["coaming lamp 6 at joint -", "house -"],
    ]);
    expect(agedFaults?.suspects[0]?.at).toEqual(["lamp trunk / return"]);
  });

  test("a joint that ages shows against the baseline while it is still within the band of a new boat", () => {
    const drop = taken("house +", "coaming lamp 6 at joint +", 0.187, lamps);
    const { judged, changes } = diagnose(figures, circuit, [own[0] ?? drop, drop]);
    expect(judged[1]?.verdict).toBe("within");
    expect(changes.find(({ now }) => now === drop)?.changed).toBe(true);
  });
});

describe("readings that cannot be", () => {
  const { figures, circuit } = example("utility");
  const only = (one: ReturnType<typeof taken>) => diagnose(figures, circuit, [one]).judged[0];

  test("millivolts written as volts, and the other way round, are told by the factor", () => {
    expect(only(taken("house +", "house -", 0.01265))).toMatchObject({ verdict: "low", wouldFitTimes: 1000 });
    expect(only(taken("house +", "house -", 12650))).toMatchObject({
      verdict: "impossible",
      wouldFitTimes: 0.001,
    });
  });

  test("the other sign: of a drop the probes, at gear perhaps the wires, which the search then goes by", () => {
    const on = ["sounder"];
    const drop = diagnose(figures, circuit, [taken("house +", "sounder at joint +", -0.09, on)]);
    expect(drop.judged[0]).toMatchObject({ verdict: "low", flipped: "probes" });
    expect(drop.faults).toBeUndefined();
    const posts = only(taken("house +", "house -", -12.65));
    expect(posts).toMatchObject({ verdict: "low", flipped: "probes" });
    const gear = diagnose(figures, circuit, [taken("sounder at joint +", "sounder at joint -", -12.5, on)]);
    expect(gear.judged[0]).toMatchObject({ verdict: "low", flipped: "probes or wires" });
    expect(gear.faults?.suspects[0]?.kind).toBe("reversed");
    expect(only(taken("house +", "sounder at joint +", 0.09, on))?.flipped).toBeUndefined();
  });

  test("a slip of range or sign is no change since a project was finished", () => {
    const second = example("second-season");
    const drop = taken("coaming lamp 6 at joint -", "house -", 83, ["coaming lamp"]);
    const { judged, changes } = diagnose(second.figures, second.circuit, [drop]);
    expect(judged[0]?.wouldFitTimes).toBe(1e-3);
    expect(changes).toEqual([]);
  });

  test("full voltages that are all off by one share: the meter may be, or the battery", () => {
    const readings = (times: number) => [
      taken("house +", "house -", 12.65 * times),
      taken("sounder at joint +", "sounder at joint -", 12.52 * times, ["sounder"]),
      taken("house +", "sounder at joint +", 0.08 * times, ["sounder"]),
    ];
    const share = (times: number) => diagnose(figures, circuit, readings(times)).meterShare;
    expect(share(1.11)).toBeCloseTo(0.11, 1);
    expect(share(0.9)).toBeCloseTo(-0.1, 1);
    expect(share(1)).toBeUndefined();
    // one alone, or not alike: something else is wrong
    expect(diagnose(figures, circuit, readings(1.11).slice(0, 1)).meterShare).toBeUndefined();
    const unlike = [...readings(1).slice(0, 1), ...readings(0.85).slice(1)];
    expect(diagnose(figures, circuit, unlike).meterShare).toBeUndefined();
  });

  test("a meter that is off by more than a sound wire has does not promise less than no ohms", () => {
    const { band, verdict } = only(taken("house +", "helm +", 0.05, [], { kind: "ohm" })) ?? {};
    expect(verdict).toBe("within");
    expect(band?.low).toBe(0);
    expect(band?.high).toBeGreaterThan(band?.expected ?? Infinity);
  });

  test("more volts than the boat has, and less than no ohms", () => {
    expect(only(taken("house +", "house -", 40))?.verdict).toBe("impossible");
    expect(only(taken("house +", "helm +", -3, [], { kind: "ohm" }))?.verdict).toBe("impossible");
  });

  test("impossible readings are left out of the search, and nothing is left to search with", () => {
    const { faults, next } = diagnose(figures, circuit, [taken("house +", "house -", 40)]);
    expect(faults).toBeUndefined();
    expect(next).toEqual([]);
  });

  test("readings of one thing that differ are all kept, each naming the others", () => {
    const { judged } = diagnose(figures, circuit, [
      taken("helm +", "helm -", 12.6),
      taken("helm +", "helm -", 12.1),
      taken("helm +", "helm -", 12.61),
    ]);
    expect(judged.map(({ differsFrom }) => differsFrom)).toEqual([[1], [0, 2], [1]]);
  });

  test("points and gear that the plan no longer has stay on record, unchecked", () => {
    const { judged, faults } = diagnose(figures, circuit, [
      taken("aft box +", "house -", 12.5),
      taken("house +", "house -", 12.5, ["riding lamp"]),
      { kind: "voltage", at: "house +", withOn: [], value: 12.5 },
      taken("house +", "house +", 12.5),
    ]);
    expect(judged.map(({ verdict, unplaced }) => [verdict, unplaced?.why])).toEqual([
      ["unchecked", "no such point"],
      ["unchecked", "no such gear"],
      ["unchecked", "second point missing"],
      ["unchecked", "same point twice"],
    ]);
    expect(faults).toBeUndefined();
  });

  test("a marking is no reading of a point that is no fuse, and a wire taken off must be one of the plan", () => {
    const { judged } = diagnose(figures, circuit, [
      taken("helm / lamps / switch", "", 5, [], { kind: "marking" }),
      taken("helm / lamps +", "helm -", 5, ["coaming lamp"], { kind: "ohm", lifted: ["aft trunk / out"] }),
    ]);
    expect(judged.map(({ unplaced }) => unplaced)).toEqual([
      { why: "no such branch", name: "helm / lamps / switch" },
      { why: "no such branch", name: "aft trunk / out" },
    ]);
  });

  test("no readings: nothing is claimed", () => {
    expect(diagnose(figures, circuit, [])).toEqual({
      judged: [],
      again: [],
      idleMends: [],
      next: [],
      changes: [],
    });
  });
});
