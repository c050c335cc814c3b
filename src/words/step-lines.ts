import type { Shows } from "../core/plan/model/plan.js";
import type { Step, StepSize } from "../core/work/step.js";
import { boreWords, readingWords } from "./hull-words.js";
import { lengthWords, marked } from "./numbers.js";
import { listed } from "./say.js";
import { namesText } from "./work-words.js";

const tie = "\u00a0";

/** The figures of a step, one line each; alike ones in one line. What the step's own title names is not named again. */
export function sizeLines(step: Step, shows: Shows): string[] {
  const [only, ...others] = step.pieces;
  return [...alike(step.sizes, shows)].map(([text, things]) =>
    things.length === 0 || (others.length === 0 && things.length === 1 && things[0] === only)
      ? text
      : `${namesText(things)}: ${text}`,
  );
}

function alike(sizes: readonly StepSize[], shows: Shows): Map<string, string[]> {
  const lines = new Map<string, string[]>();
  for (const size of sizes) {
    const [of, text] = sizeText(size, shows);
    const things = lines.get(text) ?? [];
    if (of !== "" && !things.includes(of)) things.push(of);
    lines.set(text, things);
  }
  return lines;
}

/** What it is of, and what it says of it. */
function sizeText(size: StepSize, shows: Shows): readonly [of: string, text: string] {
  switch (size.what) {
    case "length":
      return [size.of, `${lengthWords(size.m, shows)} along its way`];
    case "cut length":
      return [size.of, `cut ${lengthWords(size.mm / 1000, shows)} of ${size.wire}`];
    case "conductor":
      return ["", `conductors ${size.key.replaceAll(" ", tie)}`];
    case "hole":
      return [
        size.of,
        `hole ${boreWords(size.mm)}${size.face === undefined ? "" : `, ${faceWords(size.face)}`}`,
      ];
    case "pilot":
      return ["", `pilot ${boreWords(size.mm)}`];
    case "spacing":
      return ["", `held every ${lengthWords(size.m, shows)} or closer, and near its ends`];
    case "rating":
      return [size.of, marked(size.a, "A")];
    case "gland":
      return [size.of, `gland ${size.size}`];
    case "end":
      return [
        `${size.leg === "out" ? "positive" : "negative"}${size.colour === undefined ? "" : `, ${size.colour}`}`,
        [
          size.part ?? "",
          `strip ${boreWords(size.stripMm)}`,
          size.sleeve ?? "",
          size.tool,
          size.pullN === undefined ? "" : `must hold ${Math.round(size.pullN)}${tie}N`,
        ]
          .filter((part) => part !== "")
          .join("; "),
      ];
    case "mark":
      return [size.of, markText(size, shows)];
    case "behind":
      return [size.of, `behind it: ${size.words}`];
    case "through":
      return ["", `through ${listed(size.passages)}`];
    default:
      return size satisfies never;
  }
}

const faceWords = (face: string): string => `side ${face}`;

function markText(size: Extract<StepSize, { what: "mark" }>, shows: Shows): string {
  const read = (m: number) => readingWords(m, size.graduationM, shows);
  const readings = size.readings.map(({ from, m }) => `${read(m)} from ${from}`);
  const check = size.check === undefined ? "" : `; check ${read(size.check.m)} from ${size.check.from}`;
  return size.method === "two tapes"
    ? `${readings.join(", ")}${check}`
    : `${readings[0] ?? ""} along ${size.edge ?? "the edge"}, then ${read(size.readings[1]?.m ?? Number.NaN)} square to it${check}`;
}
