import type { BoxFigures } from "../core/box/plan-boxes.js";
import type { Passing } from "../core/box/plan-passing.js";
import { boxProblemWords, mmWords, moneyWords } from "./layout-words.js";

/** What a box is, why it is this one, and what the next smaller one lacks: a sentence each. */
export function boxWhyWords(box: BoxFigures): string[] {
  const { body, bought, from, problems, choice } = box;
  if (from === "none") return ["Neither its inside nor a catalogue of boxes is in the plan."];
  const why = problems.map(boxProblemWords).join("; ");
  if (body === undefined)
    return [
      `No box of the catalogue takes it all. The largest, ${choice?.refused.at(-1)?.id ?? ""}: ${why}.`,
    ];
  const inside = `${bought === undefined ? "Inside" : "inside"} ${mmWords(body.widthMm)} × ${mmWords(body.heightMm)} × ${mmWords(body.depthMm)}, wall ${mmWords(body.wallMm)}, ${body.material}`;
  if (problems.length > 0) return [`${inside}. It does not do: ${why}.`];
  if (bought === undefined) return [`${inside}${from === "drilled" ? ", drilled already" : ""}.`];
  const price = bought.price === undefined ? "price not known" : moneyWords(bought.price);
  return [`${bought.name} (${price}): ${inside}.`, ...nextSmallerWords(box)];
}

function nextSmallerWords({ choice }: BoxFigures): string[] {
  const smaller = choice?.nextSmaller;
  if (smaller === undefined || choice?.smallest === undefined) return [];
  return [
    `The next smaller, ${smaller.id}, does not do: ${smaller.problems.map(boxProblemWords).join("; ")}.`,
  ];
}

/** Whether a thing goes through the opening it must pass. */
export function passingWords({ what, through, state, body }: Passing): string {
  const size =
    body === undefined
      ? ""
      : ` (${[body.lengthMm, body.widthMm, body.heightMm].map((mm) => Math.round(mm)).join(" × ")}\u00a0mm)`;
  switch (state) {
    case "holds":
      return `With its glands on${size} it passes ${through}.`;
    case "bare":
      return `It passes ${through} only bare: with its glands on${size} it is too large. Fit them in place.`;
    case "fails":
      return `It does not pass ${through}, with its glands${size} or without.`;
    case "unchecked":
      return `Whether ${what} passes ${through} was not checked.`;
    default:
      return state satisfies never;
  }
}
