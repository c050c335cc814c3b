import { describe, expect, test } from "vitest";
import { sizeOfKey } from "../../../src/core/circuit/conductor/sizes.js";
import { jointKinds } from "../../../src/core/plan/model/common.js";
import { gearRoles } from "../../../src/core/plan/model/gear.js";
import { chemistries } from "../../../src/core/plan/model/supply.js";
import { isoAmpacity, isoEngineSpace } from "../../../src/core/reference/ampacity-iso.js";
import type { AmpacityTable } from "../../../src/core/reference/ampacity-table.js";
import { usAmpacity, usBundling, usEngineSpace } from "../../../src/core/reference/ampacity-us.js";
import { tinnedStrandedAwg } from "../../../src/core/reference/awg-conductors.js";
import {
  capacityByTemperature,
  chargeLimits,
  dischargeLimits,
  internalResistance,
  lithiumCapacityByTemperature,
  lithiumCell,
  peukertExponents,
  shortCircuitPerAh,
} from "../../../src/core/reference/batteries.js";
import { resting } from "../../../src/core/reference/battery-voltage.js";
import {
  bladeFuseTimes,
  boltedFuseTimes,
  breakerTimes,
  cartridgeFuseTimes,
} from "../../../src/core/reference/fuse-times.js";
import {
  bladeFuseScope,
  bladeFuses,
  boltedFuses,
  breakers,
  cartridgeFuses,
} from "../../../src/core/reference/fuses.js";
import { gearRoleFacts } from "../../../src/core/reference/gear-roles.js";
import { joints } from "../../../src/core/reference/joints.js";
import { flexibleCopper } from "../../../src/core/reference/metric-conductors.js";
import { ruleSet, ruleSets } from "../../../src/core/reference/rule-sets.js";
import { shortCircuitFormula, shortCircuitK } from "../../../src/core/reference/short-circuit.js";

const rises = (values: readonly number[]) =>
  values.every((value, at) => at === 0 || value > (values[at - 1] ?? value));
const neverFalls = (values: readonly number[]) =>
  values.every((value, at) => at === 0 || value >= (values[at - 1] ?? value));
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

describe.each([
  ["US", usAmpacity],
  ["ISO", isoAmpacity],
] as const)("%s ampacity", (_name, given) => {
  const table: AmpacityTable = given;
  test("sizes and ratings rise, no gaps", () => {
    expect(rises(table.rows.map(({ key }) => sizeOfKey(key).areaMm2))).toBe(true);
    expect(rises(table.ratingsC)).toBe(true);
    for (const { amps } of table.rows) expect(amps).toHaveLength(table.ratingsC.length);
  });
  test("current never falls with rating, rises with size", () => {
    for (const { amps } of table.rows) expect(neverFalls(amps)).toBe(true);
    table.ratingsC.forEach((_, column) => {
      expect(rises(table.rows.map(({ amps }) => amps[column] ?? 0))).toBe(true);
    });
  });
});

test("column sums of 33 CFR 183.425 table 5 as copied: a cell changed by accident shows", () =>
  expect(
    usAmpacity.ratingsC.map((_, column) => sum(usAmpacity.rows.map(({ amps }) => amps[column] ?? 0))),
  ).toEqual([1755, 2070, 2225, 2265, 2625, 2830, 3010]));

test("factors are shares that behave", () => {
  for (const { rows } of [usEngineSpace, isoEngineSpace]) {
    expect(rises(rows.map(({ ratingC }) => ratingC))).toBe(true);
    expect(rises(rows.map(({ factor }) => factor))).toBe(true);
    expect(rows.at(-1)?.factor).toBe(1);
  }
  expect(rises(usBundling.rows.map(({ conductorsFrom }) => conductorsFrom))).toBe(true);
  expect(rises(usBundling.rows.map(({ factor }) => -factor))).toBe(true);
});

describe("conductors", () => {
  test("flexible: resistance falls as area rises, tin adds to it", () => {
    const { rows } = flexibleCopper;
    expect(rises(rows.map(({ areaMm2 }) => areaMm2))).toBe(true);
    expect(rises(rows.map(({ plainOhmPerKm }) => -plainOhmPerKm))).toBe(true);
    for (const { plainOhmPerKm, tinnedOhmPerKm } of rows)
      expect(tinnedOhmPerKm).toBeGreaterThan(plainOhmPerKm);
  });
  test("tinned gauges: resistance falls, copper and current rise", () => {
    expect(rises(tinnedStrandedAwg.rows.map(({ maxOhmPer1000Ft }) => -maxOhmPer1000Ft))).toBe(true);
    expect(rises(tinnedStrandedAwg.rows.map(({ circularMils }) => circularMils))).toBe(true);
    expect(rises(tinnedStrandedAwg.rows.map(({ bundledA }) => bundledA))).toBe(true);
  });
});

describe("fuses and breakers", () => {
  const lists = [
    ...bladeFuses.bodies.map(({ ratingsA }) => ratingsA),
    boltedFuses.ratingsA,
    cartridgeFuses.ratingsA,
    breakers.ratingsA,
  ];
  test("ratings rise", () => {
    for (const ratingsA of lists) expect(rises(ratingsA)).toBe(true);
  });
  test("no blade fuse is larger than its standard goes", () => {
    const made: number[] = bladeFuses.bodies.flatMap(({ ratingsA }) => [...ratingsA]);
    expect(Math.max(...made)).toBeLessThanOrEqual(bladeFuseScope.maxRatingA);
  });
  test.each([
    ["blade", bladeFuseTimes],
    ["bolted", boltedFuseTimes],
    ["cartridge", cartridgeFuseTimes],
    ["breaker", breakerTimes],
  ] as const)("%s: the more current, the sooner", (_name, { rows }) => {
    const all: readonly { share: number; minS: number; maxS?: number }[] = rows;
    expect(rises(all.map(({ share }) => share))).toBe(true);
    expect(rises(all.map(({ minS }) => -minS))).toBe(true);
    const limits = all.flatMap(({ maxS }) => (maxS === undefined ? [] : [maxS]));
    expect(rises(limits.map((maxS) => -maxS))).toBe(true);
    for (const { minS, maxS } of all) if (maxS !== undefined) expect(maxS).toBeGreaterThan(minS);
  });
  test("k of the rows follows from the formula of IEC 60949 to its three digits", () => {
    const { a, b } = shortCircuitFormula;
    for (const { ratingC, finalC, k } of shortCircuitK.rows)
      expect(Math.abs(a * Math.sqrt(Math.log((b + finalC) / (b + ratingC))) - k)).toBeLessThan(0.5);
  });
});

describe("joints", () => {
  test("every kind of the plan and no other", () =>
    expect(Object.keys(joints).sort()).toEqual([...jointKinds].sort()));
  test.each(Object.entries(joints))("%s is possible", (_kind, facts) => {
    expect(facts.ohmAt1Mm2).toBeGreaterThan(facts.leastOhm);
    expect(facts.maxAreaMm2).toBeGreaterThan(facts.minAreaMm2);
    expect(facts.fitFor.length === 0).toBe(facts.never);
  });
  test("only sealed kinds are fit for wet places", () => {
    for (const facts of Object.values(joints)) {
      const fitFor: readonly string[] = facts.fitFor;
      if (fitFor.includes("wet") || fitFor.includes("bilge")) expect(facts.sealed).toBe(true);
    }
  });
});

test("every kind of gear has its row, and there are no others", () => {
  expect(Object.keys(gearRoleFacts.rows).sort()).toEqual([...gearRoles].sort());
  // a pump is turned by a motor, a lamp is not
  for (const { motor, movesWater, light } of Object.values(gearRoleFacts.rows)) {
    expect(movesWater && !motor).toBe(false);
    expect(light && motor).toBe(false);
  }
});

describe.each(chemistries)("%s", (chemistry) => {
  test("resting voltage falls from full to empty without a gap", () => {
    const rows: readonly { charge: number; v: number }[] = resting[chemistry].rows;
    expect(rows[0]?.charge).toBe(1);
    expect(rows.at(-1)?.charge).toBe(0);
    expect(rises(rows.map(({ charge }) => -charge))).toBe(true);
    expect(rises(rows.map(({ v }) => -v))).toBe(true);
  });
  test("defaults lie inside what the trade reports", () => {
    const { k, minK, maxK } = peukertExponents[chemistry];
    expect(k).toBeGreaterThanOrEqual(minK);
    expect(k).toBeLessThanOrEqual(maxK);
    const fullV = resting[chemistry].rows[0].v;
    expect(dischargeLimits[chemistry].cutOffV).toBeLessThan(fullV);
    expect(chargeLimits[chemistry].absorptionV).toBeGreaterThan(fullV);
    // what drives a short is at least what the full voltage over the assumed resistance gives
    expect(shortCircuitPerAh[chemistry]).toBeGreaterThan((0.8 * fullV) / internalResistance[chemistry].ohmAh);
  });
});

/** Resting voltages of one magazine answer, one home-energy page and one supplier's page (published): charge, least and greatest [V]. */
const restingElsewhere = [
  ["flooded", 1, 12.6, 12.66],
  ["flooded", 0.75, 12.45, 12.45],
  ["flooded", 0.5, 12.3, 12.3],
  ["flooded", 0.25, 11.95, 12.15],
  ["flooded", 0, 11.85, 11.85],
  ["lifepo4", 1, 13.8, 14],
  ["lifepo4", 0.75, 13.4, 13.6],
  ["lifepo4", 0.5, 13, 13.2],
  ["lifepo4", 0.25, 12.4, 12.8],
  ["lifepo4", 0, 10, 11.2],
] as const;

test("published resting voltages lie within 0.6 V of the curves: so far the sources disagree", () => {
  for (const [chemistry, charge, minV, maxV] of restingElsewhere) {
    const rows: readonly { charge: number; v: number }[] = resting[chemistry].rows;
    const after = rows.findIndex((row) => row.charge <= charge);
    const upper = rows[Math.max(0, after - 1)] ?? { charge: 1, v: 0 };
    const lower = rows[after] ?? upper;
    const share = upper.charge === lower.charge ? 0 : (charge - lower.charge) / (upper.charge - lower.charge);
    const v = lower.v + share * (upper.v - lower.v);
    expect(v).toBeGreaterThan(minV - 0.6);
    expect(v).toBeLessThan(maxV + 0.6);
  }
});

test("a 12 V lithium block is four cells within their limits", () => {
  const { absorptionV } = chargeLimits.lifepo4;
  const { cutOffV } = dischargeLimits.lifepo4;
  expect(absorptionV / 4).toBeGreaterThanOrEqual(lithiumCell.chargeMinV);
  expect(absorptionV / 4).toBeLessThanOrEqual(lithiumCell.chargeMaxV);
  expect(cutOffV / 4).toBeCloseTo(lithiumCell.cutOffMaxV, 12);
});

test("temperature tables rise the way they should", () => {
  for (const rows of [capacityByTemperature.lead, lithiumCapacityByTemperature.lifepo4]) {
    expect(rises(rows.map(({ atC }) => atC))).toBe(true);
    expect(rises(rows.map(({ share }) => share))).toBe(true);
  }
  expect(rises(internalResistance.byTemperature.map(({ factor }) => -factor))).toBe(true);
});

describe.each(["us", "iso"] as const)("rule-set %s", (name) => {
  const rules = ruleSet(name);
  test("names roles of the plan, sizes that exist, and every figure's source", () => {
    for (const role of rules.safetyRoles.value) expect(gearRoles).toContain(role);
    const areas = rules.sizeKeys.map((key) => sizeOfKey(key).areaMm2);
    expect(rises(areas)).toBe(true);
    expect(rules.sizeKeys).toContain(rules.leastSheathed.value);
    expect(rules.sizeKeys).toContain(rules.leastSingle.value);
    const cited = Object.values(rules).filter(
      (value) => typeof value === "object" && value !== null && "value" in value,
    );
    expect(cited.length).toBeGreaterThan(15);
    for (const { source } of cited) expect(source.title.length * source.place.length).toBeGreaterThan(0);
  });
  test("is stricter where more hangs on it", () => {
    expect(rules.dropShare("bilge pump")).toBeLessThan(rules.dropShare("lighting"));
    expect(rules.maxProtectionDistanceM.value).toBeLessThanOrEqual(
      rules.maxProtectionDistanceEnclosedM.value,
    );
    expect(sizeOfKey(rules.leastSheathed.value).areaMm2).toBeLessThan(
      sizeOfKey(rules.leastSingle.value).areaMm2,
    );
  });
});

test("33 CFR 183 in metres: 7, 40 and 72 in, 30 in out of the sheath, 1 in of movement", () => {
  const { us } = ruleSets;
  const inches = [
    us.maxProtectionDistanceM,
    us.maxProtectionDistanceEnclosedM,
    us.maxProtectionDistanceBatteryM,
    us.maxOutOfSheathM,
    us.maxBatteryMovementM,
  ];
  expect(inches.map(({ value }) => Math.round((value * 1000) / 0.0254) / 1000)).toEqual([7, 40, 72, 30, 1]);
});
