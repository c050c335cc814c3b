import { expect, test } from "vitest";
import { answersTo } from "../../../src/core/findings/answers.js";
import { workOutWhole } from "../../../src/core/layout-figures.js";
import { applyEdits } from "../../../src/core/plan/edits/apply.js";
import type { Edit } from "../../../src/core/plan/edits/edit.js";
import { chargerEdits } from "../../../src/core/plan/new/charger-edits.js";
import { readPlan } from "../../../src/core/plan/read.js";

/** An invented boat that says no more than a first plan does: two batteries, lamps alike, two motors, petrol. */
const boat = `skiffloom: 1
name: Gannet
rules: us
craft: {hull: aluminium, petrol on board: true, length: 16 ft, beam: 6 ft, form: {start from: vee-bottomed utility, depth: 26 in}}
faces:
  side: {strip: [chine, sheer], from: 2 ft, to: 12 ft, pair: true}
batteries:
  battery: {chemistry: agm, capacity: 90 Ah, main: {device: cartridge fuse, rating: work out, from source: 5 in}}
  motor battery: {chemistry: lifepo4, voltage: 24 V, capacity: 100 Ah, main: none}
panels:
  panel: {ways: {lamps: {switch: {rating: 10 A}}, bilge: {switch: none, always live: true}, horn: {}}}
gear:
  lamp: {count: 4, role: lighting, draws: 1 W, on: side, row: {from: 1 ft, to: 8 ft, below: sheer, off: 3 in}, pair: true}
  horn: {role: sound signal, draws: 3 A, on: side, at: {along: 5 ft, below: sheer, off: 5 in}, hole: {size: 20 mm}}
  bilge pump: {role: bilge pump, draws: 2.8 A at 12 V, behaves as: motor, float switch: true}
  motor: {role: propulsion, draws: 35 A at 24 V, behaves as: motor}
runs:
  panel feed: {from: battery, to: panel, length: 6 ft}
  lamp cable: {from: panel / lamps, to: lamp, reaches: each, length: 9 ft}
  bilge cable: {from: panel / bilge, to: bilge pump, length: 7 ft}
  horn cable: {from: panel / horn, to: horn}
  motor cable: {from: motor battery, to: motor, length: 8 ft, fuse: {device: cartridge fuse, from source: 5 in}}
`;
const said: Readonly<Record<string, string | boolean>> = {
  covered: true,
  "most current": "150 A",
  fixed: "strap",
  "nearest fuel part": "1 m",
  vented: true,
  "protected from chafe": true,
  "colours / out": "red",
  "colours / return": "black",
  "largest fuse": "60 A",
  starts: "20 A",
  length: "9 ft",
  "hole / size": "20 mm",
  thickness: "2 mm",
  stud: "8 mm",
  "main / interrupts": "20 kA",
  "fuse / interrupts": "20000 A",
};

function check(text: string) {
  const read = readPlan(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { plan, findings } = workOutWhole(read.plan).figures;
  const asked = findings.flatMap((finding) =>
    answersTo(finding, plan).map((one) => ({ ...one, rule: finding.rule })),
  );
  return { findings, asked };
}

test("what is asked for lets every rule judge that asked: none of them stays unchecked", () => {
  const { asked } = check(boat);
  const rules = new Set(asked.map(({ rule }) => rule));
  expect(rules.size).toBe(13);
  const edits = asked.flatMap(({ field, of }) =>
    of.map((at): Edit => ({ edit: "set field", at, field, to: said[field] ?? "" })),
  );
  const edited = applyEdits(boat, edits);
  if (!edited.ok) throw new Error(JSON.stringify(edited.problem));
  const after = check(edited.text);
  expect(after.findings.filter(({ rule, level }) => level === "unchecked" && rules.has(rule))).toEqual([]);
  expect(after.asked).toEqual([]);
});

test("no fuse suits what the owner made too thin: the tool is offered the choice, and takes a size that one suits", () => {
  const of = (text: string) =>
    check(text).findings.filter(({ at, level }) => at === "motor cable" && level !== "unchecked");
  const rules = (text: string) => of(text).map(({ rule }) => rule);
  expect(rules(boat)).not.toContain("protection-conflict");
  const thin = boat.replace("to: motor, length: 8 ft,", "to: motor, length: 8 ft, size: 14 AWG,");
  const found = of(thin).find(({ rule }) => rule === "protection-conflict");
  expect(found?.remedies).toEqual([{ edit: "remove field", at: "motor cable", field: "size" }]);
  const mended = applyEdits(thin, found?.remedies ?? []);
  if (!mended.ok) throw new Error(JSON.stringify(mended.problem));
  expect(rules(mended.text)).toEqual(rules(boat));
});

test("a main that opens first for want of copper in its feed: it is the feed that is let go, not the cable behind the fuse", () => {
  const text = (feed: string) => `skiffloom: 1
name: trial
rules: us
batteries: {house: {chemistry: agm, capacity: 82 Ah, main: {device: cartridge fuse, rating: work out}}}
panels: {helm: {ways: {pump: {}}}}
gear: {pump: {role: pump, draws: 2.65 A, behaves as: motor, starts: 9.38 A, drop: 25 %}}
runs:
  feed: {from: house, to: helm, length: 1.2 m${feed}}
  cable: {from: helm / pump, to: pump, length: 3.3 m}
`;
  const thin = check(text(", size: 18 AWG")).findings.find(({ rule }) => rule === "protection-conflict");
  expect(thin?.remedies).toEqual([{ edit: "remove field", at: "feed", field: "size" }]);
  expect(check(text("")).findings.map(({ rule }) => rule)).not.toContain("protection-conflict");
});

test("pieces alike are asked about once, motors only where they are behind the device, and what was judged asks nothing", () => {
  const { asked, findings } = check(boat);
  const of = (rule: string, at?: string) =>
    asked
      .filter((one) => one.rule === rule && (at === undefined || one.of.includes(at)))
      .map((one) => one.of);
  expect(of("protection-gear-limit", "lamp")).toEqual([["lamp"]]);
  expect(of("protection-rides-start").sort()).toEqual([["bilge pump"], ["bilge pump"], ["motor"]]);
  expect(findings.some(({ level }) => level !== "unchecked")).toBe(true);
});

test("a master switch is offered for what the fuses let through, and a charger comes with its fused lead", () => {
  const found = check(boat).findings.filter(({ rule }) => rule === "master-missing");
  expect(found.map(({ at, remedies }) => [at, remedies?.length])).toEqual([
    ["battery", 1],
    ["motor battery", 1],
  ]);
  const read = readPlan(boat);
  if (!read.ok) throw new Error("unsound");
  const edits = read.plan.batteries.flatMap((battery) =>
    chargerEdits(
      { name: `${battery.name} charger`, kind: "mains", output: "5 A", cable: "4 ft" },
      battery,
      () => false,
    ),
  );
  const after = applyEdits(boat, [...found.flatMap(({ remedies = [] }) => remedies), ...edits]);
  if (!after.ok) throw new Error(JSON.stringify(after.problem));
  const rules = check(after.text).findings.map(({ rule, level }) => `${level} ${rule}`);
  for (const gone of ["mind master-missing", "mind charger-missing", "mend switch-overloaded"])
    expect(rules).not.toContain(gone);
});
