import { workOut } from "../../../src/core/figures.js";
import type { CheckInput } from "../../../src/core/findings/check-input.js";
import { workOutLayout } from "../../../src/core/layout-figures.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { ruleSet } from "../../../src/core/reference/rule-sets.js";

/** Lines of a small boat, invented, that a case changes: one lamp way into a box, and two lamps from there. */
export interface Lines {
  readonly box: string;
  readonly trunk: string;
  readonly leads: string;
  readonly lamp: string;
  readonly battery: string;
  readonly panel: string;
  /** Further sections. */
  readonly more: string;
}

/** A box that takes everything, measured whole. */
export const soundBox =
  "inside: [160 mm, 110 mm, 70 mm], wall: 3 mm, of: abs, boss: 10 mm, lid lip: 5 mm, ip: IP65, stud: 5 mm";

const usual: Lines = {
  box: soundBox,
  trunk: "length: 8 ft, size: 16 AWG",
  leads: "length: 3 ft, size: 16 AWG",
  lamp: "",
  battery: "stud: 8 mm",
  panel: "stud: 5 mm",
  more: "",
};

/** The plan of that boat. */
export function layoutPlan(change: Partial<Lines> = {}): string {
  const { box, trunk, leads, lamp, battery, panel, more } = { ...usual, ...change };
  const extra = (text: string) => (text === "" ? "" : `, ${text}`);
  return `skiffloom: 1
name: trial
rules: us
craft: {length: 14 ft, hull: wood, petrol on board: false}
batteries:
  house: {chemistry: agm, voltage: 12 V, capacity: 50 Ah, main: {device: bolted fuse, rating: 40 A, from source: 5 in}${extra(battery)}}
panels:
  helm: {master: 40 A, covered: true, surroundings: dry${extra(panel)}, ways: {lamps: {switch: 10 A, fuse: 3 A}}}
boxes:
  fore box: {joins: tee, returns: joined, covered: true, surroundings: splash${extra(box)}}
gear:
  lamp: {count: 2, role: lighting, draws: 5 W, works: 9 V to 16 V, joint: sealed butt, surroundings: splash${extra(lamp)}}
runs:
  battery feed: {from: house, to: helm, length: 4 ft, size: 8 AWG, colours: {out: red, return: black}}
  trunk: {from: helm / lamps, to: fore box${extra(trunk)}}
  leads: {from: fore box, to: lamp, reaches: each${extra(leads)}}
${more}`;
}

/** That boat with everything worked out, as the rules see it. */
export function layoutBoat(change: Partial<Lines> = {}): CheckInput {
  const read = readPlan(layoutPlan(change));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const worked = workOut(read.plan);
  return { ...worked.figures, ruleSet: ruleSet(read.plan.rules), layout: workOutLayout(worked) };
}
