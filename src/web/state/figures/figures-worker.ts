import { workOutWhole } from "../../../core/layout-figures.js";
import { readPlan } from "../../../core/plan/read.js";
import type { FiguresAnswer, FiguresOutcome, FiguresRequest } from "./messages.js";

self.addEventListener("message", ({ data }: MessageEvent<FiguresRequest>) => {
  const answer: FiguresAnswer = { no: data.no, outcome: outcomeOf(data.text) };
  self.postMessage(answer);
});

function outcomeOf(text: string): FiguresOutcome {
  const read = readPlan(text);
  if (!read.ok) return { is: "unreadable", problems: read.problems };
  try {
    return { is: "figures", figures: workOutWhole(read.plan).figures };
  } catch (error) {
    return { is: "fault", detail: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
}
