import { workOutWhole } from "../../core/layout-figures.js";
import { readPlan } from "../../core/plan/read-text.js";
import type { ReadProblem } from "../../core/plan/source/problem.js";
import { benchOf } from "../../core/proving/bench-network.js";
import { diagnose } from "../../core/proving/diagnose.js";
import type { FaultReport } from "../../core/proving/faults.js";
import { testSheet } from "../../core/proving/sheet/sheet.js";
import { waterCard } from "../../core/proving/water/card.js";
import { nextStep, planWork } from "../../core/work/plan-work.js";
import { tickEdits } from "../../core/work/work-edits.js";
import { closeEdits } from "../../core/working/close-project.js";
import { planChanges, type WholePlan } from "../../core/working/plan-changes.js";
import { stepDrawings } from "../../drawing/work/step-drawing.js";
import { type DrawnWords, drawnInEnglish } from "../../words/drawn/english.js";
import { faultDetail } from "../fault.js";
import { withReader } from "../state/full-reader.js";
import type { FaultsShown, ForemanOutcome, ForemanQuestion } from "./messages.js";

self.addEventListener(
  "message",
  async ({ data }: MessageEvent<ForemanQuestion & { readonly no: number }>) => {
    self.postMessage({ no: data.no, outcome: await outcomeOf(data) });
  },
);

let last: { readonly text: string; readonly whole: WholePlan } | undefined;

async function outcomeOf(question: ForemanQuestion): Promise<ForemanOutcome> {
  try {
    const read = await wholeOf(question.text);
    if ("problems" in read) return { is: "unreadable", problems: read.problems };
    if (question.ask !== "changes") return await answer(question, read);
    const before = await wholeOf(question.before);
    if ("problems" in before) return { is: "unreadable", problems: before.problems };
    return { is: "changes", changes: planChanges(before, read) };
  } catch (error) {
    return { is: "fault", detail: faultDetail(error) };
  }
}

async function wholeOf(text: string): Promise<WholePlan | { readonly problems: readonly ReadProblem[] }> {
  if (last?.text === text) return last.whole;
  const read = await withReader(() => readPlan(text));
  if (!read.ok) return { problems: read.problems };
  const whole = { ...workOutWhole(read.plan), document: read.document };
  last = { text, whole };
  return whole;
}

async function answer(
  question: Exclude<ForemanQuestion, { ask: "changes" }>,
  whole: WholePlan,
): Promise<ForemanOutcome> {
  const { figures, circuit } = whole;
  switch (question.ask) {
    case "work": {
      const work = planWork(figures, whole, question.nowMin);
      const { facts: _facts, ...shown } = work;
      return { is: "work", work: { ...shown, next: nextStep(work) } };
    }
    case "tick": {
      const { nowMin, step: id } = question;
      const work = planWork(figures, whole, nowMin);
      const step = work.step.get(id);
      if (step === undefined || work.project.done.has(id)) return { is: "edits", edits: [] };
      return { is: "edits", edits: tickEdits(figures, work.facts, step, { nowMin }) };
    }
    case "finish":
      return {
        is: "edits",
        edits: await withReader(() =>
          closeEdits({ plan: figures.plan.source, document: whole.document }, figures, question),
        ),
      };
    case "sheet":
      return { is: "sheet", sections: testSheet(benchOf(figures.plan, circuit), figures) };
    case "prove": {
      const { faults, agedFaults, ...rest } = diagnose(figures, circuit);
      return {
        is: "prove",
        diagnosis: {
          ...rest,
          ...(faults ? { faults: sendable(faults) } : {}),
          ...(agedFaults ? { agedFaults: sendable(agedFaults) } : {}),
        },
      };
    }
    case "drawings":
      return {
        is: "drawings",
        drawings: stepDrawings(
          question.step,
          whole,
          question.shows,
          question.room,
          await drawnWords(question.language),
        ),
      };
    case "water":
      return { is: "water", card: waterCard(figures) };
    default:
      return question satisfies never;
  }
}

const sendable = ({ fits: _fits, model: _model, ...shown }: FaultReport): FaultsShown => shown;

/** Words of drawings; the Spanish ones are fetched with the first drawing that wants them. */
const drawnWords = async (language: "en" | "es"): Promise<DrawnWords> =>
  language === "en" ? drawnInEnglish : (await import("../../words/spanish/drawn.js")).drawnInSpanish;
