import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { lineAt } from "../../src/core/hull/form/line.js";
import { layForm } from "../../src/core/hull/lay-form.js";
import { readPlan } from "../../src/core/plan/read.js";
import { goToView, openRig, openText, phone, planText, type Rig, settled, visit } from "./help.js";

let rig: Rig;
beforeAll(async () => {
  rig = await openRig();
});
afterAll(() => rig.close());

const utility = readFileSync("examples/utility.yaml", "utf8");
const launch = readFileSync("examples/launch.yaml", "utf8");

/** A new visitor with that plan, at its table. */
async function open(text: string, options: Parameters<typeof visit>[1] = {}): Promise<Page> {
  const { page } = await visit(rig, options);
  await openText(page, text);
  await goToView(page, "tape");
  return page;
}

/** The cell in a line (counted from 0) under a heading. */
async function cell(page: Page, row: number, heading: string) {
  const titles = await page.locator(".tape .list-grid thead th").allInnerTexts();
  const column = titles.findIndex((title) => title.trim() === heading) - 1;
  return page.locator(`.tape [data-row="${row}"][data-column="${column}"]`);
}

const type = async (page: Page, text: string, then = "Enter") => {
  await page.keyboard.type(text);
  await page.keyboard.press(then);
};

const pasteHere = (page: Page, text: string) =>
  page.evaluate((pasted) => {
    const data = new DataTransfer();
    data.setData("text/plain", pasted);
    const event = new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true });
    document.activeElement?.dispatchEvent(event);
  }, text);

/** The form that a plan's text describes, by the core. */
function formOf(text: string) {
  const read = readPlan(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const made = layForm(read.plan.craft)?.form;
  if (!made) throw new Error("no form");
  return made;
}

/** What stands there, with plain blanks. */
const told = async (of: ReturnType<Page["locator"]>) => (await of.textContent())?.replaceAll("\u00a0", " ");

const undo = (page: Page) => page.getByRole("button", { name: /^Undo/ }).click();
const now = (page: Page) => page.locator(".tape-now");

describe("a survey on a desk", () => {
  test("a figure is typed as the tape reads it, what is drawn and how it agrees follow, and undo gives the very same text", async () => {
    const page = await open(utility);
    expect(await page.locator(".tape-agreement").textContent()).toContain("55 go with the others.");
    const sheer = await cell(page, 3, "sheer half-breadth");
    await sheer.click();
    expect(await now(page).locator("h3").textContent()).toBe("Station 60 in: sheer half-breadth");
    // a bare number is in the unit the table says; one inch too much is told, with what the others point to
    await type(page, "35 1/2");
    await settled(page);
    expect(await sheer.textContent()).toContain("35 1/2 in");
    expect(await sheer.locator(".cell-note").textContent()).toMatch(/^≠Does not go with the others/);
    await page.keyboard.press("ArrowUp");
    expect(await told(now(page).locator(".tape-agrees"))).toMatch(
      /^Does not go with the others: (31\/32|1) in wider than the 34 (1\/2|7\/16) in they point to/,
    );
    const text = await planText(page);
    expect(text).toBe(utility.replace("34 1/2 in, 34 3/8 in", "35 1/2 in, 34 3/8 in"));
    await undo(page);
    await expect.poll(() => planText(page), { timeout: 30_000 }).toBe(utility);
  });

  test("what can't be read is said at its cell and changes nothing; feet, a loftsman's figure and none are read", async () => {
    const page = await open(utility);
    const sheer = await cell(page, 3, "sheer half-breadth");
    await sheer.click();
    await type(page, "3 fathoms");
    expect(await sheer.getAttribute("aria-invalid")).toBe("true");
    await page.keyboard.press("ArrowUp");
    expect(await sheer.locator(".cell-problem").textContent()).toMatch(/Wanted: a length/);
    expect(await now(page).getByRole("alert").textContent()).toMatch(/Wanted: a length/);
    expect(await planText(page)).toBe(utility);
    await (await cell(page, 3, "sheer half-breadth")).click();
    await type(page, "2 ft 10 3/8 in");
    await type(page, "2-10-3");
    await type(page, "none");
    await settled(page);
    expect(await planText(page)).toBe(
      utility.replace("34 1/2 in, 34 3/8 in, 33 3/4 in,", "2 ft 10 3/8 in, 2 ft 10 3/8 in, none,"),
    );
    // where nothing was measured the fair line says what to expect, and that it is no measure
    const empty = await cell(page, 5, "sheer half-breadth");
    expect(await told(empty.locator(".cell-assumed"))).toMatch(
      /^33 \d+\/\d+ in, from the fair line, not measured$/,
    );
  });

  test("stations come by the last line and stay in hand, move, go, and are filled down; each is one step", async () => {
    const page = await open(utility);
    await page.getByRole("button", { name: "Add a station" }).click();
    await type(page, "130", "Tab");
    // it has come into its place between the others, and one is in it
    expect(await now(page).locator("h3").textContent()).toBe("Station 130 in: keel height");
    await type(page, "1 3/4", "Tab");
    await settled(page);
    const text = await planText(page);
    expect(text).toContain("120 in, 130 in, 140 in");
    expect(text).toContain("heights: [0 in, 0 in, 0 in, 0 in, 0 in, 1/8 in, 7/8 in, 1 3/4 in, 2 3/4 in,");
    expect(text).toContain("23 3/8 in, none, 17 5/8 in");
    await (await cell(page, 6, "chine half-breadth")).click();
    await page.keyboard.press("Shift+ArrowDown");
    await page.keyboard.press("Control+d");
    await settled(page);
    expect(await planText(page)).toContain("23 3/8 in, 23 3/8 in, 17 5/8 in");
    await (await cell(page, 7, "Station")).click();
    await type(page, "140 in");
    expect(await (await cell(page, 7, "Station")).locator(".cell-problem").textContent()).toBe(
      "That station is in the table already.",
    );
    await page.getByRole("button", { name: "Drop what was typed there" }).click();
    await page.getByRole("button", { name: "Remove the station" }).click();
    await page.keyboard.press("Control+z");
    for (let step = 0; step < 3; step += 1) await undo(page);
    await expect.poll(() => planText(page), { timeout: 30_000 }).toBe(utility);
  });

  test("a block from a spreadsheet goes in by its headings, new stations with it", async () => {
    const page = await open(utility);
    await (await cell(page, 9, "Station")).click();
    await pasteHere(
      page,
      "Station\tsheer height\tsheer half-breadth\n164\t32 1/8\t14 1/2\n181\t33 5/8\t0\n190\t34\t-\n",
    );
    await settled(page);
    const text = await planText(page);
    expect(text).toContain("164 in, 181 in, 190 in]");
    expect(text).toMatch(/half-breadths: \[32 3\/4 in.*21 5\/8 in, 14 1\/2 in, 0 in, none\]/);
    expect(text).toMatch(/heights: \[25 7\/8 in.*30 7\/8 in, 32 1\/8 in, 33 5\/8 in, 34 in\]/);
    await undo(page);
    await expect.poll(() => planText(page), { timeout: 30_000 }).toBe(utility);
  });

  test("readings that check it are added, judged and taken away; a line is renamed where all speak of it", async () => {
    const page = await open(utility);
    const checks = page.locator(".tape-checks");
    await checks.getByLabel("What was measured").selectOption("along");
    const adding = checks.getByRole("form");
    await adding.getByLabel("At station").fill("0 in");
    await adding.getByLabel("To station").fill("80 in");
    await adding.getByLabel("Tape reads").fill("81 3/4 in");
    await adding.getByRole("button").click();
    await expect
      .poll(() => told(checks.locator("li").last()))
      .toMatch(/1 \d+\/\d+ in off the 80 \d+\/\d+ in that the table gives/);
    await checks.getByRole("button", { name: /^Remove the reading of Along the sheer/ }).click();
    const lines = page.locator(".tape-lines");
    await lines.getByLabel("Name").nth(2).fill("gunwale");
    await page.keyboard.press("Enter");
    await settled(page);
    const text = await planText(page);
    expect(text).toContain("{breadth: 68 3/4 in, line: gunwale, at: 80 in}");
    expect(text).toContain("strip: [chine, gunwale]");
    // a line between two others: its place is kept, and it has no figures yet
    await lines.getByRole("form").getByLabel("Name").fill("knuckle");
    await lines.getByRole("form").getByLabel("Above").selectOption("chine");
    await lines.getByRole("button", { name: "Add this line" }).click();
    await settled(page);
    expect(
      await lines
        .locator("li > .field:first-child input")
        .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value)),
    ).toEqual(["keel", "chine", "knuckle", "gunwale"]);
    await lines.getByRole("button", { name: "Remove chine" }).click();
    // faces lie on it: refused, and said why
    expect(await lines.getByRole("alert").textContent()).toMatch(/chine/);
  });
});

test("on a phone one figure after the other is typed, each with where to hold the tape; what is drawn is not taken for measured", async () => {
  const page = await open(launch, { viewport: phone, hasTouch: true, isMobile: true });
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(wide).toBeLessThanOrEqual(phone.width);
  const field = now(page).getByLabel("Tape reads");
  const next = now(page).getByRole("button", { name: "Next" });
  expect((await field.boundingBox())?.height).toBeGreaterThanOrEqual(44);
  expect((await next.boundingBox())?.height).toBeGreaterThanOrEqual(44);
  expect(await told(now(page).locator(".tape-agrees"))).toBe("Not measured here.");
  await (await cell(page, 1, "bilge half-breadth")).tap();
  expect(await now(page).locator("h3").textContent()).toBe("Station 750 mm: bilge half-breadth");
  expect(await now(page).locator("p.hint").textContent()).toMatch(
    /^From the middle of the boat straight out/,
  );
  expect(await field.getAttribute("placeholder")).toMatch(/^619\smm$/u);
  await field.tap();
  await field.fill("630");
  await next.tap();
  // the field is there for the next one, and has the focus
  expect(await now(page).locator("h3").textContent()).toBe("Station 750 mm: bilge height");
  expect(await field.evaluate((element) => element === document.activeElement)).toBe(true);
  expect(await now(page).getByRole("status").textContent()).toBe("Station 750 mm: bilge height");
  await field.fill("20,5 cm");
  await page.keyboard.press("Enter");
  // what can't be read keeps one there, and says what was perhaps meant
  expect(await now(page).getByRole("alert").textContent()).toMatch(/comma/);
  await now(page).getByRole("button", { name: "Take 20.5 cm" }).tap();
  await settled(page);
  expect(await planText(page)).toContain(
    "      - {line: bilge, at: 750 mm, half-breadth: 630 mm, height: 20.5 cm}\n",
  );
  // one figure goes, the other stays; then the place goes
  await (await cell(page, 1, "bilge height")).tap();
  await field.fill("");
  await next.tap();
  expect(await planText(page)).toContain("      - {line: bilge, at: 750 mm, half-breadth: 630 mm}\n");
  await (await cell(page, 1, "Station")).tap();
  await page.getByRole("button", { name: "Remove the station" }).tap();
  await settled(page);
  expect(await planText(page)).toBe(launch);
});

test("who has no form is told where to hold the tape, and an empty table becomes her form as it is filled", async () => {
  const page = await open(
    "skiffloom: 1\nname: Bare   # invented\nrules: iso\ncraft: {kind: skiff, length: 4 m}\n",
  );
  expect(await told(page.locator(".tape-begin"))).toMatch(
    /base line.*For her length, stations at 0 mm, 400 mm, 800 mm, .*, 3600 mm, 4000 mm\.$/,
  );
  await page.getByRole("img", { name: /^Where to hold the tape/ }).waitFor();
  const empty = page.getByRole("form", { name: "Begin this table" });
  await empty.getByLabel("How many stations").fill("5");
  await empty.getByRole("button").click();
  await page.locator(".tape .list-grid").waitFor();
  expect(await page.locator(".tape-agreement").textContent()).toContain("nothing is checked");
  await (await cell(page, 0, "keel height")).click();
  await pasteHere(
    page,
    [
      [20, 560, 90, 680, 480],
      [0, 620, 80, 760, 470],
      [0, 610, 90, 770, 480],
      [30, 430, 150, 600, 530],
      [200, 0, 330, 0, 620],
    ]
      .map((row) => row.join("\t"))
      .join("\n"),
  );
  await settled(page);
  const text = await planText(page);
  expect(text).toContain("stations: [0 mm, 1000 mm, 2000 mm, 3000 mm, 4000 mm]");
  expect(lineAt(formOf(text).lines.at(-1) ?? expect.fail("no sheer"), 2)).toEqual([2, 0.77, 0.48]);
  // with five figures nothing can be judged, and that is what is said
  expect(await page.locator(".tape-agreement").textContent()).toContain("25 not checked.");
  await page.getByRole("img", { name: /^Half-breadths above/ }).waitFor();
});

test("a table of offsets is made stations and lines, and a drawn shape a table: the form stays what it was", async () => {
  const offsets = `skiffloom: 1
name: From a table   # invented
rules: us
shows: {lengths: inches}
craft:
  kind: skiff
  form:
    numbers: feet-inches-eighths
    offsets: |
      station,keel height,chine half-breadth,chine height,sheer half-breadth,sheer height
      0-0-0,0-1-0,1-8-4,0-1-4,2-0-0,1-4-0
      3-0-0,0-0-0,1-10-0,0-1-0,2-2-0,1-4-4
      6-0-0,0-0-4,1-8-0,0-2-0,2-0-0,1-5-4
      9-0-0,0-3-0,0-10-0,0-5-4,1-2-0,1-8-0
      11-0-0,0-8-0,0-0-0,0-10-0,0-0-0,1-11-0
`;
  const apart = (a: string, b: string) => {
    const [one, other] = [formOf(a), formOf(b)];
    expect(one.lines.map(({ name }) => name)).toEqual(other.lines.map(({ name }) => name));
    return Math.max(
      ...one.lines.flatMap((line, i) =>
        Array.from({ length: 21 }, (_, k) => {
          const x = one.fromM + ((one.toM - one.fromM) * k) / 20;
          const [p, q] = [lineAt(line, x), lineAt(other.lines[i] ?? line, x)];
          return Math.hypot(p[1] - q[1], p[2] - q[2]);
        }),
      ),
    );
  };
  const page = await open(offsets);
  await page.getByRole("button", { name: "Make it stations and lines" }).click();
  await page.locator(".tape .list-grid").waitFor();
  const written = await planText(page);
  expect(written).not.toContain("offsets:");
  expect(apart(offsets, written)).toBeLessThan(1e-6);
  await undo(page);
  await expect.poll(() => planText(page), { timeout: 30_000 }).toBe(offsets);
  await page.goto(`${rig.address}#/`);
  await openText(page, launch);
  await goToView(page, "tape");
  await page.getByRole("button", { name: "Write her out as a table" }).click();
  await page.locator(".tape-lines").waitFor();
  const table = await planText(page);
  expect(table).not.toContain("start from");
  // rounded to a millimetre, and a batten through other stations
  expect(apart(launch, table)).toBeLessThan(0.008);
});

test("zones, ways to the back, holes and points on both sides are changed, added and taken out in their slips", async () => {
  const { page } = await visit(rig, { viewport: phone, hasTouch: true });
  await openText(page, utility);
  await goToView(page, "survey", "faces / lining");
  const slip = page.locator(".slip");
  const inside = (name: string) => slip.locator(".inside-list > li", { hasText: name });
  const write = async (label: string, value: string, name: string) => {
    await inside(name).getByLabel(label).fill(value);
    await page.keyboard.press("Enter");
  };
  await write("Off its edge", "9 in, 15 1/2 in", "fuel hose");
  await write("To station", "58 in", "fuel hose");
  await inside("fuel hose").getByLabel("What is there").selectOption("foam");
  await write("Clear across", "7 fathoms", "hatch");
  expect(await inside("hatch").getByRole("alert").textContent()).toMatch(/Wanted: a length/);
  await write("Clear across", "7 in", "hatch");
  await slip.getByRole("button", { name: "Take out frame at 98" }).tap();
  const adding = slip.getByRole("form", { name: "Add this hole" });
  await adding.getByLabel("Name").fill("old cleat");
  for (const [label, value] of [
    ["Along the edge", "40 in"],
    ["Off the edge", "2 in"],
    ["Size across", "8 mm"],
  ] as const)
    await adding.getByLabel(label).fill(value);
  await adding.getByLabel("Water finds it").selectOption("sealed");
  await adding.getByRole("button").tap();
  await inside("old cleat").waitFor();
  await settled(page);
  const text = await planText(page);
  expect(text).toContain("fuel hose: {kind: foam, from: 10 in, to: 58 in, off: [9 in, 15 1/2 in]}");
  expect(text).toContain("hatch: {at: {along: 97 in, below: sheer, off: 11 in}, clear: 7 in, reach: 24 in}");
  expect(text).not.toContain("frame at 98");
  expect(text).toMatch(
    /holes: \{old cleat: \{at: \{along: 40 in, below: sheer, off: 2 in\}, hole: \{size: 8 mm, water: sealed\}, there: true, pair: true\}\}/,
  );
  await goToView(page, "survey", "references / oar block");
  const both = slip.getByRole("form", { name: "Add these two" });
  await both.getByLabel("From the point").selectOption("board corner");
  await both.getByLabel("To the one to port").fill("40 1/4 in");
  await both.getByLabel("To the one to starboard").fill("40 1/8 in");
  await both.getByRole("button").tap();
  await write("To the one to port", "40 1/2 in", "From board corner");
  await settled(page);
  expect(await planText(page)).toContain(
    "measured: [{from: board corner, port: 40 1/2 in, starboard: 40 1/8 in}]",
  );
  // a bulkhead, and a point on it
  await page.keyboard.press("Escape");
  const fill = async (form: string, fields: Readonly<Record<string, string>>) => {
    const adding = page.getByRole("form", { name: form });
    for (const [label, value] of Object.entries(fields))
      await adding.getByLabel(label, { exact: true }).fill(value);
    return adding;
  };
  await page.getByText("A flat face: a bulkhead").tap();
  const flat = await fill("Add this flat face", {
    Name: "bulkhead",
    Width: "30 in",
    Height: "18 in",
    "Its corner: station": "120 in",
    "To port of the middle (less than nought: to starboard)": "15 in",
    "Above the base line": "4 in",
  });
  await flat.getByRole("button").tap();
  await page.getByRole("button", { name: "bulkhead", exact: true }).waitFor();
  await page.getByText("A point on a face").tap();
  const point = await fill("Add this point on the face", {
    Name: "bulkhead corner",
    "Along the edge": "0 in",
    "Off the edge": "18 in",
  });
  await point.getByLabel("On the face").selectOption("bulkhead");
  await point.getByRole("combobox").nth(1).selectOption("one side");
  await point.getByRole("button").tap();
  await settled(page);
  const after = await planText(page);
  expect(after).toContain(
    "bulkhead: {flat: [[0 in, 0 in], [30 in, 0 in], [30 in, 18 in], [0 in, 18 in]], at: [120 in, 15 in, 4 in], looks: aft}",
  );
  expect(after).toContain("bulkhead corner: {face: bulkhead, along: 0 in, off: 18 in, pair: false}");
});
