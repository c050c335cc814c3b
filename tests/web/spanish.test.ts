// Every view in Spanish beside the same view in English: what both show alike in more than one word must be the plan's, a standard's or a unit.
import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type ViewId, viewIds } from "../../src/web/app/view-ids.js";
import { englishLeftIn } from "../words/spanish.js";
import { goToView, openRig, openText, phone, type Rig, visit } from "./help.js";

let rig: Rig;
beforeAll(async () => {
  rig = await openRig();
});
afterAll(() => rig.close());

const plan = readFileSync("examples/utility.yaml", "utf8");

/** Every text one can see or have read out, and how far the page is wider than the screen. */
async function shown(page: Page): Promise<{ texts: string[]; overPx: number }> {
  await page.evaluate(() => {
    for (const details of document.querySelectorAll("details")) details.open = true;
  });
  // words of the core come after the first that is shown in Spanish
  await page.waitForLoadState("networkidle");
  return page.evaluate(() => {
    const texts: string[] = [];
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walk.nextNode(); node !== null; node = walk.nextNode())
      if (node.parentElement?.closest("script, style, textarea, .cm-editor") === null)
        if (node.parentElement.checkVisibility() || node.parentElement.closest("svg title"))
          // the title in a drawing is what its thing is called
          texts.push(node.textContent ?? "");
    for (const element of document.querySelectorAll("[aria-label], [title], [placeholder]"))
      for (const name of ["aria-label", "title", "placeholder"]) texts.push(element.getAttribute(name) ?? "");
    return {
      texts: [...new Set(texts.map((text) => text.replaceAll(/\s+/g, " ").trim()))],
      overPx: document.documentElement.scrollWidth - document.documentElement.clientWidth,
    };
  });
}

/** What to look at: a view, with a thing of it chosen. */
const places: readonly (readonly [view: ViewId, thing?: string])[] = [
  ...viewIds.map((view) => [view] as const),
  ["layout", "sounder"],
  ["gear", "house"],
  ["circuits", "lamp trunk"],
  ["outing", "helm"],
];

const own = plan.toLowerCase().replaceAll(/\s+/g, " ");
const ownWords = new Set(own.match(/\p{L}+/gu));
const documents = /33 CFR Part 183 Subpart I|NBS Handbook|Copper Wire Tables|Electrical Installation Guide/g;

const words = (text: string) => text.match(/\p{L}{2,}/gu) ?? [];

/** Written alike in both languages, and names of rules. */
const alsoSpanish = new Set(["usual"]);
const ruleName = /^[a-z]+(-[a-z]+)+$/;

/** What of a Spanish text is English: a text that the English page has too, or a small word of English. */
function englishOf(text: string, known: ReadonlySet<string>): boolean {
  // a name of the plan that is cut short keeps the beginning of one of its words
  const cutName = (cut: string, begun: string) =>
    [...ownWords].some((word) => word.startsWith(begun.toLowerCase())) ? "" : cut;
  const said = text.replaceAll(documents, "").replaceAll(/(\p{L}+)…/gu, cutName);
  const notOwn = (word: string) => !ownWords.has(word.toLowerCase()) && !alsoSpanish.has(word.toLowerCase());
  const all = words(said);
  const alike = known.has(text) && !ruleName.test(text) && all.length > 1 && all.some(notOwn);
  return alike || englishLeftIn(said).some(notOwn);
}

test("no view shows English on the Spanish page, and none is wider than a phone", async () => {
  const [english, spanish] = await Promise.all([
    visit(rig, { viewport: phone }),
    visit(rig, { viewport: phone, locale: "es-ES" }),
  ]);
  const pages = [english.page, spanish.page] as const;
  const left = new Set<string>();
  const faultsAt = async (where: string): Promise<string[]> => {
    const [inEnglish, inSpanish] = await Promise.all(pages.map(shown));
    const known = new Set(inEnglish?.texts);
    const faults = (inSpanish?.texts ?? [])
      .filter((text) => englishOf(text, known))
      .map((text) => `${where}: ${text}`);
    const overPx = inSpanish?.overPx ?? 0;
    return overPx > 0 ? [...faults, `${where} is ${overPx} px too wide`] : faults;
  };
  const look = async (where: string) => {
    let faults = await faultsAt(where);
    // on a busy machine words that come after their view may not be there yet: what stays English is found again
    for (let again = 0; faults.length > 0 && again < 5; again += 1) {
      await spanish.page.waitForTimeout(1000);
      faults = await faultsAt(where);
    }
    for (const fault of faults) left.add(fault);
  };
  await look("start");
  await Promise.all(pages.map((page) => openText(page, plan)));
  for (const [view, thing] of places) {
    await Promise.all(pages.map((page) => goToView(page, view, thing)));
    await look([view, thing].join(" "));
    if (thing === undefined) continue;
    // how the first figure of the slip came about
    await Promise.all(
      pages.map(async (page) => {
        await page.locator(".slip button.figure").first().click();
        await page.locator(".slip .working").waitFor();
      }),
    );
    await look(`working of ${thing}`);
  }
  expect([...left]).toEqual([]);
});
