import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { folderWith, skiffloom } from "./run.js";

const tender = "examples/tender.yaml";
const now = ["--now", "2026-04-11 09:00"];

describe("work", () => {
  test("says what is next and all that is left, with the caution at its step", () => {
    const { status, out } = skiffloom(["work", tender, ...now, "--all"]);
    expect(status).toBe(0);
    expect(out).toMatch(/Next\n {3}Survey the boat/);
    expect(out).toMatch(/Saturday 2026-04-11|steps left of/);
    expect(out).toMatch(/Pull on every crimp/);
    expect(out).toMatch(/main fuse goes in last of all|Main fuse in last of all/);
    expect(out).not.toMatch(/undefined|NaN|\[object/);
  });

  test("as data: steps, order, what binds it", () => {
    const data = JSON.parse(skiffloom(["work", tender, ...now, "--json"]).out);
    expect(data).toMatchObject({ skiffloom: "work", version: 1, freeHours: { assumed: true } });
    expect(data.order.steps).toHaveLength(data.steps.length);
    expect(data.order.binds.at(-1).by).toBe("start");
  });

  test("a step is ticked into the plan and taken back out; a note stays", () => {
    const file = join(folderWith(tender), "tender.yaml");
    const before = readFileSync(file, "utf8");
    const done = skiffloom(["work", file, "--done", "survey / boat", "--note", "dry: no rot", ...now]);
    expect([done.status, done.err]).toEqual([0, ""]);
    const ticked = readFileSync(file, "utf8");
    expect(ticked.startsWith(before.trimEnd())).toBe(true);
    expect(ticked).toContain("survey / boat");
    expect(ticked).toContain("2026-04-11 09:00");
    expect(done.out).not.toMatch(/Next\n {3}Survey the boat/);
    expect(skiffloom(["work", file, "--done", "survey / boat", ...now]).err).toContain("ticked already");
    expect(skiffloom(["work", file, "--undo", "survey / boat", ...now]).status).toBe(0);
    expect(readFileSync(file, "utf8")).toContain("dry: no rot");
    expect(skiffloom(["work", file, ...now]).out).toMatch(/Next\n {3}Survey the boat/);
  });

  test("a project is closed with its shelf, or without: what was bought and is left is stock only with it", () => {
    const folder = folderWith("examples/second-season.yaml");
    const source = `${readFileSync(join(folder, "second-season.yaml"), "utf8")}\nbought: {parts: {odd lamp: 2}}\n`;
    const closed = (...words: string[]) => {
      const plan = join(folder, "mine.yaml");
      writeFileSync(plan, source);
      const { status, err } = skiffloom(["work", plan, "--finish", "marking", ...words]);
      expect([status, err]).toEqual([0, ""]);
      return readFileSync(plan, "utf8");
    };
    const plain = closed();
    expect(plain).toContain("bought: {parts: {odd lamp: 2}}");
    const shelved = closed("--shelf");
    expect(shelved).not.toMatch(/^bought:/m);
    expect(shelved).toMatch(/^ {4}odd lamp: 2$/m);
    for (const text of [plain, shelved]) expect(text).toMatch(/^ {2}marking:/m);
  });
  test.each([
    [["--done", "survey / baot"], "did you mean 'survey / boat'?"],
    [["--undo", "survey / boat"], "is not ticked"],
    [["--now", "soon"], "such as '2026-04-11 19:20'"],
    [["--note", "x"], "needs both"],
    [["--done", "a", "--undo", "b"], "at a time"],
    [["--tick"], "there is no option --tick"],
    [["--done"], "--done needs a value"],
    [["--json=yes"], "--json takes no value"],
  ])("%j is refused with a reason", (words, says) => {
    const { status, err, out } = skiffloom(["work", tender, ...words]);
    expect([status, out]).toEqual([2, ""]);
    expect(err).toContain(says);
  });

  test("what the plan no longer has, and what was ticked too early, is said", () => {
    const file = join(folderWith(tender), "tender.yaml");
    const record = `
work done:
  - {step: draw / old cable, when: 2026-04-10}
  - {step: drill / floor lamp, when: 2026-04-10}
as built:
  lengths: [{run: battery lead, length: 3 ft, measured: true}]
`;
    writeFileSync(file, readFileSync(file, "utf8") + record);
    const { out } = skiffloom(["work", file, "--built", ...now]);
    expect(out).toContain("draw / old cable is on record; the plan has no such step any more");
    expect(out).toMatch(/“Drill for floor lamp 1 to 2” is ticked, but not “Mark floor lamp 1 to 2”/);
    expect(out).toMatch(/battery lead lies 3\sft long; the plan says 2\sft\s4\sin, 8\sin less/);
  });
});

test("an option that other commands of the world have is named", () => {
  expect(skiffloom(["packet", tender, "--out", "x.pdf"]).err).toContain(
    "there is no option --out; did you mean --to?",
  );
});

describe("changes", () => {
  test("between a plan and the same plan there are none", () => {
    expect(skiffloom(["changes", tender, tender])).toEqual({ status: 0, out: "Nothing changes.\n", err: "" });
  });
  test("words, figures, findings, parts and work", () => {
    const changed = readFileSync(tender, "utf8")
      .replace("count: 2 ", "count: 3 ")
      .replace("lengths: [3 ft 2 in, 2 ft]", "lengths: [3 ft 2 in, 2 ft, 18 in]")
      .replace("draws: 12 W", "draws: 18 W");
    const { status, out } = skiffloom(["changes", tender, "-"], changed);
    expect(status).toBe(0);
    expect(out).toContain("gear floor lamp: count 2 → 3");
    expect(out).toContain("gear phone socket: draws 12 W → 18 W");
    expect(out).toMatch(/floor lamp 3 +worst drop +– +\d/);
    expect(out).toMatch(/floor lamp +2 → 3/);
    expect(out).toMatch(/new: Draw floor lamp cable 3 from floor lamp 2 to floor lamp 3/);
    expect(out).toMatch(/of work left →/);
    const data = JSON.parse(skiffloom(["changes", tender, "-", "--json"], changed).out);
    expect(data).toMatchObject({ skiffloom: "changes", version: 1 });
    expect(data.work.come).toContain("draw / floor lamp cable 3");
    expect(data.work.gone).toEqual([]);
    expect(data.things.map((one: { name: string }) => one.name)).toContain("phone socket");
  });
  test.each([
    [["changes", tender], "two plan files"],
    [["changes", "-", "-"], "only one of the two"],
    [["changes", tender, "nowhere.yaml"], "can't be read"],
  ])("%j gives 2", (words, says) => {
    const { status, err } = skiffloom(words);
    expect(status).toBe(2);
    expect(err).toContain(says);
  });
});

describe("a packet for one evening", () => {
  const plan = join(folderWith("examples/second-season.yaml"), "second-season.yaml");
  test("lies beside the plan under a name of its own, and is short", () => {
    const { status, out, err } = skiffloom(["packet", plan, "--for", "tonight", "--now", "2026-04-13 18:00"]);
    expect([status, err]).toEqual([0, ""]);
    expect(out).toBe(`${plan.replace(".yaml", " tonight.pdf")} written\n`);
  });
  test("a scope there is not, and a time without a scope or that is none, are said", () => {
    const said = (...words: string[]) => skiffloom(["packet", ...words]);
    expect(said(plan, "--for", "sunday")).toMatchObject({ status: 2, out: "" });
    expect(said(plan, "--for", "sunday").err).toContain("--for takes tonight or project, not sunday");
    expect(said(plan, "--now", "2026-04-13").err).toContain("--now goes with --for");
    expect(said(plan, "--for", "tonight", "--now", "soon").err).toContain("--now takes a day");
  });
});
