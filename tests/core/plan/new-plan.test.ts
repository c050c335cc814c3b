import fc from "fast-check";
import { expect, test } from "vitest";
import { completePlan } from "../../../src/core/plan/complete.js";
import { applyEdit, applyEdits } from "../../../src/core/plan/edits/apply.js";
import { gearRoles } from "../../../src/core/plan/model/gear.js";
import type { NewPlanAnswers } from "../../../src/core/plan/new/answers.js";
import { type Feed, gearEdits } from "../../../src/core/plan/new/gear-edits.js";
import { newPlanText } from "../../../src/core/plan/new/new-plan.js";
import { readPlan } from "../../../src/core/plan/read.js";

// An invented boat.
const answers: NewPlanAnswers = {
  name: "Sedge Warbler",
  kind: "punt",
  length: "14 ft",
  hull: "wood",
  rules: "us",
  battery: { chemistry: "agm", capacity: "30 Ah", cable: "5 ft" },
  gear: [
    { name: "stem lamp", role: "lighting", draws: "1.2 W", count: 2, cable: "9 ft 4 in" },
    { name: "side light", role: "navigation light", draws: "2 W", count: 2, cable: "11 ft" },
    { name: "well pump", role: "bilge pump", draws: "2.5 A at 12 V", cable: "7 ft" },
    { name: "phone socket", role: "socket", draws: "2 A", cable: "2 ft" },
  ],
};

test("a new plan is sound, says what was answered, and leaves the rest open", () => {
  const made = newPlanText(answers);
  const read = readPlan(made.text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { plan } = read;
  expect(plan).toMatchObject({
    name: "Sedge Warbler",
    rules: "us",
    craft: { kind: "punt", hullMaterial: "wood" },
  });
  expect(plan.batteries[0]).toMatchObject({
    chemistry: "agm",
    capacityAh: 30,
    main: { device: "bolted fuse" },
  });
  expect(plan.panels[0]?.ways.map((way) => way.name)).toEqual([
    "lamps",
    "running lights",
    "well pump",
    "phone socket",
    "spare",
  ]);
  expect(plan.panels[0]?.ways[2]).toMatchObject({ switch: "none", alwaysLive: true });
  expect(plan.gear.map((gear) => gear.count)).toEqual([2, 2, 1, 1]);
  expect(plan.gear[2]).toMatchObject({ floatSwitch: true, behaviour: "motor", surroundings: "bilge" });
  expect(plan.runs).toHaveLength(5);
  expect(plan.runs.every((run) => run.size === undefined)).toBe(true);
  expect(plan.outings[0]?.on).toHaveLength(4);
  expect(made.text.split("\n").every((line) => line.length <= 130)).toBe(true);
});

test("a motor is fed past the panel: from a battery of its own, or before the main fuse of the shared one", () => {
  const motor = { name: "motor", role: "propulsion", draws: "30 A at 24 V", cable: "8 ft" } as const;
  const own = { chemistry: "lifepo4", capacity: "60 Ah", voltage: "24 V" } as const;
  const drawn = { beam: "5 ft", form: { shape: "flat-bottomed skiff", depth: "20 in" } } as const;
  const read = (straightFrom: "the battery" | typeof own) => {
    const made = readPlan(newPlanText({ ...answers, ...drawn, gear: [{ ...motor, straightFrom }] }).text);
    if (!made.ok) throw new Error(JSON.stringify(made.problems));
    return made.plan;
  };
  const apart = read(own);
  expect(apart.batteries.map(({ name, nominalV, main }) => [name, nominalV, main === "none"])).toEqual([
    ["battery", 12, false],
    ["motor battery", 24, true],
  ]);
  expect(apart.runs.at(-1)).toMatchObject({ name: "motor cable", protection: { device: "cartridge fuse" } });
  expect(newPlanText({ ...answers, gear: [{ ...motor, straightFrom: own }] }).text).toContain(
    "from: motor battery, to: motor",
  );
  expect(apart.panels[0]?.ways.map(({ name }) => name)).toEqual(["spare"]);
  expect(apart.craft.form).toMatchObject({
    kind: "starting form",
    shape: "flat-bottomed skiff",
    depthM: 0.508,
  });
  const shared = read("the battery");
  expect(shared.batteries).toHaveLength(1);
  expect(shared.runs.at(-1)).toMatchObject({ name: "motor cable", beforeMain: true });
});

test("one goes on from it with edits", () => {
  const { text } = newPlanText(answers);
  expect(applyEdit(text, { edit: "set field", at: "battery", field: "short circuit", to: "900 A" }).ok).toBe(
    true,
  );
  expect(applyEdit(text, { edit: "rename", at: "stem lamp", to: "bow lamp" }).ok).toBe(true);
});

test("no gear yet is a sound plan too", () => {
  expect(newPlanText({ ...answers, gear: [] }).ok).toBe(true);
});

test("answers that do not fit come back as problems with their reasons", () => {
  expect(newPlanText({ ...answers, length: "12 V" })).toMatchObject({
    ok: false,
    problems: [{ code: "quantity", foundKind: "voltage" }],
  });
  expect(newPlanText({ ...answers, gear: [...answers.gear, ...answers.gear.slice(0, 1)] }).ok).toBe(false);
  expect(
    newPlanText({ ...answers, gear: [{ name: "a / b", role: "other", draws: "1 W", cable: "1 m" }] }),
  ).toMatchObject({ ok: false });
});

test("whatever is answered, the text holds it as data: a plan or problems, never another plan", () => {
  const word = fc.string({ maxLength: 12, unit: "binary" });
  const gear = fc.record({
    name: word,
    role: fc.constantFrom(...gearRoles),
    draws: fc.oneof(fc.constant("1 W"), word),
    count: fc.integer({ min: 1, max: 4 }),
    cable: fc.oneof(fc.constant("1 m"), word),
  });
  let sound = 0;
  fc.assert(
    fc.property(word, word, fc.array(gear, { maxLength: 3 }), (name, kind, items) => {
      const made = newPlanText({ ...answers, name, kind, gear: items });
      const read = readPlan(made.text);
      expect(read.ok).toBe(made.ok);
      if (!read.ok) return;
      sound += 1;
      // what is read is in Unicode's form C
      const said = (text: string) => text.normalize("NFC");
      expect(read.plan).toMatchObject({ name: said(name), craft: { kind: said(kind) } });
      expect(read.plan.gear.map((each) => each.name)).toEqual(items.map((item) => said(item.name)));
      expect(read.plan.gear.map((each) => each.role)).toEqual(items.map((item) => item.role));
    }),
    { seed: 1908, numRuns: 400 },
  );
  expect(sound).toBeGreaterThan(40);
});

test("gear is added with all that feeds it, in a way, a new way or past the panel: no loose end, and the outing asks for it", () => {
  const { text } = newPlanText(answers);
  const item = { name: "horn", role: "sound signal", draws: "3 A at 12 V", cable: "6 ft", count: 2 } as const;
  const feeds: Feed[] = [
    { from: "way", way: "panel / spare" },
    { from: "new way", panel: "panel" },
    { from: "battery", battery: "battery", beforeMain: true },
  ];
  for (const feed of feeds) {
    const before = readPlan(text);
    if (!before.ok) throw new Error("unsound");
    const edits = gearEdits(item, feed, (name) => name === "horn cable", before.plan.outings[0]);
    const edited = applyEdits(text, edits);
    if (!edited.ok) throw new Error(JSON.stringify(edited.problem));
    const { looseEnds, gear, runs, outings } = completePlan(edited.plan);
    expect(looseEnds).toEqual([]);
    expect(gear.filter(({ group }) => group === "horn")).toHaveLength(2);
    expect(runs.at(-1)?.group).toBe("horn cable b");
    expect(outings[0]?.on.at(-1)).toMatchObject({ what: "horn" });
  }
});
