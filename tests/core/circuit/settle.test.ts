import { expect, test } from "vitest";
import { workOut } from "../../../src/core/figures.js";
import { newPlanText } from "../../../src/core/plan/new/new-plan.js";
import { readPlan } from "../../../src/core/plan/read.js";

function fresh(capacity: string) {
  const made = newPlanText({
    name: "Tern, an invented skiff",
    kind: "skiff",
    length: "14 ft",
    rules: "us",
    battery: { chemistry: "agm", capacity, cable: "5 ft" },
    gear: [{ name: "lamp", role: "lighting", draws: "2 W", count: 2, cable: "9 ft" }],
  });
  const read = readPlan(made.text);
  if (!read.ok) throw new Error("the new plan does not read");
  return workOut(read.plan).figures;
}

test.each(["20 Ah", "50 Ah", "100 Ah"])("what the tool may choose itself is no stop: %s", (capacity) => {
  const stops = fresh(capacity).findings.filter(({ level }) => level === "stop");
  expect(stops.map(({ rule }) => rule)).toEqual([]);
});

test("a feed behind a large fuse is thick enough for a short, and says why", () => {
  const feed = fresh("50 Ah").sizes.choices.find(({ id }) => id === "panel feed");
  expect(feed?.size.areaMm2).toBeGreaterThan(0.9);
  expect(feed?.reason).toEqual({ rule: "suits a fuse", device: "battery / main" });
});

test("a main that its table can't vouch for is not checked, never fine", () => {
  const { findings, protection } = fresh("100 Ah");
  const main = protection.find(({ id }) => id === "battery / main");
  expect(main?.device).toBe("cartridge fuse");
  expect(main?.conditions.find(({ condition }) => condition === "interrupts")?.state).toBe("unchecked");
  expect(findings.some(({ rule, level }) => rule === "protection-interrupts" && level === "unchecked")).toBe(
    true,
  );
});

test("a loop in the wiring takes the proof away, not the sizes", () => {
  const plan = (second: string) => {
    const read = readPlan(`skiffloom: 1
name: trial
rules: us
batteries: {house: {chemistry: agm, capacity: 50 Ah, main: {device: bolted fuse, rating: 30 A}}}
panels: {helm: {ways: {lamps: {}}}}
boxes: {fore: {}, aft: {}}
gear: {lamp: {role: lighting, draws: 5 W}}
runs:
  feed: {from: house, to: helm, length: 1 m}
  fore trunk: {from: helm / lamps, to: fore, length: 3 m}
  lead: {from: fore, to: lamp, length: 1 m}
${second}`);
    if (!read.ok) throw new Error("does not read");
    return workOut(read.plan).figures.sizes;
  };
  const tree = plan("  aft trunk: {from: fore, to: aft, length: 3 m}");
  const ring = plan(
    "  aft trunk: {from: fore, to: aft, length: 3 m}\n  back: {from: aft, to: helm / lamps, length: 3 m}",
  );
  expect(tree.proof).toBe("proven");
  expect(ring.proof).toBe("bounded");
  expect(ring.lowerBound).toBeLessThanOrEqual(ring.total);
  expect(ring.unmet).toEqual([]);
});

test("a way on which nothing hangs is spare: no fuse is chosen for it; one with a rating given, or with gear, is judged", () => {
  const read = readPlan(`skiffloom: 1
name: trial
rules: us
batteries: {house: {chemistry: agm, capacity: 50 Ah, main: {device: bolted fuse, rating: 30 A}}}
panels: {helm: {main: {device: breaker, rating: 20 A}, ways: {lamps: {}, spare: {}, kept: {fuse: 5 A}}}}
gear: {lamp: {role: lighting, draws: 5 W}}
runs: {feed: {from: house, to: helm, length: 1 m}, lead: {from: helm / lamps, to: lamp, length: 1 m}}`);
  if (!read.ok) throw new Error("does not read");
  const { protection } = workOut(read.plan).figures;
  expect(protection.filter(({ spare }) => spare).map(({ of }) => of)).toEqual(["helm / spare"]);
  expect(protection.map(({ of }) => of)).toContain("helm / kept");
});
