import type { Shows } from "../core/plan/model/plan.js";
import type { PlannedStep } from "../core/work/order.js";
import type { WorkFigures } from "../core/work/plan-work.js";
import type { DrawnFrom } from "../drawing/work/step-drawing.js";
import { hours } from "../words/numbers.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import type { StepWords } from "../words/steps/step-words.js";
import { sessionWords, spanWords } from "../words/work-times.js";
import { bindingWords, proofWords, stepTitles } from "../words/work-words.js";
import { columnWidthMm, flow } from "./flow.js";
import {
  cautionPiece,
  drawingPieces,
  groupHead,
  type OrderGroup,
  putAwayPiece,
  sessionPiece,
  stepPiece,
} from "./order-pieces.js";
import type { Paper } from "./page.js";
import { comingAgain, itemOf, type Piece, paragraph, space, stacked } from "./piece.js";
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

/** Steps that follow each other with one kind and one main tool. */
function groupsOf(work: WorkFigures, title: (id: string) => string, words: StepWords): OrderGroup[] {
  const groups: OrderGroup[] = [];
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
  { steps }: OrderGroup,
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
      const drawn = drawingPieces(step, title, from, shows, words, widthMm);
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
