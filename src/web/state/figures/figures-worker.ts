import type { HullFigures } from "../../../core/hull/figures.js";
import { workOutWhole } from "../../../core/layout-figures.js";
import { readPlan } from "../../../core/plan/read-text.js";
import { faultDetail } from "../../fault.js";
import { withReader } from "../full-reader.js";
import type { FiguresAnswer, FiguresOutcome, FiguresRequest, StillWater } from "./messages.js";

self.addEventListener("message", async ({ data }: MessageEvent<FiguresRequest>) => {
  const answer: FiguresAnswer = { no: data.no, outcome: await outcomeOf(data.text) };
  self.postMessage(answer);
});

async function outcomeOf(text: string): Promise<FiguresOutcome> {
  try {
    const read = await withReader(() => readPlan(text));
    if (!read.ok) return { is: "unreadable", problems: read.problems };
    const { figures, hull } = workOutWhole(read.plan);
    return { is: "figures", figures, water: waterOf(hull) };
  } catch (error) {
    return { is: "fault", detail: faultDetail(error) };
  }
}

function waterOf({ float }: HullFigures): StillWater {
  if (float === undefined) return "not asked";
  return float.rest?.floating.plane ?? "no rest";
}
