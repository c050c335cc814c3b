// WCAG 2.2: 2.1.1 keyboard, 2.4.3 focus order, 2.4.7 focus visible, 2.4.11 focus not obscured (published). From the start view to a
// printed packet without a mouse: what has the focus is in sight and marked at each step, and the focus is never lost.
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openExample, openRig, type Rig, settled, visit } from "./help.js";

let rig: Rig;
beforeAll(async () => {
  rig = await openRig();
});
afterAll(() => rig.close());

interface Held {
  readonly name: string;
  /** Why it can't be seen where the focus is; empty where it can. */
  readonly fault: string;
}

/** What has the focus, and whether one can see that it has. */
const held = (page: Page): Promise<Held> =>
  page.evaluate(() => {
    const element = document.activeElement;
    if (!element || element === document.body) return { name: "nothing", fault: "the focus is lost" };
    const label =
      element.getAttribute("aria-label") ??
      (element instanceof HTMLInputElement || element instanceof HTMLSelectElement
        ? element.labels?.[0]?.textContent
        : element.textContent);
    const name = (label ?? "").replace(/\s+/g, " ").trim().slice(0, 60);
    const shown = element.matches("[type=radio], [type=checkbox]")
      ? (element.closest("label") ?? element)
      : element;
    const box = shown.getBoundingClientRect();
    if (box.width < 1 || box.height < 1) return { name, fault: "it has no size" };
    if (box.bottom < 1 || box.right < 1 || box.top > innerHeight - 1 || box.left > innerWidth - 1)
      return { name, fault: "it is out of sight" };
    const x = Math.min(Math.max(box.left + box.width / 2, 1), innerWidth - 1);
    const y = Math.min(Math.max(box.top + Math.min(box.height / 2, 20), 1), innerHeight - 1);
    const top = document.elementFromPoint(x, y);
    if (!top || !(shown.contains(top) || top.contains(shown)))
      return { name, fault: `under ${top?.className}` };
    if (element.matches("main, [role=dialog], .panel *[tabindex='-1']")) return { name, fault: "" };
    const ring = [element, ...element.querySelectorAll(".focus-ring, .spot-edge, .entry-nut")].some(
      (each) => {
        const style = getComputedStyle(each);
        const stroke =
          each instanceof SVGGeometryElement && style.stroke !== "none" && style.display !== "none";
        return (style.outlineStyle !== "none" && Number.parseFloat(style.outlineWidth) >= 2) || stroke;
      },
    );
    return { name, fault: ring ? "" : "nothing marks it" };
  });

/** Presses Tab until something of that name has the focus; at each step what has it must be seen to have it. */
async function tabTo(page: Page, name: string | RegExp, most = 120): Promise<void> {
  const seen: string[] = [];
  let round = false;
  for (let presses = 0; presses <= most; presses += 1) {
    const now = await held(page);
    // behind the last thing comes the browser's own frame, and then the first again
    const end = now.name === "nothing" && presses > 0 && !round;
    if (end) round = true;
    else if (presses > 0) expect(now.fault, `${now.name} after ${seen.join(" | ")}`).toBe("");
    if (now.fault === "" && (typeof name === "string" ? now.name === name : name.test(now.name))) return;
    seen.push(now.name);
    await page.keyboard.press("Tab");
  }
  throw new Error(`${name} is not reached: ${seen.slice(-40).join(" | ")}`);
}

async function stillHeld(page: Page, where: string): Promise<void> {
  await expect.poll(async () => (await held(page)).fault, { message: where, timeout: 20_000 }).toBe("");
}

test("from the start view to a printed packet of one's own boat, by keyboard only", async () => {
  const { page } = await visit(rig);
  await tabTo(page, /^New plan/);
  await page.keyboard.press("Enter");
  await page.locator(".gear-row").first().waitFor();
  await stillHeld(page, "a new plan");
  await tabTo(page, "What is it called?");
  await page.keyboard.press("Control+A");
  await page.keyboard.type("Sandpiper");
  await tabTo(page, "There is petrol on board at times");
  await page.keyboard.press("Space");
  await tabTo(page, "Take sounder");
  await page.keyboard.press("Space");
  await tabTo(page, "Make the plan");
  await page.keyboard.press("Enter");
  await settled(page);
  await stillHeld(page, "the plan");
  // the focus begins in the view: what is above it is reached backwards, or round
  await tabTo(page, "Layout");
  await page.keyboard.press("Enter");
  await page.locator('main[data-view="layout"]').waitFor();
  // Tab finds only what is drawn: the view's own code may still be on its way
  await page.getByRole("button", { name: "Place battery amidships" }).waitFor();
  await stillHeld(page, "the boat");
  await tabTo(page, "Place battery amidships");
  await page.keyboard.press("Enter");
  await settled(page);
  // its slip opens beside it; Tab goes through what is there when it is pressed
  await page.locator(".slip .field").first().waitFor();
  await stillHeld(page, "the battery");
  await tabTo(page, "Print");
  await page.keyboard.press("Enter");
  await page.locator(".print-list li").first().waitFor({ timeout: 120_000 });
  await stillHeld(page, "print");
  await tabTo(page, "Packet as PDF");
  const coming = page.waitForEvent("download", { timeout: 120_000 });
  await page.keyboard.press("Enter");
  expect((await coming).suggestedFilename()).toBe("sandpiper.pdf");
  await stillHeld(page, "printed");
});

test("the focus stays near what it was on: a slip closed, a panel closed, a last edit undone, a plan removed", async () => {
  const { page } = await visit(rig);
  await openExample(page, "tender");
  await page.getByRole("button", { name: "Leave" }).click();
  await tabTo(page, /^Hours to reserve/);
  await page.keyboard.press("Enter");
  await page.locator(".slip h2").waitFor();
  await stillHeld(page, "the slip of a figure");
  await page.keyboard.press("Escape");
  await page.locator(".slip").waitFor({ state: "detached" });
  await expect
    .poll(() => held(page))
    .toMatchObject({ name: expect.stringMatching(/^Hours to reserve/), fault: "" });

  await tabTo(page, "Settings");
  await page.keyboard.press("Enter");
  await page.locator(".panel").waitFor();
  await stillHeld(page, "settings");
  await page.keyboard.press("Escape");
  await page.locator(".panel").waitFor({ state: "detached" });
  await expect.poll(async () => (await held(page)).name).toBe("Settings");

  await tabTo(page, "Gear");
  await page.keyboard.press("Enter");
  await page.locator('[role="grid"] [tabindex="0"]').first().waitFor();
  await tabTo(page, "Duplicate");
  await page.keyboard.press("Enter");
  await settled(page);
  await stillHeld(page, "a line more");
  await tabTo(page, /^Undo/);
  await page.keyboard.press("Enter");
  await settled(page);
  await stillHeld(page, "undone");

  await tabTo(page, "All plans");
  await page.keyboard.press("Enter");
  await page.locator(".kept-plan").waitFor();
  await stillHeld(page, "the start view");
  await tabTo(page, /^Remove from this browser/);
  await page.keyboard.press("Enter");
  await page.getByRole("alertdialog").waitFor();
  await page.keyboard.press("Shift+Tab");
  expect((await held(page)).name).toBe("Remove from this browser");
  await page.keyboard.press("Enter");
  await page.locator(".kept-plan").waitFor({ state: "detached" });
  await stillHeld(page, "a plan less");
});
