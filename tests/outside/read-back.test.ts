import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import type { FaceTemplate } from "../../src/core/box/template.js";
import { workOutWhole } from "../../src/core/layout-figures.js";
import { readPlan } from "../../src/core/plan/read.js";
import { faceSheet } from "../../src/drawing/template-sheet.js";
import { dxfSheet } from "../../src/drawing/writers/dxf.js";
import { svgSheet } from "../../src/drawing/writers/svg.js";
import { packetPages, packetPdf } from "../../src/packet/packet.js";
import { fonts } from "../drawing/help.js";

/**
 * Templates read back by programs that know nothing of this project: the PDF through the drawing it makes in poppler
 * (`pdftocairo -svg`, Debian package poppler-utils), the DXF through the npm package dxf-parser, the SVG as Chromium (Debian
 * package chromium) prints it, measured in the PDF that it makes. All to 0.05 mm.
 */
const toleranceMm = 0.05;
const whole = (() => {
  const read = readPlan(readFileSync(new URL("../../examples/utility.yaml", import.meta.url), "utf8"));
  if (!read.ok) throw new Error(JSON.stringify(read.problems[0]));
  return { ...workOutWhole(read.plan), shows: read.plan.shows };
})();
const templates = whole.layout.boxes.flatMap((box) => box.templates);

interface Ring {
  readonly x: number;
  readonly y: number;
  readonly diameterMm: number;
}

/** Each hole of the template is drawn, and as far from each other hole on the same page as the plan has it. */
function holdsTo(template: FaceTemplate, rings: readonly Ring[]): number {
  const alike = (diameterMm: number) => rings.filter((ring) => Math.abs(ring.diameterMm - diameterMm) < 0.1);
  let pairs = 0;
  for (const [index, a] of template.holes.entries()) {
    for (const b of template.holes.slice(index + 1)) {
      const apart = Math.hypot(a.x - b.x, a.y - b.y);
      const found = alike(a.holeMm).some((one) =>
        alike(b.holeMm).some(
          (other) =>
            one !== other &&
            Math.abs(one.x - other.x - (a.x - b.x)) < toleranceMm &&
            Math.abs(one.y - other.y - (a.y - b.y)) < toleranceMm &&
            Math.abs(Math.hypot(one.x - other.x, one.y - other.y) - apart) < toleranceMm,
        ),
      );
      if (found) pairs += 1;
    }
  }
  return pairs;
}

const pairsOf = ({ holes }: FaceTemplate): number => (holes.length * (holes.length - 1)) / 2;

describe.each(["letter", "a4"] as const)("PDF on %s", (paper) => {
  let pages: readonly { caption: string; rings: Ring[]; straightMm: number[] }[];
  beforeAll(async () => {
    const shows = { ...whole.shows, paper };
    const apart = { layout: whole.layout };
    const pdf = await packetPdf(whole.figures, shows, fonts, undefined, apart);
    const captions = packetPages(whole.figures, shows, apart).map(({ caption }) => caption);
    const folder = mkdtempSync(join(tmpdir(), "skiffloom-read-back-"));
    try {
      const file = join(folder, "packet.pdf");
      writeFileSync(file, pdf);
      pages = captions.flatMap((caption, index) => {
        if (!caption.startsWith("Box: ")) return [];
        const page = String(index + 1);
        execFileSync("pdftocairo", [
          "-svg",
          "-noshrink",
          "-nocenter",
          "-f",
          page,
          "-l",
          page,
          file,
          join(folder, "page.svg"),
        ]);
        return [{ caption, ...drawnOn(readFileSync(join(folder, "page.svg"), "utf8")) }];
      });
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  }, 120_000);

  test("distances between centres, pair by pair", () => {
    for (const template of templates) {
      const here = pages.filter(({ caption }) => caption.startsWith(`Box: ${template.box}`));
      const counts = here.map(({ rings }) => holdsTo(template, rings));
      // A face on one sheet has all its pairs there; on two, each sheet has those of its own holes.
      const onOneSheet = template.widthMm < 240;
      expect(Math.max(...counts), template.box).toBeGreaterThanOrEqual(onOneSheet ? pairsOf(template) : 40);
    }
  });

  test("the bar of 100 mm and the square of 50 mm measure so", () => {
    const withTemplates = pages.filter(({ rings }) => rings.length > 6);
    expect(withTemplates.length).toBeGreaterThanOrEqual(templates.length);
    for (const { straightMm } of withTemplates) {
      expect(straightMm.some((mm) => Math.abs(mm - 100) < toleranceMm)).toBe(true);
      expect(straightMm.filter((mm) => Math.abs(mm - 50) < toleranceMm).length).toBeGreaterThanOrEqual(2);
    }
  });
});

/** Circles and straight strokes of an SVG page, in millimetres from its lower left corner: paths with their matrices. */
function drawnOn(svg: string): { rings: Ring[]; straightMm: number[] } {
  const heightPt = Number(/viewBox="0 0 [\d.]+ ([\d.]+)"/.exec(svg)?.[1] ?? Number.NaN);
  const mm = 25.4 / 72;
  const rings: Ring[] = [];
  const straightMm: number[] = [];
  for (const [, attributes = ""] of svg.matchAll(/<path ([^>]*)\/>/g)) {
    const d = / d="([^"]*)"/.exec(` ${attributes}`)?.[1] ?? "";
    const matrix = /transform="matrix\(([^)]*)\)"/.exec(attributes)?.[1];
    const [a = 1, b = 0, c = 0, e = 1, tx = 0, ty = 0] = matrix?.split(/[ ,]+/).map(Number) ?? [];
    const steps = [...d.matchAll(/([MLCZ])([^MLCZ]*)/g)].map(([, to = "", rest = ""]) => {
      const numbers = rest.trim().split(/[ ,]+/).filter(Boolean).map(Number);
      const [x = Number.NaN, y = Number.NaN] = numbers.slice(-2);
      return { to, x: (a * x + c * y + tx) * mm, y: (heightPt - (b * x + e * y + ty)) * mm };
    });
    const at = steps.filter(({ to }) => to !== "Z");
    const xs = at.map(({ x }) => x);
    const ys = at.map(({ y }) => y);
    const [width, height] = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
    // four curves or more that come back to where they began
    const curves = steps.filter(({ to }) => to === "C").length;
    const [first, last] = [at[0], at.at(-1)];
    const closes = first && last && Math.hypot(first.x - last.x, first.y - last.y) < 0.01;
    if (curves >= 4 && closes && Math.abs(width - height) < 0.02)
      rings.push({ x: Math.min(...xs) + width / 2, y: Math.min(...ys) + height / 2, diameterMm: width });
    else
      at.slice(1).forEach((point, index) => {
        const before = at[index];
        if (before && point.to === "L") straightMm.push(Math.hypot(point.x - before.x, point.y - before.y));
      });
  }
  return { rings, straightMm };
}

describe("SVG, printed by a browser", () => {
  let pages: readonly { rings: Ring[]; straightMm: number[] }[];
  beforeAll(() => {
    const folder = mkdtempSync(join(tmpdir(), "skiffloom-print-"));
    try {
      // Each on a sheet of paper that is larger than it, so that the browser has no reason to shrink it.
      const drawings = templates.map(
        (template) => `<section>${svgSheet(faceSheet(template, "print"))}</section>`,
      );
      const style =
        "@page{size:600mm 400mm;margin:0}body{margin:0}section{break-after:page;padding:10mm}svg{display:block}";
      writeFileSync(
        join(folder, "page.html"),
        `<!doctype html><meta charset="utf-8"><style>${style}</style>${drawings.join("")}`,
      );
      execFileSync(
        "chromium",
        [
          "--headless",
          "--no-sandbox",
          "--disable-gpu",
          "--no-first-run",
          `--user-data-dir=${join(folder, "profile")}`,
          "--no-pdf-header-footer",
          `--print-to-pdf=${join(folder, "print.pdf")}`,
          `file://${join(folder, "page.html")}`,
        ],
        { stdio: "ignore" },
      );
      pages = templates.map((_, index) => {
        const page = ["-f", String(index + 1), "-l", String(index + 1)];
        const to = join(folder, "print.svg");
        execFileSync("pdftocairo", ["-svg", ...page, join(folder, "print.pdf"), to]);
        return drawnOn(readFileSync(to, "utf8"));
      });
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  }, 120_000);

  test.each(
    templates.map((template, index) => [`${template.box}, ${template.face}`, template, index] as const),
  )(
    "%s: every hole where the plan has it and as large, the outline, the bar and the square",
    (_, template, index) => {
      const { rings, straightMm } = pages[index] ?? { rings: [], straightMm: [] };
      expect(holdsTo(template, rings)).toBe(pairsOf(template));
      for (const { holeMm, pilotMm } of template.holes)
        for (const wanted of [holeMm, pilotMm])
          expect(
            rings.some(({ diameterMm }) => Math.abs(diameterMm - wanted) < toleranceMm),
            `${wanted}`,
          ).toBe(true);
      // four inches are 101.6 mm by the definition of the inch (international yard and pound agreement, 1959)
      for (const wanted of [template.widthMm, template.heightMm, template.barMm, template.squareMm, 101.6])
        expect(
          straightMm.some((mm) => Math.abs(mm - wanted) < toleranceMm),
          `${wanted}`,
        ).toBe(true);
    },
  );
});

interface Entity {
  readonly type: string;
  readonly center?: { readonly x: number; readonly y: number };
  readonly radius?: number;
}
type Parser = new () => { parseSync(text: string): { header: Record<string, unknown>; entities: Entity[] } };
const dxfParser = createRequire(import.meta.url)("dxf-parser") as Parser | { readonly default: Parser };

describe("DXF", () => {
  const DxfParser = "default" in dxfParser ? dxfParser.default : dxfParser;
  test.each(templates.map((template) => [`${template.box}, ${template.face}`, template] as const))(
    "%s: every hole and pilot where the plan has it, in millimetres",
    (_, template) => {
      const read = new DxfParser().parseSync(dxfSheet(faceSheet(template, "cut")));
      expect(read.header.$INSUNITS).toBe(4);
      const rings = read.entities.flatMap(({ type, center, radius }): Ring[] =>
        type === "CIRCLE" && center && radius !== undefined
          ? [{ x: center.x, y: center.y, diameterMm: 2 * radius }]
          : [],
      );
      expect(holdsTo(template, rings)).toBe(pairsOf(template));
      for (const { holeMm, pilotMm } of template.holes) {
        expect(rings.some(({ diameterMm }) => Math.abs(diameterMm - holeMm) < 1e-6)).toBe(true);
        expect(rings.some(({ diameterMm }) => Math.abs(diameterMm - pilotMm) < 1e-6)).toBe(true);
      }
    },
  );
});
