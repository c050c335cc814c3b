import { expect, test } from "vitest";
import { workOut } from "../../src/core/figures.js";
import type { Figures } from "../../src/core/figures-types.js";
import { readPlan } from "../../src/core/plan/read.js";

const offered = ["18 AWG", "16 AWG", "14 AWG", "10 AWG"] as const;

/** Numbers that look random and are the same each time (mulberry32). */
function drawn(seed: number) {
  let state = seed;
  return (from: number, to: number): number => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return from + (to - from) * (((t ^ (t >>> 14)) >>> 0) / 4294967296);
  };
}

/** An invented boat of three cables: a feed behind a main, a motor that surges, and a lamp. */
function boat(seed: number, sizes: Readonly<Record<string, string>> = {}): string {
  const draw = drawn(seed);
  const pick = <T>(...from: readonly T[]): T => from[Math.floor(draw(0, from.length))] as T;
  const chemistry = pick("agm", "lifepo4", "flooded");
  const motorA = draw(1, 6);
  const startA = motorA * draw(1.5, 5);
  const at = (name: string) => (sizes[name] === undefined ? "" : `, size: ${sizes[name]}`);
  return `skiffloom: 1
name: trial
rules: ${pick("us", "iso")}
conductors: {sizes: [${offered.join(", ")}]}
batteries:
  house: {chemistry: ${chemistry}, capacity: ${draw(30, 200).toFixed(0)} Ah, main: {device: ${pick("cartridge fuse", "bolted fuse")}, rating: work out}}
panels: {helm: {ways: {motor: {}, lamp: {}}}}
gear:
  motor: {role: pump, draws: ${motorA.toFixed(2)} A, behaves as: motor, starts: ${startA.toFixed(2)} A, drop: 25 %}
  lamp: {role: lighting, draws: ${draw(0.2, 4).toFixed(2)} A, drop: 25 %}
runs:
  feed: {from: house, to: helm, length: ${draw(0.3, 3).toFixed(2)} m${at("feed")}}
  motor cable: {from: helm / motor, to: motor, length: ${draw(0.5, 7).toFixed(2)} m${at("motor cable")}}
  lamp cable: {from: helm / lamp, to: lamp, length: ${draw(0.5, 9).toFixed(2)} m${at("lamp cable")}}
`;
}

function figuresOf(text: string): Figures {
  const read = readPlan(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return workOut(read.plan).figures;
}

/** What copper could have answered, as the findings have it: they know nothing of how sizes are chosen. */
const ofCopper = new Set([
  "protection-conflict",
  "protection-carries-load",
  "protection-rides-start",
  "protection-protects-weakest",
  "protection-clears-far-short",
  "protection-withstands-short",
  "protection-before-main",
  "ampacity",
  "voltage-drop",
  "size-unmet",
  "least-size",
]);
const wrong = ({ findings }: Figures) =>
  findings.filter(({ rule, level }) => level !== "unchecked" && ofCopper.has(rule)).map(({ rule }) => rule);

/** Second method: every combination of sizes as if the owner had fixed it; the least total of those in which nothing is wrong. */
function cheapestOfAll(seed: number): number | undefined {
  let least: number | undefined;
  const good: [number, number, number][] = [];
  for (const [f, feed] of offered.entries())
    for (const [m, motor] of offered.entries())
      for (const [l, lamp] of offered.entries()) {
        // no thinner anywhere than one that is good: it costs no less
        if (good.some(([a, b, c]) => f >= a && m >= b && l >= c)) continue;
        const tried = figuresOf(boat(seed, { feed, "motor cable": motor, "lamp cable": lamp }));
        const { total } = tried.sizes;
        if (wrong(tried).length > 0) continue;
        good.push([f, m, l]);
        least = Math.min(least ?? Number.POSITIVE_INFINITY, total);
      }
  return least;
}

test("where some set of sizes has a suiting fuse everywhere, the cheapest of those is what is chosen", () => {
  let answered = 0;
  let forFuses = 0;
  let proven = 0;
  for (let seed = 1; seed <= 24; seed += 1) {
    const least = cheapestOfAll(seed);
    if (least === undefined) continue;
    answered += 1;
    const chosen = figuresOf(boat(seed));
    expect(wrong(chosen), `seed ${seed}`).toEqual([]);
    expect(chosen.sizes.lowerBound, `seed ${seed}`).toBeLessThanOrEqual(least * (1 + 1e-12));
    if (chosen.sizes.proof === "proven") proven += 1;
    // the same three numbers are added up, in the same order
    expect(Math.abs(chosen.sizes.total / least - 1), `seed ${seed}`).toBeLessThan(1e-12);
    if (chosen.sizes.choices.some(({ reason }) => reason.rule === "suits a fuse")) forFuses += 1;
  }
  expect(answered).toBeGreaterThan(15); // not all are impossible …
  expect(proven).toBeGreaterThan(answered / 2);
  expect(forFuses).toBeGreaterThan(5); // … and in some a fuse asks for more than load and drop do
});

test("where no size on the list has a suiting fuse, no copper is spent in vain", () => {
  // leads of 22 AWG stand no fuse that carries 9 A: no cable mends that
  const text = (largest: string) => `skiffloom: 1
name: trial
rules: us
conductors: {sizes: [16 AWG, ${largest}]}
batteries: {house: {chemistry: agm, capacity: 60 Ah, main: {device: cartridge fuse, rating: work out}}}
panels: {helm: {ways: {lamp: {}}}}
gear: {lamp: {role: lighting, draws: 9 A, drop: 30 %, leads: {size: 22 AWG, length: 300 mm, insulation: 80 °C}}}
runs:
  feed: {from: house, to: helm, length: 1 m}
  cable: {from: helm / lamp, to: lamp, length: 1 m}
`;
  const chosen = figuresOf(text("8 AWG"));
  expect(wrong(chosen)).toContain("protection-conflict");
  const cable = chosen.sizes.choices.find(({ id }) => id === "cable");
  expect(cable?.size.key).toBe("16 AWG");
});
