// What one gets from the page is what the command line writes, byte for byte.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { skiffloom } from "../cli/run.js";
import { goToView, openRig, openText, type Rig, visit } from "./help.js";

const timeout = 180_000;
let rig: Rig;
let folder: string;
beforeAll(async () => {
  rig = await openRig();
  folder = mkdtempSync(join(tmpdir(), "skiffloom-print-"));
});
afterAll(async () => {
  rmSync(folder, { recursive: true, force: true });
  await rig.close();
});

async function got(page: Page, button: string): Promise<{ file: string; bytes: Buffer }> {
  const coming = page.waitForEvent("download", { timeout: 120_000 });
  await page.locator(".print").getByRole("button", { name: button, exact: true }).click();
  const download = await coming;
  const path = join(folder, download.suggestedFilename());
  await download.saveAs(path);
  return { file: download.suggestedFilename(), bytes: readFileSync(path) };
}

function written(words: readonly string[], file: string): Buffer {
  const to = join(folder, file);
  const ran = skiffloom([...words, "--to", to, "--force"]);
  expect(ran.err).toBe("");
  return readFileSync(to);
}

test("packet, single sheets, tables, circuit and plan are those of the command line, on either paper", {
  timeout,
}, async () => {
  const plan = join(folder, "utility.yaml");
  const text = readFileSync("examples/utility.yaml", "utf8");
  writeFileSync(plan, text);
  const { page } = await visit(rig);
  await openText(page, text);
  await goToView(page, "print");
  await page.locator(".print-list li").first().waitFor({ timeout: 120_000 });

  await page.getByRole("radio", { name: "Letter" }).check();
  const letter = await got(page, "Packet as PDF");
  expect(letter.bytes.equals(written(["packet", plan, "--paper", "letter"], "cli.pdf"))).toBe(true);
  expect(letter.file).toMatch(/^grey-heron.*\.pdf$/);
  await page.getByRole("radio", { name: "A4" }).check();
  const only = ["sheet", plan, "--paper", "a4", "--only", "load list"];
  const sheet = await got(page, "Load list as PDF");
  expect(sheet.bytes.equals(written(only, "cli-sheet.pdf"))).toBe(true);
  const svg = await got(page, "Load list as SVG");
  expect(svg.bytes.equals(written([...only, "--page", "1"], "cli-page.svg"))).toBe(true);
  expect(svg.bytes.toString("utf8")).toMatch(/^<svg [^>]*(width|height)="297mm"/);

  for (const [button, words] of [
    ["Loads", ["parts", plan, "--csv", "loads"]],
    ["Shopping list", ["parts", plan, "--csv", "list"]],
    ["Stock on hand", ["parts", plan, "--csv", "stock"]],
    ["Prices", ["parts", plan, "--csv", "prices"]],
    ["Cut list", ["cuts", plan, "--csv"]],
    ["Flags for the wires", ["cuts", plan, "--labels", "--csv"]],
    ["Holes of the boxes", ["boxes", plan, "--csv"]],
    ["Runs", ["routes", plan, "--csv"]],
  ] as const) {
    const table = (await got(page, `${button} as CSV`)).bytes.toString("utf8");
    expect(table.split("\r\n").length, button).toBeGreaterThan(2);
    expect(table, button).toBe(skiffloom(words).out);
  }
  const circuit = await got(page, "Circuit as SPICE");
  expect(circuit.bytes.equals(written(["netlist", plan], "cli.cir"))).toBe(true);
  const own = await got(page, "Plan as YAML");
  expect(own.bytes.toString("utf8")).toBe(text);
});

test("the next evening and the project in hand are the short packets of the command line", {
  timeout,
}, async () => {
  const plan = join(folder, "second-season.yaml");
  const text = readFileSync("examples/second-season.yaml", "utf8");
  writeFileSync(plan, text);
  const { page } = await visit(rig);
  await openText(page, text);
  await page.clock.setFixedTime("2026-04-13T18:00:00");
  await goToView(page, "print");
  for (const [button, scope] of [
    ["For the next evening as PDF", "tonight"],
    ["For the project in hand as PDF", "project"],
  ] as const) {
    const short = await got(page, button);
    const asked = ["packet", plan, "--for", scope, "--now", "2026-04-13 18:00"];
    expect(short.bytes.equals(written(asked, `cli-${scope}.pdf`))).toBe(true);
    expect(short.file).toMatch(new RegExp(`${scope}\\.pdf$`));
  }
});
