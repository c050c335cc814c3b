import type { BoxFigures } from "../core/box/plan-boxes.js";
import type { Passing } from "../core/box/plan-passing.js";
import { type LayoutWords, layoutInEnglish } from "./layout/english.js";
import { boxProblemWords, mmWords, moneyWords } from "./layout-words.js";

/** What a box is, why it is this one, and what the next smaller one lacks: a sentence each. */
export function boxWhyWords(box: BoxFigures, words: LayoutWords = layoutInEnglish): string[] {
  const { body, bought, from, problems, choice } = box;
  const { why: say } = words;
  if (from === "none") return [say.nothing];
  const why = problems.map((one) => boxProblemWords(one, words)).join("; ");
  if (body === undefined) return [say.none(choice?.refused.at(-1)?.id ?? "", why)];
  const size = [body.widthMm, body.heightMm, body.depthMm].map(mmWords).join(" × ");
  const inside = say.inside(size, mmWords(body.wallMm), words.material(body.material));
  const begun = `${inside.charAt(0).toUpperCase()}${inside.slice(1)}`;
  if (problems.length > 0) return [`${bought === undefined ? begun : inside}. ${say.doesNot(why)}`];
  if (bought === undefined) return [`${begun}${from === "drilled" ? `, ${say.drilled}` : ""}.`];
  const price = bought.price === undefined ? say.noPrice : moneyWords(bought.price);
  return [`${bought.name} (${price}): ${inside}.`, ...nextSmallerWords(box, words)];
}

function nextSmallerWords({ choice }: BoxFigures, words: LayoutWords): string[] {
  const smaller = choice?.nextSmaller;
  if (smaller === undefined || choice?.smallest === undefined) return [];
  const why = smaller.problems.map((one) => boxProblemWords(one, words)).join("; ");
  return [words.why.smaller(smaller.id, why)];
}

/** Whether a thing goes through the opening it must pass. */
export function passingWords(
  { what, through, state, body }: Passing,
  { passing }: LayoutWords = layoutInEnglish,
): string {
  const size =
    body === undefined
      ? ""
      : ` (${[body.lengthMm, body.widthMm, body.heightMm].map((mm) => Math.round(mm)).join(" × ")}\u00a0mm)`;
  return state === "unchecked" ? passing.unchecked(what, through) : passing[state](through, size);
}
