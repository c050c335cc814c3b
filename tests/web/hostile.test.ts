import type { Page } from "playwright-core";
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

/** Puts text into a field of the open slip and takes it over, without the time that typing letter by letter takes. */
async function paste(page: Page, field: number, text: string): Promise<void> {
  await page.evaluate(
    ([no, pasted]) => {
      const input = document.querySelectorAll<HTMLInputElement>(".slip .field input")[no];
      if (!input) return;
      Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")?.set?.call(input, pasted);
      input.dispatchEvent(new Event("input", { bubbles: true }));
      input.dispatchEvent(new KeyboardEvent("keydown", { key: "Enter", bubbles: true }));
    },
    [field, text] as const,
  );
}

test("hostile text in every field of a slip does no harm and leaves a sound plan", async () => {
  const { page } = await visit(rig);
  await openExample(page, "tender");
  for (const [turn, thing] of ["stern pole light", "floor lamp cable"].entries()) {
    await goToView(page, "text", thing);
    const fields = page.locator(".slip .field input");
    await fields.first().waitFor();
    const count = await fields.count();
    for (let field = 0; field < count; field += 1) {
      await paste(page, field, hostile[(field + turn) % hostile.length] ?? "");
      // a name that was taken is another thing's name now
      if ((await fields.count()) === 0) await goToView(page, "text", thing);
    }
  }
  await settled(page);
  expect(await page.locator(".read-problems").count()).toBe(0);
  expect(await page.evaluate(() => "harmed" in window)).toBe(false);
});

test("a plan whose names are hostile is shown as text and nothing else", async () => {
  const { page } = await visit(rig);
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
  for (const view of ["findings", "log", "text", "circuits"] as const) await goToView(page, view);
  expect(await page.locator("h1 img, main img, .slip img").count()).toBe(0);
  expect(await page.evaluate(() => "harmed" in window)).toBe(false);
});

test("a megabyte in one field is refused in a moment, and the page goes on", async () => {
  const { page } = await visit(rig);
  await openExample(page, "tender");
  const before = await planText(page);
  await goToView(page, "circuits", "floor lamp");
  await page.waitForSelector(".slip .field input");
  await paste(page, 0, "x".repeat(1_000_000));
  await page.waitForSelector(".slip .problem");
  expect(await planText(page)).toBe(before);
});
