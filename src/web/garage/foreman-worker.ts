import { type Whole, workOutWhole } from "../../core/layout-figures.js";
import { readPlan } from "../../core/plan/read.js";
import { benchOf } from "../../core/proving/bench-network.js";
import { diagnose } from "../../core/proving/diagnose.js";
import type { FaultReport } from "../../core/proving/faults.js";
import { testSheet } from "../../core/proving/sheet/sheet.js";
import { waterCard } from "../../core/proving/water/card.js";
import { nextStep, planWork } from "../../core/work/plan-work.js";
import { takeBuiltEdits } from "../../core/work/take-built.js";
import { finishEdits, tickEdits } from "../../core/work/work-edits.js";
import type { FaultsShown, ForemanOutcome, ForemanQuestion } from "./messages.js";

self.addEventListener("message", ({ data }: MessageEvent<ForemanQuestion & { readonly no: number }>) => {
  self.postMessage({ no: data.no, outcome: outcomeOf(data) });
});

let last: { readonly text: string; readonly whole: Whole } | undefined;

function outcomeOf(question: ForemanQuestion): ForemanOutcome {
  try {
    const { text } = question;
    if (last?.text !== text) {
      const read = readPlan(text);
      if (!read.ok) return { is: "unreadable", problems: read.problems };
      last = { text, whole: workOutWhole(read.plan) };
    }
    return answer(question, last.whole);
  } catch (error) {
    return { is: "fault", detail: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
}

function answer(question: ForemanQuestion, whole: Whole): ForemanOutcome {
  const { figures, circuit } = whole;
  switch (question.ask) {
    case "work": {
      const work = planWork(figures, whole, question.nowMin);
      const { facts: _facts, ...shown } = work;
      return { is: "work", work: { ...shown, next: nextStep(work) } };
    }
    case "tick": {
      const { ask: _ask, text: _text, step: id, ...said } = question;
      const work = planWork(figures, whole, question.nowMin);
      const step = work.step.get(id);
      if (step === undefined || work.project.done.has(id)) return { is: "edits", edits: [] };
      return { is: "edits", edits: tickEdits(figures, work.facts, step, said) };
    }
    case "finish":
      return {
        is: "edits",
        edits: [...takeBuiltEdits(figures), ...finishEdits(question.name, question.nowMin)],
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
    case "water":
      return { is: "water", card: waterCard(figures) };
    default:
      return question satisfies never;
  }
}

const sendable = ({ fits: _fits, model: _model, ...shown }: FaultReport): FaultsShown => shown;
