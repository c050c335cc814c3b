import { spawnSync } from "node:child_process";
import {
  chmodSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { writeWhole } from "../../src/cli/files.js";
import { loadPlan } from "../../src/cli/load.js";
import { writePlan } from "../../src/cli/write-plan.js";
import { command } from "./command.js";
import { folderWith, skiffloom, top } from "./run.js";

const setDraw = JSON.stringify({ edit: "set field", at: "floor lamp", field: "draws", to: "2 W" });

describe("a plan is written back", () => {
  test("through a link to the file it leads to; the link stays a link", async () => {
    const folder = folderWith("examples/tender.yaml");
    const link = join(folder, "mine.yaml");
    symlinkSync("tender.yaml", link);
    expect(await command(["apply", link, "--edit", setDraw])).toMatchObject({ status: 0, err: "" });
    expect(lstatSync(link).isSymbolicLink()).toBe(true);
    expect(readFileSync(join(folder, "tender.yaml"), "utf8")).toContain("draws: 2 W");
  });

  test("with the rights it had", async () => {
    const plan = join(folderWith("examples/tender.yaml"), "tender.yaml");
    chmodSync(plan, 0o640);
    await command(["apply", plan, "--edit", setDraw]);
    expect(statSync(plan).mode & 0o777).toBe(0o640);
  });

  test("with the byte order mark and the line ends it had", async () => {
    const plan = join(folderWith("examples/tender.yaml"), "tender.yaml");
    const text = `\uFEFF${readFileSync(plan, "utf8").replaceAll("\n", "\r\n")}`;
    writeFileSync(plan, text);
    await command(["apply", plan, "--edit", setDraw]);
    const after = readFileSync(plan, "utf8");
    expect(after).toBe(text.replace(/(floor lamp:.*?draws: )[^,}\s]+ W/s, (_all, start) => `${start}2 W`));
    expect(after).toContain("draws: 2 W");
  });

  test("never over what another program has written there meanwhile; nothing is left lying about", () => {
    const folder = folderWith("examples/tender.yaml");
    const plan = join(folder, "tender.yaml");
    const loaded = loadPlan(plan);
    writeFileSync(plan, "# by another hand\n", { flag: "a" });
    const there = readFileSync(plan, "utf8");
    expect(() => writePlan(loaded, "# mine\n", plan, {})).toThrow(/changed by something else/);
    expect(readFileSync(plan, "utf8")).toBe(there);
    expect(readdirSync(folder)).toEqual(["tender.yaml"]);
  });
});

describe("a file is written", () => {
  test("where a link leads that has no file yet", () => {
    const folder = folderWith();
    symlinkSync(join(folder, "new.pdf"), join(folder, "link.pdf"));
    writeWhole(join(folder, "link.pdf"), "x", false);
    expect(readFileSync(join(folder, "new.pdf"), "utf8")).toBe("x");
  });

  test("into a device as it is, and the device stays one", () => {
    const words = "bin/skiffloom.js netlist examples/tender.yaml --to /dev/stdout | cat";
    const piped = spawnSync("sh", ["-c", `'${process.execPath}' ${words}`], { cwd: top, encoding: "utf8" });
    expect(piped.stdout.trimEnd()).toMatch(/\.end$/);
    expect(skiffloom(["netlist", "examples/tender.yaml", "--to", "/dev/null"]).status).toBe(0);
    expect(statSync("/dev/null").isCharacterDevice()).toBe(true);
  });

  // common practice, no source: /dev/full answers every write as a full disk does
  test("on a full disk not at all, with the reason", () => {
    const { status, err } = skiffloom(["netlist", "examples/tender.yaml", "--to", "/dev/full"]);
    expect(status).toBe(2);
    expect(err).toMatch(/can't be written: there is no room left on the disk/);
  });

  test("nowhere where a folder has the name, or none has the path", () => {
    const folder = folderWith();
    mkdirSync(join(folder, "boat.pdf"));
    expect(() => writeWhole(join(folder, "boat.pdf"), "x", true)).toThrow(/is a folder/);
    expect(() => writeWhole(join(folder, "none", "boat.pdf"), "x", true)).toThrow(/can't be written/);
  });
});
