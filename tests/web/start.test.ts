import { afterAll, beforeAll, expect, test } from "vitest";
import { goToView, openExample, openRig, planText, type Rig, settled, typeInto, visit } from "./help.js";

let rig: Rig;
beforeAll(async () => {
  rig = await openRig();
});
afterAll(() => rig.close());

test("an example opens with its figures, an edit is kept, and a reload shows it again", async () => {
  const { page } = await visit(rig);
  await openExample(page, "tender");
  await goToView(page, "circuits", "floor lamp");
  await typeInto(page, "draws", "2 W");
  await settled(page);
  await page.reload();
  await settled(page);
  expect(await planText(page)).toContain("draws: 2 W");
});
