// What a terminal shows: nothing cut, nothing wider than it, whatever its width.
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { afterEach, describe, expect, test } from "vitest";
import { helpLines } from "../../src/cli/help-lines.js";
import { textTable } from "../../src/cli/table.js";
import { broken, paint } from "../../src/cli/terminal.js";
import { command } from "./command.js";

const painted = new RegExp(`${String.fromCharCode(27)}\\[[\\d;]*m`, "g");
const words = (lines: readonly string[]) =>
  lines
    .join(" ")
    .split(/[\s·]+/)
    .filter(Boolean);
const name = fc.stringMatching(/^[a-z]{1,14}( [a-z]{1,10}){0,4}$/);
const figure = fc.stringMatching(/^\d{1,3}\.\d A$/);

test("a table of any words at any width has every word, no line wider, figures ending in one column where it is a table", () => {
  const columns = [
    { heading: "gear", align: "left" },
    { heading: "current", align: "right" },
    { heading: "why", align: "left" },
    { heading: "drop", align: "right" },
  ] as const;
  fc.assert(
    fc.property(
      fc.array(fc.tuple(name, figure, name, figure), { minLength: 1, maxLength: 8 }),
      fc.integer({ min: 40, max: 140 }),
      (rows, width) => {
        const lines = textTable(columns, rows, { width, colour: false });
        for (const line of lines) expect(line.length).toBeLessThanOrEqual(width);
        const said = words(lines);
        for (const word of words(rows.flat())) expect(said).toContain(word);
        const [first = ""] = lines;
        if (first.startsWith("gear")) {
          const end = first.indexOf("current") + "current".length;
          for (const [index, [, current]] of rows.entries())
            if (lines.length === rows.length + 1)
              expect(lines[index + 1]?.slice(0, end).endsWith(current)).toBe(true);
        }
      },
    ),
  );
});

describe("a line that is too long", () => {
  const terminal = { width: 40, colour: true };
  const line = `  ${paint("Grey Heron", "strong", terminal)}  and all that is said of her, ${paint("at length", "quiet", terminal)}`;
  test("is broken at its spaces, colours kept, what goes over set in", () => {
    const lines = broken(line, 24);
    const plain = lines.map((one) => one.replace(painted, ""));
    for (const one of plain) expect(one.length).toBeLessThanOrEqual(24);
    expect(plain.slice(1).every((one) => /^ {4}\S/.test(one))).toBe(true);
    expect(words(plain)).toEqual(words(["Grey Heron and all that is said of her, at length"]));
    expect(lines.join("").match(painted)).toHaveLength(4);
  });
  test("stays as it is where it fits", () => expect(broken(line, 80)).toEqual([line]));
});

test("the help of every command is set to the terminal, with every word of it", async () => {
  const list = readFileSync("src/cli/command-line.ts", "utf8");
  const names = [...list.matchAll(/^ {2}(\w+): \(\) => import/gm)].map(([, each = ""]) => each);
  expect(names.length).toBeGreaterThan(15);
  for (const each of names) {
    const { out } = await command([each, "--help"]);
    for (const width of [60, 80, 120]) {
      const lines = helpLines(out, width);
      for (const line of lines) expect(line.length, `${each}: ${line}`).toBeLessThanOrEqual(width);
      expect(words(lines)).toEqual(words([out]));
    }
  }
});

describe("a narrow terminal", () => {
  const { stdout } = process;
  const before = { isTTY: stdout.isTTY, columns: stdout.columns };
  const become = (isTTY: boolean, columns: number) => {
    Object.defineProperty(stdout, "isTTY", { value: isTTY, configurable: true });
    Object.defineProperty(stdout, "columns", { value: columns, configurable: true });
  };
  afterEach(() => become(before.isTTY, before.columns));
  const plan = "examples/tender.yaml";
  const spanish = ["check", "figures", "boxes", "cuts", "routes", "parts", "marks", "float", "prove --water"];
  test.each([
    ...spanish.map((line) => ["es", 40, `${line} ${plan}`] as const),
    ["es", 40, `work ${plan} --now 2026-04-11`],
    ["es", 40, "--help"],
    ["es", 40, "prove --help"],
    ["en", 40, `figures ${plan} --assumed`],
    ["en", 40, `cuts ${plan}`],
    ["en", 40, "--help"],
    ["en", 80, `routes ${plan} --slack`],
    ["es", 80, `parts ${plan}`],
  ] as const)("%s, %i wide: %s", async (language, width, line) => {
    become(true, width);
    const [name = "", ...rest] = line.split(" ");
    // options go after the plan or before it
    const { out, err } = await command([name, ...rest, "--language", language]);
    expect(err).toBe("");
    const lines = out.replaceAll(painted, "").split("\n");
    expect(lines.length).toBeGreaterThan(5);
    for (const one of lines) {
      expect(one.length, one).toBeLessThanOrEqual(width);
      // what parts two figures ends a line, and never begins one
      expect(one).not.toMatch(/^\s*·/);
    }
    // no line is broken twice: one word alone, set in, between two others that are not
    const alone = lines.filter((one, at) => /^ +\S{1,8}$/.test(one) && /^\S/.test(lines[at + 1] ?? ""));
    expect(alone.length).toBeLessThan(lines.length * 0.2);
  });
});

test("an option's words stay in their column", () => {
  const help =
    "Does it.\nAll of it.\n\n  --to FILE  where; the plan's name\n             if left out\n  --force    over a file";
  expect(helpLines(help, 30)).toEqual([
    "Does it. All of it.",
    "",
    "  --to FILE  where; the plan's",
    "             name if left out",
    "  --force    over a file",
  ]);
});
