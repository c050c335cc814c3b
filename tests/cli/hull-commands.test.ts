import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { command } from "./command.js";
import { folderWith } from "./run.js";

const utility = "examples/utility.yaml";
const json = async (...words: string[]) => JSON.parse((await command([...words, "--json"])).out);

describe("form", () => {
  test("shows the lines, and what to measure next and why", async () => {
    const { out, status } = await command(["form", utility]);
    expect(status).toBe(0);
    expect(out).toMatch(/Form, from a tape survey/);
    expect(out).toMatch(/Measure next/);
    expect((await json("form", utility)).form.lines.map((line: { name: string }) => line.name)).toEqual([
      "keel",
      "chine",
      "sheer",
    ]);
  });
  test("a table of offsets comes out as a section that a plan takes", async () => {
    const folder = folderWith();
    const csv = join(folder, "boat.csv");
    writeFileSync(
      csv,
      "station,keel height,chine half-breadth,chine height,sheer half-breadth,sheer height\n0,60,550,100,700,500\n1500,0,600,40,750,500\n3000,20,500,60,650,520\n4200,90,-,-,400,560\n",
    );
    const { out, status } = await command(["form", "--offsets", csv]);
    expect(status).toBe(0);
    const plan = join(folder, "plan.yaml");
    writeFileSync(plan, `skiffloom: 1\nname: from a table\nrules: iso\n${out}`);
    const read = (await json("form", plan)).form;
    expect(read.lines[2].pointsM[1]).toEqual([1.5, 0.75, 0.5]);
    expect(read.lines[1].pointsM.length).toBe(3);
  });
  test("a table that cannot be read says where", async () => {
    const csv = join(folderWith(), "boat.csv");
    writeFileSync(csv, "station,keel height,sheer half-breadth,sheer height\n0,6o,550,100\n");
    const { err, status } = await command(["form", "--offsets", csv]);
    expect(status).toBe(2);
    expect(err).toMatch(/line 2, column 2: “6o” is no number/);
  });
});

describe("marks", () => {
  test("two tapes and a check for each of six lamps, twins with the same numbers", async () => {
    const { out } = await command(["marks", utility, "--face", "lining", "--why"]);
    for (const number of [1, 2, 3, 4, 5, 6]) expect(out).toContain(`coaming lamp ${number}`);
    expect(out.match(/check, from/g)?.length).toBe(6);
    expect(out).toMatch(/same numbers as coaming lamp 1/);
    expect(out).toMatch(/the least of all pairs/);
    expect(out).not.toContain("bilge outlet");
  });
  test("what to cut each hole with, what seals it, what is behind, and how the wires are pulled", async () => {
    const { out } = await command(["marks", utility]);
    expect(out).toMatch(/coaming lamp, 6 of them {3}lining\n {5}pilot 3\.5.mm, then step drill 20.mm/);
    expect(out).toMatch(/Sealant in all: about 2.ml, waste counted: 1 × squeeze tube 80 ml/);
    expect(out).toMatch(/Pulling the wires, in this order\n {2}1 {2}lamp chain 4/);
    const read = await json("marks", utility);
    expect(read.holes.length).toBe(10);
    expect(read.holes[0]).toMatchObject({ name: "coaming lamp 1", cut: { holeMm: 20 }, water: "sealed" });
    expect(read.pulling.order[0].through.length).toBe(4);
  });
  test("readings 5 mm off come back as a move, and as a stop in check", async () => {
    const plan = join(folderWith(utility), "utility.yaml");
    // lamp 2 set 5 mm too far aft: what the tapes to it then read
    const text = readFileSync(plan, "utf8").replace(
      "\nfloat:\n",
      "\nchecked:\n  coaming lamp 2: { seat bracket: 10 5/8 in, step bracket: 18 9/16 in, well bracket: 26 5/16 in, knee screw: 34 1/16 in }\nfloat:\n",
    );
    writeFileSync(plan, text);
    const { out } = await command(["marks", plan]);
    expect(out).toMatch(/coaming lamp 2: misplaced, [\d/]+.in off by 4 readings: move [\d/]+.in forward/);
    expect((await command(["check", plan])).status).toBe(1);
  });
  test("a face that is not there is named", async () => {
    const { err, status } = await command(["marks", utility, "--face", "deck"]);
    expect(status).toBe(2);
    expect(err).toMatch(/no face is called deck; there are lining, side, transom, helm board/);
  });
});

test("float: draft, levers, what moving the battery does, each hole over the water", async () => {
  const { out } = await command(["float", utility]);
  expect(out).toMatch(/freeboard/);
  expect(out).toMatch(/house +15\.0 kg/);
  expect(out).toMatch(/bilge outlet +side +open/);
  const data = await json("float", utility);
  expect(data.rest.draftM).toBeGreaterThan(0.1);
  expect(data.levers.length).toBe(25);
  expect(data.holes.find((hole: { name: string }) => hole.name === "drain plug").heightM).toBeLessThan(0);
});

test.each(["form", "marks", "float"])(
  "%s teaches in its help, and is content with a plan without a hull",
  async (name) => {
    expect((await command([name, "--help"])).out.split("\n").length).toBeGreaterThan(8);
    expect((await command(["--help"])).out).toContain(`skiffloom ${name} PLAN`);
    const { status, out } = await command([name, "examples/wrong/bare-posts.yaml"]);
    expect(status).toBe(0);
    expect(out).toMatch(/This plan gives no|Nothing in this plan stands on a face/);
  },
);
