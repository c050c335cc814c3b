import { describe, expect, test } from "vitest";
import { workOutWhole } from "../../../src/core/layout-figures.js";
import { planWork } from "../../../src/core/work/plan-work.js";
import { boundsOf } from "../../../src/drawing/bounds.js";
import { textWidthMm } from "../../../src/drawing/fonts/measure.js";
import { marksScale } from "../../../src/drawing/hull/marks-scale.js";
import type { Shape } from "../../../src/drawing/shapes.js";
import { planOfRuns } from "../../../src/drawing/work/step-circuit.js";
import { type StepDrawing, stepDrawings } from "../../../src/drawing/work/step-drawing.js";
import { planAt } from "../../packet/pages.js";

const plan = planAt("examples/utility.yaml");
const whole = workOutWhole(plan);
const { step } = planWork(whole.figures, whole);
const room = { widthMm: 100, mostMm: 76 };

function drawn(id: string, at = room): readonly StepDrawing[] {
  const found = step.get(id);
  if (found === undefined) throw new Error(`no step ${id}`);
  return stepDrawings(found, whole, plan.shows, at);
}

function* textsOf(shapes: readonly Shape[]): Generator<string> {
  for (const shape of shapes) {
    if (shape.kind === "text") yield shape.text.replaceAll("\u00a0", " ");
    if (shape.kind === "group") yield* textsOf(shape.shapes);
  }
}

describe("every drawing of every step", () => {
  const all = [...step.values()].flatMap((one) => stepDrawings(one, whole, plan.shows, room));
  test("stays in its own room, and says what it shows", () => {
    expect(all.length).toBeGreaterThan(30);
    for (const { shapes, widthMm, heightMm, words } of all) {
      for (const shape of shapes) {
        const { minX, maxX, minY, maxY } = boundsOf(shape);
        expect(minX, words).toBeGreaterThanOrEqual(-0.5);
        expect(maxX, words).toBeLessThanOrEqual(widthMm + 0.5);
        expect(minY, words).toBeGreaterThanOrEqual(-0.5);
        expect(maxY, words).toBeLessThanOrEqual(heightMm + 0.5);
      }
      expect(words).toMatch(/^.{20,}\.$/);
      expect(words).not.toMatch(/undefined|NaN/);
    }
  });
});

test("a box that is drilled shows its face: as many holes as entries, each named with its size", () => {
  const [face] = drawn("drill box / fore box");
  const template = whole.layout.boxes.find(({ box }) => box === "fore box")?.templates[0];
  expect(template?.holes.length).toBeGreaterThan(1);
  for (const { id, holeMm } of template?.holes ?? []) expect(face?.words).toContain(`${id}, Ø ${holeMm} mm`);
  // outline, lip and arrow are lines: rings alone are circles, nut, hole and pilot
  expect(face?.shapes.filter(({ kind }) => kind === "circle")).toHaveLength(
    3 * (template?.holes.length ?? 0),
  );
});

test("made smaller, a face keeps its proportions and its holes their places", () => {
  const [large] = drawn("drill box / helm", { widthMm: 400, mostMm: 300 });
  const [small] = drawn("drill box / helm", { widthMm: 80, mostMm: 40 });
  const rings = (one: StepDrawing | undefined) =>
    (one?.shapes ?? []).flatMap((shape) => (shape.kind === "circle" ? [shape] : []));
  const [a, b] = [rings(large), rings(small)];
  expect(b).toHaveLength(a.length);
  const scale = (a[0]?.r ?? 0) / (b[0]?.r ?? 1);
  expect(scale).toBeGreaterThan(2);
  for (const [index, ring] of a.entries()) {
    const other = b[index];
    expect(ring.r / (other?.r ?? 0)).toBeCloseTo(scale, 9);
    expect((ring.cx - (a[0]?.cx ?? 0)) / scale).toBeCloseTo((other?.cx ?? 0) - (b[0]?.cx ?? 0), 9);
  }
});

test("the marks of one piece have its tapes with their readings on them, and nobody else's", () => {
  const [board] = drawn("mark / voltmeter");
  const said = [...textsOf(board?.shapes ?? [])];
  expect(board?.words).toContain("voltmeter; A ");
  for (const { m } of step
    .get("mark / voltmeter")
    ?.sizes.flatMap((one) => (one.what === "mark" ? one.readings : [])) ?? [])
    expect(said.some((words) => words.endsWith(" in") && Math.abs(inches(words) - m / 0.0254) < 1e-6)).toBe(
      true,
    );
  expect(said).not.toContain("power socket");
});

test("a reading is never covered: at any size it stands clear of every name and letter, or is left out", () => {
  let seen = 0;
  for (const widthMm of [60, 84, 100, 150, 190])
    for (const id of ["mark / voltmeter", "mark / power socket", "mark / coaming lamp"])
      for (const { shapes } of drawn(id, { widthMm, mostMm: widthMm / 2 })) {
        const texts = shapes.flatMap((shape) => (shape.kind === "text" ? [shape] : []));
        const names = texts
          .filter(({ turnDeg, text }) => turnDeg === 0 && !/ (in|mm)$/.test(text))
          .map(boundsOf);
        for (const figure of texts.filter(({ text }) =>
          /\d.* (in|mm)$/.test(text.replaceAll("\u00a0", " ")),
        )) {
          seen += 1;
          const lengthMm = textWidthMm(figure.text, figure.sizeMm, figure.weight);
          const [cos, sin] = [Math.cos, Math.sin].map((of) => of((figure.turnDeg * Math.PI) / 180)) as [
            number,
            number,
          ];
          for (let along = -lengthMm / 2; along <= lengthMm / 2; along += 0.25) {
            const [x, y] = [figure.x + along * cos - sin, figure.y + along * sin + cos];
            const over = names.find((one) => x > one.minX && x < one.maxX && y > one.minY && y < one.maxY);
            expect(over, `${figure.text} of ${id} at ${widthMm} mm`).toBeUndefined();
          }
        }
      }
  expect(seen).toBeGreaterThan(12);
});

/** `5 7/16 in` as inches. */
function inches(words: string): number {
  return words
    .replace(" in", "")
    .split(" ")
    .reduce((sum, part) => {
      const [over = 0, under = 1] = part.split("/").map(Number);
      return sum + over / under;
    }, 0);
}

test("an end that is joined shows its own circuit from the battery on, and no other", () => {
  const [circuit] = drawn("join / lamp trunk / end");
  const said = [...textsOf(circuit?.shapes ?? [])].join(" ");
  for (const name of ["house", "helm", "lamp trunk", "fore box", "coaming lamp"])
    expect(said).toContain(name);
  for (const name of ["sounder", "bilge", "usb"]) expect(said).not.toContain(name);
  const small = planOfRuns(whole.figures.plan, new Set(["lamp trunk"]));
  expect(small.runs.map(({ name }) => name)).toContain("battery feed");
  expect(small.panels.flatMap(({ ways }) => ways.map(({ name }) => name))).toEqual(["lamps"]);
});

test("a step that words tell as well has no drawing", () => {
  expect(drawn("survey / boat")).toEqual([]);
  expect(drawn("cut / lamp trunk")).toEqual([]);
});

test("marks on a long face are cut out: twice the scale of the whole, which stands small above with a frame", () => {
  const narrow = { widthMm: 76, mostMm: 42 };
  const [port] = drawn("mark / coaming lamp", narrow);
  const side = whole.hull.faces.find(({ name }) => name === "lining")?.sides[0];
  if (!port || !side) throw new Error("the lining is drawn");
  const scaleOf = (words: string) => Number(/1 : (\d+)/.exec(words.replaceAll("\u00a0", " "))?.[1]);
  const all = marksScale(side, narrow.widthMm, narrow.mostMm, plan.shows.lengths).scale;
  expect(scaleOf(port.words)).toBeLessThanOrEqual(all / 1.6);
  expect(port.words).toContain("A part of it");
  // the small figure: the whole face, and the frame on it
  const small = port.shapes.slice(0, 2).map(boundsOf);
  expect(small[0]?.maxX).toBeLessThan(31);
  expect(small[1]?.minX).toBeGreaterThanOrEqual((small[0]?.minX ?? 0) - 0.5);
  expect(small[1]?.maxX).toBeLessThanOrEqual((small[0]?.maxX ?? 0) + 0.5);
  for (const name of ["1", "2", "3"]) expect([...textsOf(port.shapes)]).toContain(name);
});

test("a tape from a point beyond the part that is drawn ends in an arrow with the letter of the point", () => {
  const plain = planAt("examples/launch.yaml");
  const launch = workOutWhole(plain);
  const marks = planWork(launch.figures, launch).step.get("mark / coaming lamp");
  if (!marks) throw new Error("the launch marks its coaming lamps");
  const [port] = stepDrawings(marks, launch, plain.shows, { widthMm: 76, mostMm: 42 });
  const letters = [...(port?.words.matchAll(/\b([A-Z]) [a-z]/g) ?? [])].map(([, letter]) => letter);
  expect(letters.length).toBeGreaterThan(3);
  for (const letter of letters) expect([...textsOf(port?.shapes ?? [])]).toContain(letter);
  const arrows = (port?.shapes ?? []).filter(
    (shape) => shape.kind === "polyline" && shape.closed && shape.fill === "accent",
  );
  expect(arrows.length).toBeGreaterThan(0);
  for (const { maxX, minX } of arrows.map(boundsOf)) expect(minX < 1 || maxX > 75).toBe(true);
});
