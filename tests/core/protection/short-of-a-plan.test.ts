import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { workOut } from "../../../src/core/figures.js";
import { readPlan } from "../../../src/core/plan/read.js";

/*
 * The largest short at each fuse of a plan, added up by hand round the loop (Kirchhoff's second law): every thing in it once, wires out and
 * back. What joints, fuses and switches have is common practice, no source; copper is ideal (IEC 60028), of the gauge's whole area (ASTM B258), as
 * cold as the plan has it: the most a fuse must ever break. None of the project's own sums are used.
 */
const read = readPlan(readFileSync("examples/utility.yaml", "utf8"));
if (!read.ok) throw new Error("the example does not read");
const { protection } = workOut(read.plan).figures;
const shortA = (id: string) => protection.find((device) => device.id === id)?.shortAtDeviceA;

const areaMm2 = (Math.PI / 4) * (0.127 * 92 ** ((36 - 6) / 39)) ** 2; // 6 AWG (ASTM B258)
const coldOhmPerM = (1 / 58 / areaMm2) * (1 + 0.00393 * (0 - 20)); // IEC 60028 copper at 0 °C
const feedLegOhm = 76 * 0.0254 * coldOhmPerM + 2 * Math.max(0.0005 / areaMm2, 0.00005); // 6 ft 4 in along the way, a ring at each end
const batteryOhm = 0.009 * (1 - (0.1 * (38 - 25)) / 25); // 9 mΩ, at 38 °C
const mainOhm = 0.09 / 40; // bolted fuse and holder, 40 A
const masterOhm = 0.05 / 40;

test("a fuse or switch stands in one leg: it is in the loop of a short once", () => {
  expect(shortA("house / main")).toBeCloseTo(12.85 / batteryOhm, 6);
  expect(shortA("helm / bilge / fuse")).toBeCloseTo(12.85 / (batteryOhm + 2 * feedLegOhm + mainOhm), 6);
  expect(shortA("helm / running / fuse")).toBeCloseTo(
    12.85 / (batteryOhm + 2 * feedLegOhm + mainOhm + masterOhm),
    6,
  );
});

test("the lead of a charger is as hot in a short at its far end as the other runs are", () => {
  const farA = protection.find(({ id }) => id === "dock lead / fuse")?.shortAtFarEndA;
  const oldAndColdOhm = 0.009 * 1.4 * (1 + 2 * 0.08) * 1.3; // 0 °C, two years, half down (common practice, no source)
  const hotOhmPerM = (3.06 / 304.8) * (1 + 0.00393 * (38 + 10 - 20)); // 14 AWG tinned, FAA AC 43.13-1B table 11-9, air and 10 K
  // charger a fixed end: 3 cm to make it again; battery: 10 cm besides
  const pulledM = 4 * 0.3048 + 0.03 + 0.13;
  expect(farA).toBeCloseTo(12.3 / (oldAndColdOhm + 2 * pulledM * hotOhmPerM), 6);
});
