// A plan's text is data at the terminal too: no name or note moves the cursor, sets a title or turns a line round.
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { loadPlan } from "../../src/cli/load.js";
import { harmlessPainted, paint } from "../../src/cli/terminal.js";
import { command } from "./command.js";
import { folderWith } from "./run.js";

/** Sets a title, clears the screen by the 8-bit order too, and turns what follows round. */
const orders = "\\e]0;taken\\a\\e[2J\\x9B2J\\u202E";

/** An example with orders in its free texts, and marks that turn a line round in its names. */
function hostilePlan(name: string): string {
  const text = readFileSync(`examples/${name}.yaml`, "utf8")
    .replace(/^name: .*$/m, `name: "boat ${orders}"`)
    .replace(/(\n {2}kind: )[^\n#]+/, `$1"skiff ${orders}"`)
    .replaceAll(/^( +(?:note|behind): )([a-z][^\n"#]*)$/gm, `$1"$2 ${orders}"`)
    .replaceAll(/(\b(?:note|behind|item|pack): )([a-z][^,{}[\]\n#"]*)(?=[,}])/g, `$1"$2 ${orders}"`)
    .replaceAll(/(colours: \{out: )([a-z]+)/g, `$1"$2 ${orders}"`)
    .replaceAll(/(?<=\w) lamp/g, "\u202E lamp");
  const path = join(folderWith(), "hostile.yaml");
  writeFileSync(path, text);
  return path;
}

const commands = [
  ["check", "--working"],
  ["figures", "--assumed"],
  ["boxes"],
  ["routes", "--slack"],
  ["cuts"],
  ["cuts", "--labels"],
  ["parts"],
  ["form"],
  ["marks"],
  ["float"],
  ["work", "--all"],
  ["work", "--built"],
  ["prove"],
  ["prove", "--sheet"],
  ["prove", "--water"],
  ["sheet"],
  ["check", "--json"],
  ["figures", "--json"],
  ["work", "--json"],
  ["boxes", "--box", "none\u001b[2J"],
];
/** All but line ends. */
const orderSigns = /[^\P{Cc}\n]|\p{Cf}/u;

describe.each(["utility", "launch", "second-season"])("%s", (name) => {
  const plan = hostilePlan(name);

  test("holds what would give orders", () => {
    const { plan: read } = loadPlan(plan);
    expect(read.name).toContain("\u001b");
    expect(read.gear.some((piece) => /\p{Cf}/u.test(piece.name))).toBe(true);
  });

  test.each(commands)("%s %s gives none of it to the terminal", async (verb, ...rest) => {
    const { out, err } = await command([verb ?? "", plan, ...rest]);
    expect(out.length + err.length).toBeGreaterThan(20);
    expect(orderSigns.exec(out)?.[0]).toBeUndefined();
    expect(orderSigns.exec(err)?.[0]).toBeUndefined();
  });
});

test("of orders in a line our own colours pass and nothing else", () => {
  const screen = { width: 80, colour: true };
  const own = paint("mend", "mend", screen);
  expect(harmlessPainted(`${own} a\u001b[2Jb\u001b[99mc\nd`)).toBe(`${own} a [2Jb [99mc\nd`);
});
