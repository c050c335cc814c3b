// What a screen reader is given: names and descriptions in the browser's accessibility tree, what live regions say, where the focus goes.
// Each line below was first heard wrong from a real one (docs/screen-reader.md). WCAG 2.2: 2.4.2, 2.4.3, 4.1.2, 4.1.3 (published).
import { readFileSync } from "node:fs";
import type { Locator, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { viewIds } from "../../src/web/app/view-ids.js";
import { goToView, openExample, openRig, openText, phone, type Rig, settled, visit } from "./help.js";

let rig: Rig;
beforeAll(async () => {
  rig = await openRig();
});
afterAll(() => rig.close());

interface Told {
  readonly role: string;
  readonly name: string;
  readonly description: string;
  readonly focusable: boolean;
}

/** The browser's accessibility tree, as a list of what is told. */
async function tree(page: Page): Promise<Told[]> {
  const session = await page.context().newCDPSession(page);
  const { nodes } = await session.send("Accessibility.getFullAXTree");
  await session.detach();
  return nodes
    .filter(({ ignored }) => !ignored)
    .map(({ role, name, description, properties }) => ({
      role: String(role?.value ?? ""),
      name: String(name?.value ?? ""),
      description: String(description?.value ?? ""),
      focusable: properties?.some((one) => one.name === "focusable" && one.value.value === true) ?? false,
    }));
}

/** Gathers what live regions say from now on. */
async function listen(page: Page): Promise<() => Promise<string[]>> {
  await page.evaluate(() => {
    const live = "[role=status], [role=alert], output, [aria-live=polite], [aria-live=assertive]";
    const said: string[] = [];
    Object.assign(window, { said });
    const hear = (node: Node) => {
      const element = node instanceof Element ? node : node.parentElement;
      const region = element?.closest(live) ?? (node instanceof Element ? node.querySelector(live) : null);
      const text = region?.textContent?.trim() ?? "";
      if (text !== "") said.push(text);
    };
    new MutationObserver((changes) => {
      for (const { type, target, addedNodes } of changes)
        if (type === "characterData") hear(target);
        else for (const node of addedNodes) hear(node);
    }).observe(document.body, { childList: true, subtree: true, characterData: true });
  });
  return () => page.evaluate(() => Reflect.get(window, "said") as string[]);
}

/** What is said comes once it rests; a busy machine takes its time. */
const hears = (said: () => Promise<string[]>, what: unknown) =>
  expect.poll(said, { timeout: 20_000 }).toContainEqual(what);

const utility = readFileSync("examples/utility.yaml", "utf8");
const hasFocus = (locator: Locator) => locator.evaluate((element) => element === document.activeElement);

test("every view: all one can use has a name, told once, and the window is called by the view", async () => {
  const { page } = await visit(rig);
  expect(await page.title()).toMatch(/^Plan the .* – Skiffloom$/);
  await openText(page, utility);
  const faults: string[] = [];
  for (const view of viewIds) {
    await goToView(page, view);
    await page.waitForLoadState("networkidle");
    expect(await page.title(), view).toMatch(/^.+ – Grey Heron, lamps and sounder – Skiffloom$/);
    for (const { role, name, description, focusable } of await tree(page)) {
      if (!focusable || role === "RootWebArea") continue;
      // a cell may be empty
      if (name.trim() === "" && role !== "gridcell") faults.push(`${view}: a ${role} has no name`);
      // a button's tooltip that says the same is passed over, as was heard
      if (name !== "" && name === description && role !== "button")
        faults.push(`${view}: ${role} ${name} is told twice`);
      // signs that fold and unfold are drawn, and mean "plus" and "minus" to an ear
      if (/^[+−!]/.test(name)) faults.push(`${view}: ${role} ${name} begins with a sign`);
    }
  }
  expect(faults).toEqual([]);
});

test("the drawing: each thing is a choice, told once; a nudge says where it came to and what follows, and nothing else", async () => {
  const { page } = await visit(rig);
  await openText(page, utility);
  await goToView(page, "layout");
  const here = page.locator(".boat-sheet [data-thing][tabindex='0']");
  await here.focus();
  const choices = (await tree(page)).filter(({ role }) => role === "option");
  const things = new Set(
    await page.locator(".boat-sheet [data-thing]").evaluateAll((all) => all.map((one) => one.dataset.thing)),
  );
  expect(choices.map(({ name }) => name.split(",")[0])).toHaveLength(things.size);
  const list = (await tree(page)).find(({ role }) => role === "listbox");
  expect(list?.name).toContain("drawn to scale");
  expect(list?.description).toContain("arrow keys move it");
  const said = await listen(page);
  for (let press = 0; press < 3; press += 1) await page.keyboard.press("ArrowRight");
  await hears(said, expect.stringMatching(/^house: .* forward, .* up$/));
  await settled(page);
  // N goes on: a screen reader may keep the page keys
  await page.keyboard.press("n");
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.getAttribute("aria-label")))
    .toMatch(/^helm|^coaming/);
  await page.keyboard.press("Enter");
  await hears(said, expect.stringMatching(/^Slip of /));
  await page.keyboard.press("Control+z");
  await hears(said, expect.stringMatching(/^Undone: .*house/));
  const positions = (await said()).filter((text) => text.startsWith("house: "));
  expect(new Set(positions).size, "one sentence for three presses").toBe(1);
  expect((await said()).filter((text) => /Keep|Kept/.test(text))).toEqual([]);
});

test("what an edit changes in the ledger line is said once it rests; while a thing is dragged nothing is", async () => {
  const { page } = await visit(rig);
  await openText(page, utility);
  await goToView(page, "outing");
  const said = await listen(page);
  const bar = page.locator(".bar").first();
  const box = await bar.boundingBox();
  if (!box) throw new Error("the bar is not drawn");
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  for (let step = 1; step <= 12; step += 1)
    await page.mouse.move(box.x + box.width / 2 + 8 * step, box.y + 5);
  await page.waitForTimeout(1500);
  expect(await said(), "in the hand").toEqual([]);
  await page.mouse.up();
  await settled(page);
  // one end later by hours: the battery lasts otherwise
  await page.locator(".bar-end[data-end=end]").first().focus();
  await page.keyboard.press("PageDown");
  await hears(said, expect.stringMatching(/^Hours to reserve: .+\.$/));
  // findings are counted anew when one is mended
  await openTextAnew(page, readFileSync("examples/wrong/fuse-too-large-for-thin-leads.yaml", "utf8"));
  await goToView(page, "findings");
  const saidNow = await listen(page);
  const finding = page.locator(".finding", { has: page.locator(".remedies") }).first();
  await finding.locator("summary").click();
  await finding.getByRole("button", { name: "Show what it changes" }).first().focus();
  await page.keyboard.press("Enter");
  await hears(saidNow, "What would change");
  await finding.locator(".remedies .main").first().focus();
  await page.keyboard.press("Enter");
  await hears(saidNow, expect.stringMatching(/Findings: 0 Stop/));
  // the finding is gone: the focus comes to a heading, not to a group that would be read as one long sentence
  await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toMatch(/^H[23]$/);
});

async function openTextAnew(page: Page, text: string): Promise<void> {
  await page.goto(rig.address);
  await openText(page, text);
}

test("the focus goes where a link leads when it is followed by key, and back to the map when a slip closes", async () => {
  const { page } = await visit(rig);
  await openText(page, utility);
  await page.locator("[data-stage=circuits] a").focus();
  await page.keyboard.press("Enter");
  await expect.poll(() => hasFocus(page.locator("main[data-view=circuits]"))).toBe(true);
  const spot = page.locator('.spot[data-name="side lights"]').first();
  await spot.focus();
  await page.keyboard.press("Enter");
  await expect.poll(() => hasFocus(page.locator(".slip h2"))).toBe(true);
  await page.keyboard.press("Escape");
  await page.locator(".slip").waitFor({ state: "detached" });
  await expect.poll(() => hasFocus(spot)).toBe(true);
  const told = (await tree(page)).filter(({ role }) => role === "treeitem");
  expect(told.length).toBeGreaterThan(10);
  expect(told.filter(({ description }) => description !== "")).toEqual([]);
  expect(told.filter(({ name }) => name.includes("·"))).toEqual([]);
  // a mouse leaves the focus on what it clicked
  await page.locator("[data-stage=boxes] a").click();
  await page.locator("main[data-view=boxes]").waitFor();
  expect(await hasFocus(page.locator("[data-stage=boxes] a"))).toBe(true);
  // a panel gives it to the first thing one can use, and back
  for (const [name, first] of [
    ["Settings", "input:checked"],
    ["Tools", "a"],
  ] as const) {
    await page.getByRole("button", { name }).focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => hasFocus(page.locator(`.panel ${first}`).first()), { message: name }).toBe(true);
    await page.keyboard.press("Escape");
    await expect.poll(() => hasFocus(page.getByRole("button", { name })), { message: name }).toBe(true);
  }
});

test("a cell's fault is told beside its text, not in it; picks and a line not yet in the plan are said", async () => {
  const { page } = await visit(rig);
  await openText(page, utility);
  await goToView(page, "gear");
  const said = await listen(page);
  const cell = page.locator('[role=grid] [data-row="1"][data-column="2"]');
  await cell.click();
  await page.keyboard.press("Enter");
  await page.keyboard.press("Control+a");
  await page.keyboard.type("3 bananas");
  await page.keyboard.press("Enter");
  await hears(said, expect.stringMatching(/^1 cell is not taken over/));
  const wrong = (await tree(page)).find(({ name }) => name === "3 bananas");
  expect(wrong?.description).toContain("Wanted: what it takes");
  await page.keyboard.press("Home");
  await page.keyboard.press("ArrowLeft");
  await page.keyboard.press("Space");
  await hears(said, "1 picked");
  await page.getByRole("button", { name: "Add a line" }).click();
  await page.keyboard.type("anchor lamp");
  await page.keyboard.press("Enter");
  await hears(said, expect.stringMatching(/^Not in the plan yet. Wanted: Draws/));
});

test("a reading is asked for with what to expect, a mend can carry a note, and a moment of the log says which it is", async () => {
  const { page } = await visit(rig);
  await openExample(page, "second-season");
  await goToView(page, "proof");
  await page.locator(".suspects button").first().click();
  const note = page.getByLabel("Note", { exact: true });
  await note.fill("crimp pulled off, made anew");
  await note.press("Enter");
  await settled(page);
  await goToView(page, "text");
  expect(await page.locator(".text-view textarea").inputValue()).toMatch(
    /^mends: .*note: "crimp pulled off, made anew"/m,
  );
  await goToView(page, "proof");
  await page.getByRole("button", { name: "What may be wrong" }).click();
  await expect.poll(() => note.inputValue()).toBe("crimp pulled off, made anew");
  await page.getByRole("button", { name: "Readings to take" }).click();
  await page.locator(".sheet-part summary").nth(1).click();
  const field = (await tree(page)).find(({ name }) => name.startsWith("The meter shows: "));
  expect(field?.description).toMatch(/Ω|V/);
  await goToView(page, "log");
  const restore = (await tree(page)).filter(
    ({ role, name }) => role === "button" && name === "Go back to this",
  );
  expect(restore.length).toBeGreaterThan(0);
  expect(restore.filter(({ description }) => description === "")).toEqual([]);
});

test("the notes of the walk lie over nothing one needs, on a phone too", async () => {
  const { page } = await visit(rig, { viewport: phone, hasTouch: true });
  await openExample(page, "utility");
  await page.locator(".walk").waitFor();
  await goToView(page, "build");
  const done = page.locator(".step-done");
  await done.scrollIntoViewIfNeeded();
  const free = () =>
    done.evaluate((button) => {
      button.scrollIntoView({ block: "end" });
      const { left, right, bottom } = button.getBoundingClientRect();
      return button.contains(
        document.elementFromPoint((left + right) / 2, Math.min(bottom, innerHeight) - 4),
      );
    });
  await expect.poll(free).toBe(true);
  // nothing of the walk stays on the screen when the page is scrolled past it
  await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
  const walk = await page.locator(".walk").boundingBox();
  expect((walk?.y ?? 0) + (walk?.height ?? 0)).toBeLessThan(0);
});
