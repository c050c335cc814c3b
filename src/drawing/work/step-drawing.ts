import type { FaceTemplate } from "../../core/box/template.js";
import type { FaceFigures, SideFigures } from "../../core/hull/figures.js";
import type { Whole } from "../../core/layout-figures.js";
import type { Shows } from "../../core/plan/model/plan.js";
import type { Step } from "../../core/work/step.js";
import { type DrawnWords, drawnInEnglish } from "../../words/drawn/english.js";
import { readingWords } from "../../words/hull-words.js";
import { faceDrawn, insideDrawn, marksDrawn } from "../../words/step-drawing-words.js";
import { around, boundsOf } from "../bounds.js";
import { boxInside } from "../box-inside.js";
import { marksPart, marksScale } from "../hull/marks-scale.js";
import { marksView } from "../hull/marks-view.js";
import { group } from "../make.js";
import type { Shape } from "../shapes.js";
import { faceShapes } from "../template-face.js";
import { circuitOfRun } from "./step-circuit.js";

/** A drawing that belongs to a step of the work. */
export interface StepDrawing {
  readonly shapes: readonly Shape[];
  readonly widthMm: number;
  readonly heightMm: number;
  /** What it shows, for those who do not see it and as its caption: letters and numbers explained. */
  readonly words: string;
}

export interface StepDrawingRoom {
  readonly widthMm: number;
  /** The highest one drawing may be. */
  readonly mostMm: number;
}

/** What is drawn from: everything worked out of one plan. */
export type DrawnFrom = Pick<Whole, "figures" | "layout" | "hull">;

/**
 * What a step is better told by than by words: the faces of the box that is drilled, its inside when it is filled, the marks of its gear with
 * their tapes, the circuit of the conductor that is joined. Empty where words do.
 */
export function stepDrawings(
  step: Step,
  from: DrawnFrom,
  shows: Shows,
  room: StepDrawingRoom,
  words: DrawnWords = drawnInEnglish,
): readonly StepDrawing[] {
  const { drawing } = step;
  if (drawing === undefined) return [];
  switch (drawing.sheet) {
    case "template":
      return step.task === "fill box"
        ? boxFilled(drawing.of, from, room, words)
        : templatesOf(drawing.of, from).map((template) => faceDrawing(template, room, words));
    case "marks":
      return sidesOf(step.pieces, from).map((one) => marksDrawing(one, from, shows, room, words));
    case "diagram":
      return circuitDrawing(step, from, shows, words);
    default:
      return drawing.sheet satisfies never;
  }
}

const templatesOf = (box: string, { layout }: DrawnFrom): readonly FaceTemplate[] =>
  layout.boxes.find((one) => one.box === box)?.templates ?? [];

/** Scales a box is drawn at: true where there is room. */
const faceScales = [1, 1.5, 2, 2.5, 3, 4, 5, 8, 10];
/** Room for the words for lid and base, and beside the outline. */
const edgeMm = { x: 2, y: 5.5 } as const;

function faceDrawing(
  template: FaceTemplate,
  { widthMm, mostMm }: StepDrawingRoom,
  said: DrawnWords,
): StepDrawing {
  const wanted = Math.max(
    template.widthMm / (widthMm - 2 * edgeMm.x),
    template.heightMm / (mostMm - 2 * edgeMm.y),
  );
  const scale = faceScales.find((one) => one >= wanted) ?? Math.ceil(wanted);
  const window = { x0: 0, y0: 0, x1: template.widthMm, y1: template.heightMm };
  const dx = (widthMm - template.widthMm / scale) / 2;
  return {
    shapes: faceShapes(template, { window, dx, dy: edgeMm.y, scale, row: 1, column: 1 }, said),
    widthMm,
    heightMm: template.heightMm / scale + 2 * edgeMm.y,
    words: faceDrawn(template, scale, said),
  };
}

function boxFilled(
  name: string,
  { layout }: DrawnFrom,
  { widthMm, mostMm }: StepDrawingRoom,
  said: DrawnWords,
): StepDrawing[] {
  const box = layout.boxes.find((one) => one.box === name);
  if (box?.body === undefined || box.layout === undefined) return [];
  const room = { left: 0, bottom: 0, widthMm, heightMm: mostMm };
  const { shapes, scale } = boxInside(box.body, box.layout, new Map(), room, said);
  const words = insideDrawn(
    name,
    box.layout.contents.map(({ id }) => id),
    scale,
    said,
  );
  return [{ shapes, widthMm, heightMm: mostMm, words }];
}

interface SideToMark {
  readonly face: FaceFigures;
  readonly side: SideFigures;
}

/** Every side that has marks of those pieces, with no other marks on it. */
function sidesOf(pieces: readonly string[], { hull }: DrawnFrom): SideToMark[] {
  return hull.faces.flatMap((face) =>
    face.sides.flatMap((side): SideToMark[] => {
      const marks = side.marks.filter(({ mark }) => pieces.includes(mark.name));
      return marks.length === 0 ? [] : [{ face, side: { ...side, marks } }];
    }),
  );
}

/** With more marks than these the tapes cross too much for their readings to stand on them. */
const mostWithReadings = 2;

function marksDrawing(
  { face, side }: SideToMark,
  { hull }: DrawnFrom,
  shows: Shows,
  { widthMm, mostMm }: StepDrawingRoom,
  words: DrawnWords,
): StepDrawing {
  const { graduationM, side: worksFrom } = hull.plan.marks;
  const inside = worksFrom === "inside";
  const cut = marksPart(side, widthMm, mostMm, shows.lengths, inside);
  const { scale, heightMm } = cut ?? marksScale(side, widthMm, mostMm, shows.lengths);
  const room = { left: 0, bottom: 0, widthMm, heightMm };
  const said =
    side.marks.length > mostWithReadings
      ? undefined
      : (readingM: number) => readingWords(Math.abs(readingM), graduationM, shows);
  const view = marksView(side, room, scale, inside, said, cut?.part);
  return {
    shapes: view.shapes,
    widthMm,
    heightMm,
    words: marksDrawn(
      {
        face: face.plan,
        name: face.name,
        side: side.side,
        marks: side.marks.map(({ mark }) => mark.name),
        scale,
        inside,
        part: cut !== undefined,
        ...view,
      },
      words,
    ),
  };
}

function circuitDrawing(
  { pieces }: Step,
  { figures }: DrawnFrom,
  shows: Shows,
  words: DrawnWords,
): StepDrawing[] {
  const [run = ""] = pieces;
  const shapes = circuitOfRun(figures, run, shows, words);
  if (shapes === undefined || shapes.length === 0) return [];
  const { minX, minY, maxX, maxY } = around(
    shapes.map(boundsOf).flatMap((one) => [
      { x: one.minX, y: one.minY },
      { x: one.maxX, y: one.maxY },
    ]),
  );
  return [
    {
      shapes: [group(1 - minX, 1 - minY, shapes)],
      widthMm: maxX - minX + 2,
      heightMm: maxY - minY + 2,
      words: words.step.circuit(run),
    },
  ];
}
