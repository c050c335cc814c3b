import { describe, expect, test } from "vitest";
import { workOutWhole } from "../../src/core/layout-figures.js";
import { waterCard } from "../../src/core/proving/water/card.js";
import { planWork } from "../../src/core/work/plan-work.js";
import { packetPages } from "../../src/packet/packet.js";
import { bandWords } from "../../src/words/proving.js";
import { planAt, textsOf } from "./pages.js";

/*
 * What one sheet of the packet says holds beside another, and adds up by hand. Lengths, rates and temperatures are the example's own figures;
 * capacity by temperature and age: core/reference/batteries.ts (memory; common practice, no source).
 */
const { figures, layout, hull } = workOutWhole(planAt("examples/utility.yaml"));
const card = waterCard(figures);
const work = planWork(figures, { layout, hull });
const pages = packetPages(figures, figures.plan.source.shows, { layout, work });
const linesOf = (title: string) =>
  pages
    .filter(({ parts }) => parts.some((part) => part.startsWith(title)))
    .flatMap(({ sheet }) => textsOf(sheet).map(({ text }) => text.text.replaceAll("\u00a0", " ")));
const wordsOf = (title: string) => linesOf(title).join(" ");

const inches = (words: string): number =>
  [...words.matchAll(/(?:(\d+) ft)? ?(?:(\d+)(?!\/| ft))? ?(?:(\d+)\/(\d+))? ?(?:in\b)?/g)].reduce(
    (sum, [, feet = 0, whole = 0, part = 0, of = 1]) =>
      sum + Number(feet) * 12 + Number(whole) + Number(part) / Number(of),
    0,
  );

describe("the run sheet", () => {
  test("way and every piece of slack, added up as they are printed, lead to the length that is cut", () => {
    const words = wordsOf("Run sheet");
    // as printed: 10 in to draw out + 6 in in panel + 1 1/4 in spare, and 7 7/8 in off its hole + 1 1/4 in spare, on 7 ft
    expect(words).toContain("7 7/8 in off its hole");
    const sumIn =
      7 * 12 +
      ["10 in", "6 in", "1 1/4 in", "7 7/8 in", "1 1/4 in"].reduce((sum, one) => sum + inches(one), 0);
    expect(Math.ceil(sumIn)).toBe(inches("9 ft 3 in"));
    expect(words).toContain("9 ft 3 in");
  });
});

describe("sheets that speak of the same thing", () => {
  test("under a run on the one-line drawing stands the length that the run sheet and the cut list have cut, and it is called so", () => {
    const drawing = wordsOf("One-line diagram");
    // the battery feed by the run sheet, as added up above for its neighbour: way and slack, up to the next inch
    for (const { run, cut } of layout.routes.runs.filter(({ run }) =>
      ["battery feed", "lamp trunk"].includes(run),
    )) {
      const { lengthM, ends } = figures.plan.runs.find(({ name }) => name === run) ?? {};
      if (lengthM === undefined || ends === undefined) throw new Error(run);
      const slackM = [...cut.start, ...cut.end].reduce((sum, part) => sum + part.lengthM, 0);
      const cutIn = Math.ceil((lengthM + slackM) / 0.0254 - 1e-6);
      const words = `cut ${Math.floor(cutIn / 12)} ft${cutIn % 12 === 0 ? "" : ` ${cutIn % 12} in`}`;
      expect(drawing).toContain(words);
      expect(wordsOf("Cut list")).toContain(words.slice(4));
    }
  });

  test("a butt of two colours is named by both where it is made, as where it is bought", () => {
    expect(wordsOf("Shopping list")).toContain("sealed butt, blue to yellow");
    expect(wordsOf("Terminations")).toContain("blue to");
    expect(wordsOf("Terminations")).not.toContain("sealed butt, yellow");
  });

  test("a mark is set out by the same words in the order of work and on its own sheet", () => {
    const tender = workOutWhole(planAt("examples/tender.yaml"));
    const steps = planWork(tender.figures, tender);
    const sheets = packetPages(tender.figures, tender.figures.plan.source.shows, {
      layout: tender.layout,
      hull: tender.hull,
      work: steps,
    });
    const said = (title: string) =>
      sheets
        .filter(({ parts }) => parts.some((part) => part.startsWith(title)))
        .flatMap(({ sheet }) => textsOf(sheet).map(({ text }) => text.text.replaceAll("\u00a0", " ")))
        .join(" ");
    expect(said("Order of work")).toContain("20 in from left top along the top edge, to the right");
    expect(said("Marks")).toContain("20 in from C, to the right 3 1/2 in off the top edge");
    expect(said("Order of work")).toContain("must hold 16 lbf"); // four fifths of the 20 lbf on the terminations, in the owner's unit
    expect(said("Order of work")).not.toMatch(/along edge \d|-\d+ in from/);
  });

  test("a run on the one-line diagram carries what its gear draws, also where that waits for its turn", () => {
    const lines = linesOf("One-line diagram");
    const at = lines.indexOf("livewell cable");
    expect(lines.slice(at - 3, at + 4)).toContain("3.20 A");
    expect(lines).not.toContain("0.00 A");
  });

  test("what a hand needs to add the drops up stands over the assumptions", () => {
    const words = wordsOf("Assumptions");
    for (const said of ["0.5 mΩ", "0.6 mΩ", "0.12 V", "0.09 V", "0.05 V", "10 K", "80 %"])
      expect(words).toContain(said);
  });

  test("a spare way has no fuse on any sheet", () => {
    expect(card.spareFuses.find(({ ratingA }) => ratingA === 1)?.inUse).toBe(4);
    const built = linesOf("As built");
    expect(built[built.indexOf("helm / spare / fuse") + 1]).toBe("none yet");
  });

  test("a run whose gear waits for its turn has the drop it has then", () => {
    const lines = linesOf("Conductor schedule");
    const at = lines.indexOf("livewell cable");
    // 3.2 A through 8 ft 9 in and the slack (10 in to draw out, 15 cm at the panel, 20 cm off its hole, 3 cm each to make again) of tinned 18 AWG out and back at 48 °C, and its four joints (FAA AC 43.13-1B table 11-9 against the gauge's own area)
    const areaMm2 = (Math.PI / 4) * (0.127 * 92 ** ((36 - 18) / 39)) ** 2;
    const ohmPerM = Math.max(6.23 / 304.8, (1.022 * 1.03 * 1.06) / 58 / areaMm2) * (1 + 0.00393 * 28);
    const pulledM = 115 * 0.0254 + 0.41;
    const dropV = 2 * 3.2 * (pulledM * ohmPerM + (0.0005 + 0.0006) / areaMm2);
    expect(lines.slice(at, at + 14)).toContain(dropV.toFixed(2));
  });

  test("the card tells no more hours than the outing's own cold battery has", () => {
    const [battery] = card.batteries;
    const at = battery?.uses.findIndex(({ outing }) => outing === "dawn tide") ?? -1;
    const useA = battery?.uses[at]?.useA ?? Number.NaN;
    const usableAh = 50 * (0.8 + (0.2 * 6) / 25) * (1 - 2 * 0.05); // 6 °C, two years
    expect(battery?.rows[0]?.left[at]?.hoursToReserve).toBeLessThanOrEqual((0.5 * usableAh) / useA + 1e-9);
  });
});

describe("limits of a reading", () => {
  const band = (low: number, high: number) => ({ expected: (low + high) / 2, low, high });
  test("both ends stand in one unit, that of the meter's range", () => {
    expect(bandWords("voltage", band(0.066, 0.217)).replaceAll("\u00a0", " ")).toBe("0.066 to 0.217 V");
    expect(bandWords("voltage", band(0.0105, 0.0154)).replaceAll("\u00a0", " ")).toBe("10.5 to 15.4 mV");
  });
  test("a current too small for the clamp has no least, and none below nothing", () => {
    expect(bandWords("current", band(-0.04, 0.08)).replaceAll("\u00a0", " ")).toBe("at most 0.08 A");
  });
});
