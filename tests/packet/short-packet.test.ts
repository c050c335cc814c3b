import { describe, expect, test } from "vitest";
import { workOutWhole } from "../../src/core/layout-figures.js";
import { benchOf } from "../../src/core/proving/bench-network.js";
import { testSheet } from "../../src/core/proving/sheet/sheet.js";
import { waterCard } from "../../src/core/proving/water/card.js";
import { readMoment } from "../../src/core/quantity/moments.js";
import { planWork } from "../../src/core/work/plan-work.js";
import { packetPages } from "../../src/packet/packet.js";
import { shortPages } from "../../src/packet/short-packet.js";
import { paperInEnglish } from "../../src/words/paper/english.js";
import { overlaps, planAt, textsOf } from "./pages.js";

const mondayEvening = readMoment("2026-04-13 18:00");
if (!mondayEvening.ok) throw new Error("a moment does not read");
const nowMin = mondayEvening.value.atMin;

function made(name: string) {
  const plan = planAt(`examples/${name}.yaml`);
  const { figures, circuit, layout, hull } = workOutWhole(plan);
  const work = planWork(figures, { layout, hull }, nowMin);
  const proof = { sheet: testSheet(benchOf(figures.plan, circuit), figures), card: waterCard(figures) };
  const apart = { hull, layout, work, proof };
  return {
    work,
    whole: packetPages(figures, plan.shows, apart),
    tonight: shortPages(figures, plan.shows, apart, "tonight", paperInEnglish),
    project: shortPages(figures, plan.shows, apart, "project", paperInEnglish),
  };
}
type Pages = ReturnType<typeof made>["tonight"];

const titles = (pages: Pages) => [...new Set(pages.flatMap(({ parts }) => parts))];
const said = (pages: Pages) =>
  pages
    .flatMap(({ sheet }) => textsOf(sheet).map(({ text }) => text.text))
    .join(" ")
    .replaceAll("\u00a0", " ");

describe("the second season on a Monday evening", () => {
  const { work, whole, tonight, project } = made("second-season");

  test("its next free hours are Tuesday's: the steps of that evening, each once, and none of another", () => {
    expect(titles(tonight)[0]).toBe("Tuesday 2026-04-14");
    const days = work.order.steps.map(({ endMin }) => Math.floor((endMin - 1) / 1440));
    const count = days.filter((day) => day === 1).length;
    expect(count).toBeGreaterThan(5);
    expect(said(tonight)).toContain(`${count} steps`);
    expect(said(tonight)).toContain("Draw boarding cable from helm to boarding lamp");
    expect(said(tonight)).not.toContain("Hose boarding lamp");
  });
  test("with them come the sheets they need, cut down to what is in hand, and no others", () => {
    expect(titles(tonight)).toEqual([
      "Tuesday 2026-04-14",
      "Cut list",
      "Run sheet",
      "Terminations",
      "Wire flags",
      "One-line diagram",
      "Cautions",
    ]);
    expect(tonight.length).toBeLessThanOrEqual(7);
    const own = said(tonight.filter(({ caption }) => /^(Cut|Wire|Term|One)/.test(caption)));
    expect(own).toContain("boarding cable");
    expect(own).not.toContain("lamp trunk");
    expect(own).not.toContain("bilge pump");
  });
  test("the project has the evening's sheets, what is to buy and what was built besides, and is far from the whole", () => {
    expect(titles(project)[0]).toBe("The project in hand");
    expect(titles(project)).toEqual(expect.arrayContaining(["Shopping list", "As built"]));
    expect(project.length).toBeLessThan(whole.length / 2);
  });
  test("nothing stands on anything else, and no value is missing", () => {
    for (const { sheet } of [...tonight, ...project]) expect(overlaps(sheet)).toEqual([]);
    expect(said([...tonight, ...project])).not.toMatch(/undefined|NaN|\[object/);
  });
});

test("marks and boxes come along on the evening that takes them in hand; where all is done there is no page", () => {
  const plan = planAt("examples/utility.yaml");
  const { figures, circuit, layout, hull } = workOutWhole(plan);
  const proof = { sheet: testSheet(benchOf(figures.plan, circuit), figures), card: waterCard(figures) };
  const work = planWork(figures, { layout, hull }, nowMin);
  const only = (...ids: readonly string[]) => {
    const steps = work.order.steps.filter(({ step }) => ids.includes(step));
    return shortPages(
      figures,
      plan.shows,
      { hull, layout, proof, work: { ...work, order: { ...work.order, steps } } },
      "tonight",
      paperInEnglish,
    );
  };
  expect(titles(only("mark / power socket")).slice(1)).toEqual(["Marks: helm board", "Cautions"]);
  const box = only("drill box / fore box");
  expect(titles(box).slice(1)).toEqual(["Box: fore box", "Cautions"]);
  expect(only()).toEqual([]);
  // of a length from which other pieces come too, only what is cut that evening, and what becomes of the rest
  const cut = only("cut / lamp trunk");
  expect(titles(cut).slice(1)).toEqual(["Cut list", "Wire flags", "Cautions"]);
  const list = said(cut.filter(({ parts }) => parts.includes("Cut list")));
  expect(list).toContain("1 piece");
  expect(list).toContain("lamp trunk");
  expect(list).not.toContain("bilge cable");
  expect(list).toMatch(/\d+ more pieces come from this length on another day/);
});
