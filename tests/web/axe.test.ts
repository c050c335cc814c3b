import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { viewIds } from "../../src/web/app/view-ids.js";
import { goToView, openAsFile, openRig, phone, type Rig, settled, visit } from "./help.js";

let rig: Rig;
beforeAll(async () => {
  rig = await openRig();
});
afterAll(() => rig.close());

const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

interface AxeWindow {
  readonly axe: {
    run(
      where: Document,
      options: { runOnly: readonly string[] },
    ): Promise<{ violations: { id: string; nodes: { html: string; failureSummary?: string }[] }[] }>;
  };
}

/** A sign in a drawing is named by the thing first; the figures around it are told in the order of reading, not of drawing. */
const nameInLabel = "label-content-name-mismatch";

/** What axe finds against WCAG 2.2 A and AA, each with the first place it is found at. */
async function violations(page: Page): Promise<string[]> {
  await page.evaluate(axeSource);
  const found = await page.evaluate(async () => {
    const { axe } = window as unknown as AxeWindow;
    const runOnly = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
    return (await axe.run(document, { runOnly })).violations;
  });
  const counted = found.filter(
    ({ id, nodes }) => id !== nameInLabel || !nodes.every(({ html }) => html.startsWith("<g")),
  );
  return counted.map(({ id, nodes }) => `${id}: ${nodes[0]?.html} ${nodes[0]?.failureSummary ?? ""}`);
}

const wrong = readFileSync("examples/wrong/drop-at-the-last-lamp.yaml", "utf8");

test.each([["day", "light"]] as const)(
  "every view by %s: nothing that WCAG 2.2 AA forbids",
  async (light, colorScheme) => {
    // the policy keeps axe out too: it is put in past it, in this context only
    const { page } = await visit(rig, { bypassCSP: true, colorScheme });
    expect(await page.evaluate(() => document.documentElement.dataset.light)).toBe(light);
    expect(await violations(page)).toEqual([]);
    await page.getByText("New plan", { exact: true }).click();
    await page.waitForSelector(".gear-row");
    expect(await violations(page)).toEqual([]);
    await page.goto(rig.address);
    await openAsFile(page, "wrong.yaml", wrong);
    await settled(page);
    for (const view of viewIds) {
      await goToView(page, view);
      await page.waitForLoadState("networkidle");
      const first = page.locator(".finding summary").first();
      if (view === "findings") await first.click();
      expect(await violations(page), view).toEqual([]);
    }
  },
);

test.each(["findings", "log", "text", "circuits"] as const)(
  "%s fits 360 px: nothing runs over the side, and all that is tapped is 44 px",
  async (view) => {
    const { page } = await visit(rig, { viewport: phone, hasTouch: true });
    await openAsFile(page, "wrong.yaml", wrong);
    await settled(page);
    await goToView(page, view);
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(over).toBeLessThanOrEqual(0);
    const small = await page.evaluate(() =>
      [
        ...document.querySelectorAll<HTMLElement>(
          "button:not(.figure, .term button), a[href], select, input, summary",
        ),
      ]
        .filter(
          (each) => each.checkVisibility() && !each.closest("p") && !each.matches(".away, [type=radio]"),
        )
        .filter((each) => each.getBoundingClientRect().height < 43.5)
        .map((each) => each.outerHTML.slice(0, 120)),
    );
    expect(small.filter((html) => !html.includes("ledger-note"))).toEqual([]);
  },
);
