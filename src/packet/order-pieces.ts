import type { Shows } from "../core/plan/model/plan.js";
import type { PlannedStep } from "../core/work/order.js";
import type { CautionKey, ConsumableKey, Step } from "../core/work/step.js";
import { wrapText } from "../drawing/fonts/wrap.js";
import { box, group, line, strokes, text } from "../drawing/make.js";
import { figure } from "../drawing/parts.js";
import type { Shape } from "../drawing/shapes.js";
import { type DrawnFrom, stepDrawings } from "../drawing/work/step-drawing.js";
import { hours } from "../words/numbers.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { sizeLines } from "../words/step-lines.js";
import type { StepWords } from "../words/steps/step-words.js";
import { consumableText } from "../words/work-words.js";
import { type Piece, paragraph, pitch, space, stacked, typeOf } from "./piece.js";

/** Steps that stand together on paper, under one head. */
export interface OrderGroup {
  readonly steps: {
    readonly planned: PlannedStep;
    readonly step: Step;
    readonly title: string;
    readonly session?: string;
  }[];
}

export const putAwayPiece = ({ lastUseOf }: PlannedStep, { work, of }: PaperWords, widthMm: number): Piece =>
  paragraph(
    {
      text: work.order.putAway(lastUseOf.map((tool) => of.steps.tools[tool]).join(", ")),
      sizePt: 9,
      colour: "soft",
    },
    widthMm,
    1,
  );

export function groupHead(
  title: string,
  steps: OrderGroup["steps"],
  cautions: readonly CautionKey[],
  words: PaperWords,
  widthMm: number,
): Piece {
  const { order: say } = words.work;
  const { steps: named } = words.of;
  const tools = [...new Set(steps.flatMap(({ step }) => step.tools))];
  const counts = new Map<ConsumableKey, number>();
  for (const { step } of steps)
    for (const { what, count } of step.consumables) counts.set(what, (counts.get(what) ?? 0) + count);
  const takes = [...counts].map(([what, count]) => consumableText({ what, count }, named));
  const small = { sizePt: 9.5, colour: "soft" } as const;
  const minutes = steps.reduce((sum, { step }) => sum + step.minutes, 0);
  const pieces = [
    paragraph(
      {
        text: `${title} · ${hours(minutes / 60)}`,
        sizePt: 12,
        weight: "semibold",
        maxLines: 2,
        role: "heading",
      },
      widthMm,
      0.6,
    ),
    ...(tools.length === 0
      ? []
      : [
          paragraph(
            { ...small, text: say.tools(tools.map((tool) => named.tools[tool]).join(", ")) },
            widthMm,
            0.3,
          ),
        ]),
    ...(takes.length === 0 ? [] : [paragraph({ ...small, text: say.takes(takes.join(", ")) }, widthMm, 0.3)]),
    ...cautions.map((caution) => cautionPiece(caution, named, widthMm)),
    space(1),
  ];
  const whole = stacked(pieces);
  return {
    ...whole,
    keepWithNext: true,
    draw: (x, top) => [line(x, top, x + widthMm, top, strokes.line), ...whole.draw(x, top - 1.2)],
    heightMm: whole.heightMm + 1.2,
  };
}

export const cautionPiece = (caution: CautionKey, words: StepWords, widthMm: number): Piece =>
  paragraph(
    {
      text: `! ${words.cautions[caution]}`,
      sizePt: 9.5,
      weight: "semibold",
      colour: "accent",
      maxLines: 6,
    },
    widthMm,
    0.6,
  );

export const sessionPiece = (words: string, widthMm: number): Piece => ({
  ...paragraph({ text: words, sizePt: 9.5, weight: "semibold", colour: "soft" }, widthMm, 0.6),
  keepWithNext: true,
});

/** What one sets out with the paper in hand; all else is drawn on sheets of its own. */
const drawnTasks: ReadonlySet<Step["task"]> = new Set(["mark box", "mark gear"]);
const mostDrawingMm = 42;

export function drawingPieces(
  step: Step,
  title: string,
  from: DrawnFrom | undefined,
  shows: Shows,
  { frame, of }: PaperWords,
  widthMm: number,
): Piece[] {
  if (from === undefined || !drawnTasks.has(step.task)) return [];
  const room = { widthMm: widthMm - indentMm, mostMm: mostDrawingMm };
  return stepDrawings(step, from, shows, room, of.drawn).map(({ shapes, heightMm, words }): Piece => {
    const caption = paragraph({ text: words, sizePt: 8.5, colour: "soft", maxLines: 6 }, room.widthMm, 2);
    return stacked([
      {
        heightMm: heightMm + 1,
        draw: (x, top) => figure(title, [group(x + indentMm, top - heightMm, shapes)], frame.drawn),
      },
      { ...caption, draw: (x, top) => caption.draw(x + indentMm, top) },
    ]);
  });
}

const tickMm = 3.6;
const indentMm = 6;
const minutesMm = 14;

export function stepPiece(
  step: Step,
  words: string,
  shows: Shows,
  say: StepWords,
  widthMm: number,
  shared: readonly CautionKey[],
): Piece {
  const titleType = typeOf({ text: "", sizePt: 10 });
  const roomMm = widthMm - indentMm - minutesMm;
  const title = wrapText(words, roomMm, titleType, 4);
  const own = step.caution !== undefined && !shared.includes(step.caution) ? [step.caution] : [];
  const body = stacked([
    ...sizeLines(step, shows, say).map((text) =>
      paragraph({ text, sizePt: 9, colour: "soft", maxLines: 6 }, widthMm - indentMm),
    ),
    ...own.map((caution) => cautionPiece(caution, say, widthMm - indentMm)),
  ]);
  const titleMm = title.length * titleType.sizeMm * pitch;
  const heightMm = Math.max(tickMm + 0.8, titleMm + body.heightMm) + 1.4;
  return {
    heightMm,
    draw: (x, top): Shape[] => [
      box(x, top - 0.3 - tickMm, tickMm, tickMm, { stroke: strokes.line }),
      ...title.map((row, at) =>
        text(x + indentMm, top - titleType.sizeMm * (0.95 + at * pitch), row, {
          ...titleType,
          colour: "ink",
        }),
      ),
      text(x + widthMm, top - titleType.sizeMm * 0.95, `${step.minutes} min`, {
        ...typeOf({ text: "", sizePt: 9 }),
        anchor: "end",
        colour: "soft",
      }),
      ...body.draw(x + indentMm, top - titleMm),
    ],
  };
}
