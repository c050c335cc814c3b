import type { HullFigures } from "../../../core/hull/figures.js";
import { workOutWhole } from "../../../core/layout-figures.js";
import type { Plan } from "../../../core/plan/model/plan.js";
import { faultDetail } from "../../fault.js";
import type {
  FiguresAnswer,
  FiguresOutcome,
  FiguresRequest,
  SettleAnswer,
  SettleRequest,
  StillWater,
} from "./messages.js";
import { settle } from "./settle.js";

self.addEventListener("message", ({ data }: MessageEvent<FiguresRequest | SettleRequest>) => {
  const { no, plan } = data;
  const answer: FiguresAnswer | SettleAnswer =
    "holds" in data ? { no, settled: settle(data) } : { no, outcome: outcomeOf(plan) };
  self.postMessage(answer);
});

function outcomeOf(plan: Plan): FiguresOutcome {
  try {
    const { figures, hull } = workOutWhole(plan);
    return { is: "figures", figures, water: waterOf(hull) };
  } catch (error) {
    return { is: "fault", detail: faultDetail(error) };
  }
}

function waterOf({ float }: HullFigures): StillWater {
  if (float === undefined) return "not asked";
  return float.rest?.floating.plane ?? "no rest";
}
