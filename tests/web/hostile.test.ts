import { afterAll, beforeAll, expect, test } from "vitest";
import { goToView, openAsFile, openExample, openRig, planText, type Rig, settled, visit } from "./help.js";

let rig: Rig;
beforeAll(async () => {
  rig = await openRig();
});
afterAll(() => rig.close());

const hostile = [
  `<img src=x onerror="window.harmed=true">`,
  `"><script>window.harmed=true</script>`,
  `=HYPERLINK("http://example.invalid","x")`,
  "\u202Egnp.evil\u202C",
  "{{constructor.constructor('window.harmed=true')()}}",
  "a\u0000b",
  "*alias &anchor !!tag",
];

/** Puts text into a field and takes it over, without the time that typing letter by letter takes. */
async function paste(page: Awaited<ReturnType<typeof visit>>["page"], selector: string, text: string): Promise<void> {
  const field = page.locator(selector).first();
  await field.fill(text);
  await field.press("Enter");
}

test("hostile text in every field of a slip does no harm and leaves a sound plan", async () => {
  const { page, complaints, context } = await visit(rig);
  await openExample(page, "utility");
  for (const thing of ["bilge pump", "lamp trunk", "house", "dawn tide"]) {
    await goToView(page, "circuits", thing);
    await page.waitForSelector(".slip .field input");
    const count = await page.locator(".slip .field input").count();
    for (let field = 0; field < count; field += 1) {
      for (const text of hostile.slice(0, 2 + (field % 5))) {
        const input = page.locator(".slip .field input").nth(field);
        if ((await input.count()) === 0) break;
        await input.fill(text);
        await input.press("Enter");
        await input.press("Escape").catch(() => undefined);
        if ((await page.locator(".slip .field input").count()) === 0) await goToView(page, "circuits", thing);
      }
      await goToView(page, "circuits", thing);
    }
  }
  await settled(page);
  expect(await page.locator(".read-problems").count()).toBe(0);
  expect(await page.evaluate(() => "harmed" in window)).toBe(false);
  expect(complaints).toEqual([]);
  await context.close();
});

test("a plan whose names are hostile is shown as text and nothing else", async () => {
  const { page, complaints, context } = await visit(rig);
  const name = `"<img src=x onerror='window.harmed=true'>\u202Egnp"`;
  await openAsFile(
    page,
    "evil.yaml",
    `skiffloom: 1
name: ${name}
rules: us
batteries: {"<b>bold</b>": {chemistry: agm, capacity: 20 Ah}}
panels: {"=1+1": {ways: {"<i>w</i>": {}}}}
gear: {"<img src=x onerror='window.harmed=true'>": {draws: 1 W}}
runs:
  feed: {from: "<b>bold</b>", to: "=1+1", length: 2 m}
  lead: {from: "=1+1 / <i>w<|i>", to: "<img src=x onerror='window.harmed=true'>", length: 2 m}
`.replace("<|i>", "<\\/i>"),
  );
  for (const view of ["findings", "log", "text", "circuits"]) await goToView(page, view);
  expect(await page.locator("h1 img, main img, .slip img").count()).toBe(0);
  expect(await page.evaluate(() => "harmed" in window)).toBe(false);
  expect(complaints).toEqual([]);
  await context.close();
});

test("a megabyte in one field is refused in a moment, and the page goes on", async () => {
  const { page, context } = await visit(rig);
  await openExample(page, "tender");
  const before = await planText(page);
  await goToView(page, "circuits", "floor lamp");
  await page.waitForSelector(".slip .field input");
  await paste(page, ".slip .field input", "x".repeat(1_000_000));
  await page.waitForSelector(".slip .problem");
  expect(await planText(page)).toBe(before);
  await context.close();
});
