import { type Held, heldOf } from "../../../core/held-figures.js";
import { workOutWhole } from "../../../core/layout-figures.js";
import type { Plan } from "../../../core/plan/model/plan.js";
import { sameValue } from "../same-value.js";
import type { ReadText, SettleRequest } from "./messages.js";

let last: Held | undefined;
let standing: { readonly text: string; readonly held: Held } | undefined;

/** What is held, settled for a plan: of it only what is not as the page holds it, since taking it in costs a part of a frame. */
export function settle({ plan, holds }: SettleRequest): Partial<Held> {
  const before = holds === "last answer" ? last : holds === "nothing" ? undefined : heldAsItStands(holds);
  last = heldIn(plan);
  return before ? differing(before, last) : last;
}

function heldAsItStands({ text, plan }: ReadText): Held {
  if (standing?.text !== text) standing = { text, held: heldIn(plan) };
  return standing.held;
}

const heldIn = (plan: Plan): Held => heldOf(workOutWhole(plan).figures);

function differing(from: Held, to: Held): Partial<Held> {
  return {
    ...(sameValue(from.sizes, to.sizes) ? {} : { sizes: to.sizes }),
    ...(sameValue(from.protection, to.protection) ? {} : { protection: to.protection }),
    ...(sameValue(from.paths, to.paths) ? {} : { paths: to.paths }),
    ...(sameValue(from.outings, to.outings) ? {} : { outings: to.outings }),
    ...(sameValue(from.charging, to.charging) ? {} : { charging: to.charging }),
    ...(to.readings === undefined || sameValue(from.readings, to.readings) ? {} : { readings: to.readings }),
    ...(sameValue(from.findings, to.findings) ? {} : { findings: to.findings }),
  };
}
