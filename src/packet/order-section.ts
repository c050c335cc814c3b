import type { Shows } from "../core/plan/model/plan.js";
import type { PlannedStep } from "../core/work/order.js";
import type { WorkFigures } from "../core/work/plan-work.js";
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
import { sessionWords, spanWords } from "../words/work-times.js";
import { bindingWords, consumableText, proofWords, stepTitles } from "../words/work-words.js";
import { columnWidthMm, flow } from "./flow.js";
import type { Paper } from "./page.js";
import { comingAgain, itemOf, type Piece, paragraph, pitch, space, stacked, typeOf } from "./piece.js";
import type { Section } from "./section.js";

const columns = 2;
const soft = { colour: "soft", sizePt: 9.5 } as const;

/** What stands over a part of the order in place of how it came about. */
export interface OrderLead {
  readonly title: string;
  readonly lead: string;
}

/**
 * The order of work: every step that is left with a square to tick, alike ones together under their tools and cautions.
 * @param lead Heads a part of the order; left out: the whole of it, and how it came about.
 * @param from What the marks and holes of a step are drawn from; left out: no drawings.
 */
export function orderSection(
  work: WorkFigures,
  shows: Shows,
  paper: Paper,
  words: PaperWords,
  from?: DrawnFrom,
  lead?: OrderLead,
): Section {
  const { order } = work;
  const widthMm = columnWidthMm(paper, columns);
  const say = words.work.order;
  const { steps } = words.of;
  const title = stepTitles(work.step.values(), steps);
  const groups = groupsOf(work, title, steps);
  const pieces = [
    ...(lead === undefined
      ? summary(work, title, words, widthMm)
      : [paragraph({ ...soft, text: lead.lead }, widthMm, 3.5)]),
    ...groups.flatMap((group) => groupPieces(group, shows, words, widthMm, from)),
  ];
  return {
    title: lead?.title ?? say.title,
    subtitle: say.subtitle(order.steps.length, hours(order.workMin / 60)),
    pages: order.steps.length === 0 ? [] : flow(pieces, paper, columns),
  };
}

function summary(
  work: WorkFigures,
  title: (id: string) => string,
  { work: { order: say }, of }: PaperWords,
  widthMm: number,
): Piece[] {
  const { order, freeHours } = work;
  const held = order.binds
    .filter(({ by, waitedMin }) => (by === "cure" || by === "hours") && waitedMin > 0)
    .slice(0, 3);
  return [
    paragraph(
      {
        ...soft,
        text: say.lead(
          hours(order.workMin / 60),
          order.changes,
          spanWords(order.elapsedMin, of.steps),
          proofWords(order, of.steps),
        ),
      },
      widthMm,
      1.5,
    ),
    ...(freeHours.assumed ? [paragraph({ ...soft, text: say.assumedHours }, widthMm, 1.5)] : []),
    ...held.map((link) => paragraph({ ...soft, text: bindingWords(link, title, of.steps) }, widthMm, 1)),
    space(2),
  ];
}

interface Group {
  readonly steps: {
    readonly planned: PlannedStep;
    readonly step: Step;
    readonly title: string;
    readonly session?: string;
  }[];
}

/** Steps that follow each other with one kind and one main tool. */
function groupsOf(work: WorkFigures, title: (id: string) => string, words: StepWords): Group[] {
  const groups: Group[] = [];
  let before: PlannedStep | undefined;
  for (const planned of work.order.steps) {
    const step = work.step.get(planned.step);
    if (step === undefined) continue;
    const session = sessionWords(planned.startMin, before?.startMin, work.nowMin, words);
    const entry = { planned, step, title: title(step.id), ...(session === "" ? {} : { session }) };
    const last = groups.at(-1);
    const alike = last?.steps[0]?.step;
    if (last && alike?.kind === step.kind && alike.tools[0] === step.tools[0]) last.steps.push(entry);
    else groups.push({ steps: [entry] });
    before = planned;
  }
  return groups;
}

function groupPieces(
  { steps }: Group,
  shows: Shows,
  words: PaperWords,
  widthMm: number,
  from: DrawnFrom | undefined,
): Piece[] {
  const { steps: say } = words.of;
  const [first] = steps;
  if (first === undefined) return [];
  const cautions = [...new Set(steps.flatMap(({ step }) => step.caution ?? []))];
  // where all steps share a caution it stands once, right over them
  const shared =
    cautions.length === 1 && steps.every(({ step }) => step.caution !== undefined) ? cautions : [];
  const kind = say.kinds[first.step.kind];
  const list = {};
  const head = groupHead(kind, steps, shared, words, widthMm);
  const again = comingAgain(
    stacked([
      paragraph(
        { text: words.work.order.continued(kind), sizePt: 10.5, weight: "semibold", colour: "soft" },
        widthMm,
        0.5,
      ),
      ...shared.map((caution) => cautionPiece(caution, words.of.steps, widthMm)),
      space(1),
    ]),
  );
  return [
    head,
    ...steps.flatMap(({ step, planned, title, session }, at) => {
      const said = [
        ...(session === undefined ? [] : [sessionPiece(session, widthMm)]),
        itemOf(list, stepPiece(step, title, shows, say, widthMm, shared)),
      ];
      const drawn =
        from === undefined || !drawnTasks.has(step.task)
          ? []
          : drawingPieces(step, title, from, shows, words, widthMm);
      const pieces = [
        ...said,
        ...drawn,
        ...(planned.lastUseOf.length === 0 ? [] : [putAwayPiece(planned, words, widthMm)]),
      ];
      // a step does not part from its drawing, nor the putting away from the step it follows; drawings may part
      const mayPart = said.length + drawn.length - 1;
      return pieces.map(
        (piece, index): Piece => ({
          ...piece,
          ...(at === 0 && index < said.length ? {} : { head: again }),
          keepWithNext: index < pieces.length - 1 && (index < said.length || index >= mayPart),
        }),
      );
    }),
    space(2.5),
  ];
}

const putAwayPiece = ({ lastUseOf }: PlannedStep, { work, of }: PaperWords, widthMm: number): Piece =>
  paragraph(
    {
      text: work.order.putAway(lastUseOf.map((tool) => of.steps.tools[tool]).join(", ")),
      sizePt: 9,
      colour: "soft",
    },
    widthMm,
    1,
  );

function groupHead(
  title: string,
  steps: Group["steps"],
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

const cautionPiece = (caution: CautionKey, words: StepWords, widthMm: number): Piece =>
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

const sessionPiece = (words: string, widthMm: number): Piece => ({
  ...paragraph({ text: words, sizePt: 9.5, weight: "semibold", colour: "soft" }, widthMm, 0.6),
  keepWithNext: true,
});

/** What one sets out with the paper in hand; all else is drawn on sheets of its own. */
const drawnTasks: ReadonlySet<Step["task"]> = new Set(["mark box", "mark gear"]);
const mostDrawingMm = 42;

function drawingPieces(
  step: Step,
  title: string,
  from: DrawnFrom,
  shows: Shows,
  { frame, of }: PaperWords,
  widthMm: number,
): Piece[] {
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

function stepPiece(
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
