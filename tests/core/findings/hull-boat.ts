import type { CheckInput } from "../../../src/core/findings/check-input.js";
import { workOutHull } from "../../../src/core/hull-figures.js";
import { completePlan } from "../../../src/core/plan/complete.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { boat } from "./boat.js";

const stations = [0, 600, 1200, 1800, 2400, 3000, 3600, 4200];
const list = (of: (x: number) => number) => `[${stations.map((x) => `${of(x)} mm`).join(", ")}]`;
const half = (x: number) => Math.round(750 - 45 * (x / 1000 - 1.4) ** 2);
const low = (x: number) => Math.round(20 * (x / 1000 - 2) ** 2);
const high = (x: number) => 500 + Math.round(20 * (x / 1000 - 1.5) ** 2);

/** A sound invented skiff, in closed form: two lamps a side on a lining, a switch on a board, an outlet, and people in her. */
export const soundHull = `skiffloom: 1
name: Test skiff
rules: iso
craft:
  length: 4.2 m
  beam: 1.5 m
  hull: aluminium
  form:
    stations: ${list((x) => x)}
    spread: 2 mm
    lines:
      keel: {heights: ${list(low)}}
      chine: {half-breadths: ${list((x) => half(x) - 150)}, heights: ${list((x) => low(x) + 20)}}
      sheer: {half-breadths: ${list(half)}, heights: ${list(high)}}
    checks: [{breadth: ${2 * half(1800)} mm, line: sheer, at: 1800 mm}]
references:
  pin: {face: lining, along: 700 mm, off: 30 mm, pair: true}
  knee: {face: lining, along: 2600 mm, off: 40 mm, pair: true}
  bracket: {face: lining, along: 1300 mm, off: 330 mm, pair: true}
  step: {face: lining, along: 2100 mm, off: 330 mm, pair: true}
  board left: {face: board, along: 0 mm, off: 0 mm}
  board right: {face: board, along: 400 mm, off: 0 mm}
  board top: {face: board, along: 0 mm, off: 200 mm}
faces:
  lining:
    strip: [chine, sheer]
    from: 300 mm
    to: 3300 mm
    inset: 80 mm
    pair: true
    thickness: 2.5 mm
    room: 80 mm
    zones:
      frame: {kind: frame, from: 2000 mm, to: 2040 mm}
    openings:
      hatch: {at: {along: 1600 mm, off: 250 mm}, clear: 160 mm, reach: 700 mm}
  side:
    strip: [chine, sheer]
    from: 300 mm
    to: 3300 mm
    pair: true
    thickness: 2.5 mm
    holes:
      outlet: {at: {along: 200 mm, off: 70 mm}, there: true, hole: {size: 30 mm, water: open}}
  board:
    flat: [[0 mm, 0 mm], [400 mm, 0 mm], [400 mm, 200 mm], [0 mm, 200 mm]]
    at: [2000 mm, 200 mm, 400 mm]
    looks: aft
    material: wood
    thickness: 12 mm
    room: 100 mm
gear:
  lamp:
    count: 4
    draws: 1 W
    on: lining
    row: {from: 1200 mm, to: 2000 mm, end margin: 100 mm, below: sheer, off: 100 mm}
    pair: true
    hole: {size: 16 mm, body: 15.6 mm, measured: [15.6 mm], flange: 25 mm, behind: 30 mm, passes: 6 mm, water: sealed}
  switch:
    draws: 1 W
    on: board
    at: {along: 200 mm, off: 100 mm}
    hole: {size: 22 mm, flange: 30 mm, behind: 40 mm}
runs:
  lamp lead: {from: switch, to: lamp, reaches: chain, length: 1 m, size: 1.5 mm2}
checked:
  lamp 1: {}
float:
  hull: {weight: 90 kg, at: [1.9 m, 0 m, 250 mm]}
  people: {helm: {weight: 80 kg, at: [1.6 m, 0 m, 500 mm]}}
`;

export type Change = readonly [was: string | RegExp, is: string];

/** The sound electrics with the skiff's hull, its plan's text changed in places. */
export function hullBoat(...changes: readonly Change[]): CheckInput {
  let text = soundHull;
  for (const [was, is] of changes) {
    const next = text.replace(was, is);
    if (next === text) throw new Error(`the plan does not say ${was}`);
    text = next;
  }
  const read = readPlan(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems.slice(0, 3)));
  const plan = completePlan(read.plan);
  const sound = boat();
  const { lengthM } = read.plan.craft;
  const craft = { ...sound.plan.source.craft, ...(lengthM === undefined ? {} : { lengthM }) };
  return {
    ...sound,
    plan: {
      ...sound.plan,
      gear: [...sound.plan.gear, ...plan.gear],
      marks: plan.marks,
      source: { ...sound.plan.source, craft },
    },
    hull: workOutHull(plan, new Map(plan.runs.map(({ name }) => [name, 0.006]))),
  };
}

/** Readings [mm], by mark and what they were taken from. */
export type Readings = Readonly<Record<string, Readonly<Record<string, number>>>>;

/** The change that writes readings into the plan. */
export function withReadings(readings: Readings): Change {
  const lines = Object.entries(readings).map(([mark, from]) => {
    const taken = Object.entries(from).map(([name, mm]) => `${name}: ${mm} mm`);
    return `  ${mark}: {${taken.join(", ")}}`;
  });
  return ["  lamp 1: {}", lines.join("\n")];
}
