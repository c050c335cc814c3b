import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import {
  goToView,
  openExample,
  openRig,
  openText,
  phone,
  planText,
  type Rig,
  settled,
  visit,
} from "./help.js";

// The utility boat's second project (an invented boat), walked in the garage on a phone from the step in hand to as built.

let rig: Rig;
beforeAll(async () => {
  rig = await openRig();
});
afterAll(() => rig.close());

const secondSeason = readFileSync("examples/second-season.yaml", "utf8");
/** With its solar panel covered already: the step in hand is to drill, and the next is with the battery off. */
const covered = secondSeason.replace(
  "  - {step: mark / boarding lamp,",
  "  - {step: cover / deck panel, when: 2026-03-28 09:38}\n$&",
);

const onePixel = Buffer.from(
  "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==",
  "base64",
);

const stepNow = (page: Page) => page.locator(".step-sheet").getAttribute("data-step");

/** Ticks the step that lies open, and waits for the next. */
async function tick(page: Page): Promise<void> {
  const was = await stepNow(page);
  await page.locator(".step-done").click();
  await page.waitForFunction(
    (before) => (document.querySelector(".step-sheet")?.getAttribute("data-step") ?? "finished") !== before,
    was,
  );
}

async function type(page: Page, label: RegExp, value: string): Promise<void> {
  const field = page.getByLabel(label).first();
  await field.fill(value);
  await field.press("Enter");
  await settled(page);
}

it("the second project goes from its first open step to as built, with a fault found and mended on the way", async () => {
  const { page } = await visit(rig, { viewport: phone, hasTouch: true });
  await openText(page, covered);
  await goToView(page, "build");
  await page.locator(".step-sheet").waitFor();
  expect(await page.locator(".step-sheet h3").textContent()).toBe("Drill for boarding lamp");
  expect(await page.locator(".step-caution").textContent()).toContain("Look behind first");
  const widths = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
  expect(widths[0]).toBeLessThanOrEqual(widths[1] ?? 0);

  // a note goes with the tick; the tick can be taken back, and is there again after a reload
  await page.getByLabel("Note").fill("stop set at 10 mm");
  await tick(page);
  expect(await planText(page)).toContain("stop set at 10 mm");
  await page.getByRole("button", { name: /Take back the last tick/ }).click();
  await page.locator('[data-step="drill / boarding lamp"]').waitFor();
  await tick(page);
  await settled(page);
  await page.reload();
  await page.locator(".step-sheet").waitFor();
  expect(await stepNow(page)).not.toBe("drill / boarding lamp");

  // on to the first power; sealant must rest before the hose, a day is let go by
  const seen: string[] = [];
  let rested = false;
  for (let count = 0; count < 40; count += 1) {
    const step = (await stepNow(page)) ?? "finished";
    seen.push(step);
    if (step === "prove / helm / boarding") break;
    if (
      !rested &&
      (
        await page
          .locator(".step-wait")
          .textContent({ timeout: 200 })
          .catch(() => "")
      )?.includes("Must rest")
    ) {
      rested = true;
      await page.clock.setSystemTime(Date.now() + 9 * 24 * 3600 * 1000);
      await page.reload();
      await page.locator(".step-sheet").waitFor();
      continue;
    }
    await tick(page);
  }
  expect(rested, "the sealant was waited for").toBe(true);
  expect(seen.indexOf("draw / boarding cable")).toBeGreaterThan(-1);
  expect(seen.at(-1)).toBe("prove / helm / boarding");

  // the lamps were measured dim: the suspects name the trunk, the reading asked for next narrows them
  await page.getByRole("link", { name: /Readings to take/ }).click();
  await page.getByRole("button", { name: "What may be wrong" }).click();
  const likeliest = page.locator(".suspects li").first();
  await likeliest.waitFor();
  expect(await likeliest.textContent()).toContain("lamp trunk");
  expect(await page.locator(".next-reading").textContent()).toContain("volts from");
  // its end is made anew: what was read before is set back, and what proves the mend is asked for
  await likeliest.getByRole("button", { name: "I have mended this" }).click();
  await page.getByText("Measure again, to prove the mend").waitFor();
  expect(await page.locator('[data-verdict="before the mend"]').count()).toBeGreaterThan(1);
  expect(await page.locator('[data-verdict="low"]').count()).toBe(0);
  expect(await page.locator(".proof").textContent()).toMatch(/12\.08\sV.*before the mend of lamp trunk/);
  await type(page, /^The meter shows$/, "12.61 V");
  await page.getByText("Measure again, to prove the mend").waitFor({ state: "detached" });
  // the sheet says of the others what was read before the mend; the new lamp is measured: a sound boat may show it
  await page.getByRole("button", { name: "Readings to take" }).click();
  await page.locator("details", { hasText: "Way helm / lamps" }).locator("summary").click();
  await page.getByPlaceholder(/0\.491\sV before the mend/).waitFor();
  await type(page, /The meter shows: coaming lamp 6 −.*to house .* on$/, "83 mV");
  await page.locator("details", { hasText: "Way helm / boarding" }).locator("summary").click();
  await type(page, /The meter shows: boarding lamp \+.*boarding lamp .* on$/, "12.66 V");
  await page.getByRole("button", { name: "What may be wrong" }).click();
  await likeliest.getByText("Nothing wrong in what was read").waitFor();

  await goToView(page, "build");
  await page.locator(".step-sheet").waitFor();
  for (let count = 0; count < 10 && (await stepNow(page)) !== null; count += 1) await tick(page);
  await page.getByText("Every step is ticked").waitFor();
  const stockOf = (plan: string) =>
    /^stock:[\s\S]*?(?=^\S)/m.exec(plan.slice(plan.search(/^stock:/m)))?.[0] ?? "";
  const onShelf = stockOf(await planText(page));
  await page.getByLabel("Name of the project").fill("a lamp to board by");
  expect(await page.getByLabel(/^Bring the shelf up to date/).isChecked()).toBe(true);
  await page.getByRole("button", { name: "Close the project" }).click();
  await page.getByText("There is no work to do").waitFor();
  const text = await planText(page);
  expect(text).toMatch(/a lamp to board by:.*\{?\s*finished: 20\d\d-\d\d-\d\d/);
  for (const reading of ["12.08 V", "12.61 V"]) expect(text).toContain(reading);
  expect(onShelf).toMatch(/^stock:/);
  expect(stockOf(text), "what the project used is off the shelf").not.toBe(onShelf);
  await goToView(page, "print");
  await page.getByText("As built", { exact: false }).first().waitFor();
});

it("a note is kept when its field or its step is left, or a remote ticks; it and a photo are shown where one comes back", async () => {
  const { page } = await visit(rig, { viewport: phone });
  await openText(page, secondSeason);
  await goToView(page, "build");
  const sheet = page.locator(".step-sheet");
  await sheet.waitFor();
  const record = sheet.locator(".step-record");
  const first = await stepNow(page);
  const note = page.getByRole("textbox", { name: "Note" });
  await note.fill("foam behind, 30 mm");
  await note.press("Tab");
  await record.getByText("foam behind, 30 mm", { exact: true }).waitFor();
  expect(await note.inputValue()).toBe("");
  // a click that leaves the field keeps what is in it with the click itself
  await note.fill("two coats of varnish");
  await sheet.locator("h3").first().click();
  expect(await record.getByText("two coats of varnish", { exact: true }).count()).toBe(1);
  await sheet
    .locator(".photo-button input")
    .setInputFiles({ name: "any.png", mimeType: "image/png", buffer: onePixel });
  await sheet.locator(".step-record img").waitFor();
  await settled(page);
  await page.reload();
  await record.getByText("foam behind, 30 mm", { exact: true }).waitFor();
  await sheet.locator(".step-record img").waitFor();

  // the step is left for another, with a note half typed
  await note.fill("left it masked");
  await page.locator(".step-order summary").first().click();
  await page.locator(".step-lines button").nth(3).click();
  await page.waitForFunction(
    (was) => document.querySelector(".step-sheet")?.getAttribute("data-step") !== was,
    first,
  );
  expect(await record.getByText("left it masked").count()).toBe(0);
  await page.locator(".step-lines button").first().click();
  await record.getByText("left it masked", { exact: true }).waitFor();

  // the view is left without leaving the field first
  await note.fill("stop at 10 mm");
  await goToView(page, "proof");
  await goToView(page, "build");
  await record.getByText("stop at 10 mm", { exact: true }).waitFor();

  // a remote ticks while a note is typed
  await page.getByLabel("Tick with a remote or a keyboard").check();
  await note.fill("done with the step bit");
  await page.keyboard.press("PageDown");
  await page.waitForFunction(
    (was) => document.querySelector(".step-sheet")?.getAttribute("data-step") !== was,
    first,
  );
  const text = await planText(page);
  for (const said of ["foam behind, 30 mm", "left it masked", "stop at 10 mm", "done with the step bit"])
    expect(text.split(said)).toHaveLength(2);
});

it("the next project is found from the plans kept and in the log: one closes what is in hand, and what is not ticked stays to do", async () => {
  const { page } = await visit(rig, { viewport: phone });
  const toStart = async () => {
    await page.evaluate(() => {
      location.hash = "#/";
    });
    await page.locator(".kept-plan").first().waitFor();
  };
  await openExample(page, "tender");
  await toStart();
  const next = page.getByRole("link", { name: /start the next on this boat/ });
  // nothing of her is built yet
  expect(await next.count()).toBe(0);
  await openText(page, secondSeason);
  await toStart();
  expect(await page.locator(".kept-plan").count()).toBe(2);
  await next.click();
  const projects = page.locator(".projects");
  await projects.getByText("In hand: 2 steps ticked").waitFor();
  await projects.getByText("lamps and sounder", { exact: true }).waitFor();
  expect(await projects.locator("dl").textContent()).toContain("fore box: 1");
  await projects.getByRole("button", { name: "Close the project" }).click();
  await projects.getByText("A name is wanted").waitFor();
  await projects.getByLabel("Name of the project").fill("boarding lamp, marked only");
  await projects.getByRole("button", { name: "Close the project" }).click();
  await projects.getByText("Nothing is ticked since the last project was closed").waitFor();
  await projects.getByText("boarding lamp, marked only", { exact: true }).waitFor();
  await goToView(page, "build");
  await page.locator('[data-step="drill / boarding lamp"]').waitFor();
  await goToView(page, "log");
  await projects.getByRole("link", { name: "Add the gear of the next project" }).click();
  await page.locator('main[data-view="gear"]').waitFor();
});

it("a desk shows the order of work beside the step in hand; a step leads to what draws it", async () => {
  const { page } = await visit(rig);
  await openText(page, covered);
  await goToView(page, "build");
  await page.locator(".step-sheet").waitFor();
  const [sheet, list] = await Promise.all(
    [".step-sheet", ".step-order"].map((one) => page.locator(one).first().boundingBox()),
  );
  expect(list?.x).toBeGreaterThan((sheet?.x ?? 0) + (sheet?.width ?? 0));
  expect(await page.locator(".step-lines button").first().isVisible()).toBe(true);
  await page.getByRole("link", { name: "Where it sits in the boat" }).click();
  await page.locator('main[data-view="layout"]').waitFor();
  await page.locator(".slip").getByText("boarding lamp").first().waitFor();
});

it("the order of work is folded by day: that of the step in hand lies open, each tells what is done and to do", async () => {
  const { page } = await visit(rig, { viewport: phone });
  await openExample(page, "tender");
  await goToView(page, "build");
  await page.locator(".step-sheet").waitFor();
  await page.locator(".step-order > summary").first().click();
  const days = page.locator(".step-day");
  expect(await days.count()).toBeGreaterThan(3);
  expect(await page.locator(".step-day[open]").count()).toBe(1);
  expect(await days.first().getAttribute("open")).not.toBeNull();
  const steps = await page.locator(".step-lines button").count();
  const told = await days.locator("summary").allTextContents();
  const counts = told.map((one) =>
    /day \d{4}-\d\d-\d\d (\d+) of (\d+) done · .*\d+\s(h|min) to go$/.exec(one),
  );
  expect(counts.map((one) => one?.[1])).toEqual(told.map(() => "0"));
  expect(counts.reduce((sum, one) => sum + Number(one?.[2]), 0)).toBe(steps);
  // by keys: the next day opens, and a step of it is taken in hand there
  await days.nth(1).locator("summary").focus();
  await page.keyboard.press("Enter");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await days.nth(1).locator('[aria-current="step"]').waitFor();
  // nothing shuts of itself
  expect(await page.locator(".step-day[open]").count()).toBe(2);
});

it("a photo stays with its step; Page down and Page up tick and take back; the record of what was built is told", async () => {
  const { page } = await visit(rig, { viewport: phone });
  await openText(page, covered);
  await goToView(page, "build");
  await page.locator(".step-sheet").waitFor();
  expect(await page.locator(".build").textContent()).toMatch(/sounder cable lies 3\sft\s6\sin long/);
  await page
    .locator(".photo-button input")
    .setInputFiles({ name: "any.png", mimeType: "image/png", buffer: onePixel });
  await page.locator(".step-photos img").waitFor();
  await page.getByLabel("Tick with a remote or a keyboard").check();
  await page.locator(".step-sheet h3").focus();
  await page.keyboard.press("PageDown");
  await page.waitForFunction(
    () => document.querySelector(".step-sheet")?.getAttribute("data-step") !== "drill / boarding lamp",
  );
  await page.keyboard.press("PageUp");
  await page.locator('[data-step="drill / boarding lamp"]').waitFor();
});

it("in Spanish the steps, their tools and cautions are Spanish", async () => {
  const { page } = await visit(rig, { viewport: phone, locale: "es-ES" });
  await openText(page, covered);
  await goToView(page, "build");
  const sheet = page.locator(".step-sheet");
  // its words are fetched when the language is chosen
  await sheet.locator("h3", { hasText: "Taladrar para boarding lamp" }).waitFor();
  expect(await page.locator(".step-caution").textContent()).toContain("Mira antes lo que hay detrás");
  expect(await sheet.locator(".step-needs").textContent()).toContain("taladro, broca helicoidal");
  await page.locator(".step-order summary").first().click();
  const lines = await page.locator(".step-lines button").allTextContents();
  expect(lines.join("\n")).toMatch(/Tender boarding cable, de helm a boarding lamp/);
  await page.locator(".step-lines button", { hasText: "Hacer la punta" }).first().click();
  await sheet.getByText(/positivo.*pelar 7\smm.*debe aguantar/).waitFor();
  expect(lines.join("\n")).not.toMatch(/\b(Draw|Make|Connect|Switch|Close)\b/);
});

it("in Spanish what may be wrong, the sheet of tests and the card for the water are Spanish", async () => {
  const { page } = await visit(rig, { viewport: phone, locale: "es-ES" });
  await openText(page, secondSeason);
  await goToView(page, "proof");
  const proof = page.locator(".proof");
  await proof.getByText("lamp trunk, su conductor negativo").first().waitFor();
  expect(await proof.locator(".next-reading").textContent()).toMatch(/(voltios|ohmios|amperios) |impreso/);
  expect(await proof.locator(".sheet-test").first().textContent()).toContain("un barco sin fallos");
  const english = / (the|of|is|its|from|on)[ ,.]/;
  expect(await proof.textContent()).not.toMatch(english);
  await page.getByRole("button", { name: "Medidas que tomar" }).click();
  await page.locator("details", { hasText: "Continuidad: baterías" }).locator("summary").click();
  await type(page, /El medidor marca: boarding lamp .* a /, "Abierto");
  expect(await planText(page)).toMatch(/shows: open/);
  expect(await proof.textContent()).not.toMatch(english);
  await page.getByRole("button", { name: "En el agua" }).click();
  await proof.getByText("en reposo").first().waitFor();
  expect(await proof.textContent()).not.toMatch(english);
  expect(await proof.locator('[lang="en"]').count()).toBe(0);
});

it("hours left follow what the voltmeter shows, and a reading in the wrong unit is said in its place", async () => {
  const { page } = await visit(rig, { viewport: phone });
  await openText(page, secondSeason);
  await goToView(page, "proof");
  await page.getByRole("button", { name: "On the water" }).click();
  await page.getByLabel("The voltmeter shows").fill("12.4");
  await page.getByLabel("To be used from now on").fill("2");
  const at124 = await page.locator(".water-left output").textContent();
  expect(at124).toMatch(/About \d+\s%.*to the reserve/);
  await page.getByLabel("The voltmeter shows").fill("12.7 V");
  expect(await page.locator(".water-left output").textContent()).not.toBe(at124);
  await page.getByRole("button", { name: "Readings to take" }).click();
  await page.locator("details", { hasText: "Way helm / boarding" }).locator("summary").click();
  await type(page, /The meter shows: boarding lamp \+.*boarding lamp .* on$/, "3 A");
  await page.getByText("a reading in V is wanted here").waitFor();
});

it("a voltage no such battery shows tells no hours; what is printed on a fuse is put on record as read by eye", async () => {
  const { page } = await visit(rig, { viewport: phone });
  await openText(page, secondSeason);
  await goToView(page, "proof");
  await page.getByRole("button", { name: "On the water" }).click();
  await page.getByLabel("The voltmeter shows").fill("124");
  const told = await page.locator(".water-left output").textContent();
  expect(told).toContain("It tells no hours");
  expect(told).not.toContain("charged (");
  await page.getByRole("button", { name: "Readings to take" }).click();
  await page.locator("details", { hasText: "Way helm / boarding" }).locator("summary").click();
  await type(page, /read what is printed on it: helm \/ boarding, its fuse/, "30");
  expect(await planText(page)).toMatch(/at: helm \/ boarding \/ fuse, shows: marked 30 A/);
  await page.getByRole("button", { name: "What may be wrong" }).click();
  await page.locator(".sheet-test", { hasText: "what is printed on helm / boarding, its fuse" }).waitFor();
  const judged = page.locator(".sheet-test", { hasText: "what is printed on helm / boarding, its fuse" });
  expect(await judged.textContent()).toContain("too high");
});
