import { workOutWhole } from "../../../core/layout-figures.js";
import { readPlan } from "../../../core/plan/read-text.js";
import { faultDetail } from "../../fault.js";
import { withReader } from "../full-reader.js";
import type { FiguresAnswer, FiguresOutcome, FiguresRequest } from "./messages.js";

self.addEventListener("message", async ({ data }: MessageEvent<FiguresRequest>) => {
  const answer: FiguresAnswer = { no: data.no, outcome: await outcomeOf(data.text) };
  self.postMessage(answer);
});

async function outcomeOf(text: string): Promise<FiguresOutcome> {
  try {
    const read = await withReader(() => readPlan(text));
    if (!read.ok) return { is: "unreadable", problems: read.problems };
    return { is: "figures", figures: workOutWhole(read.plan).figures };
  } catch (error) {
    return { is: "fault", detail: faultDetail(error) };
  }
}
