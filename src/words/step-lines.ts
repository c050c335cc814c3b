import type { Shows } from "../core/plan/model/plan.js";
import { pullTests } from "../core/reference/terminations.js";
import type { Step, StepSize } from "../core/work/step.js";
import { boreWords, readingWords } from "./hull-words.js";
import { listed } from "./listed.js";
import { lengthWords, marked } from "./numbers.js";
import { pathWords } from "./path-words.js";
import { english } from "./steps/english.js";
import type { StepWords } from "./steps/step-words.js";
import { namesText } from "./work-words.js";

const tie = "\u00a0";

/** The figures of a step, one line each; alike ones in one line. What the step's own title names is not named again. */
export function sizeLines(step: Step, shows: Shows, words: StepWords = english): string[] {
  const [only, ...others] = step.pieces;
  return [...alike(step.sizes, shows, words)].map(([text, things]) =>
    things.length === 0 || (others.length === 0 && things.length === 1 && things[0] === only)
      ? text
      : `${namesText(
          things.map((one) => pathWords(one, words.path)),
          words,
        )}: ${text}`,
  );
}

function alike(sizes: readonly StepSize[], shows: Shows, words: StepWords): Map<string, string[]> {
  const lines = new Map<string, string[]>();
  for (const size of sizes) {
    const [of, text] = sizeText(size, shows, words);
    const things = lines.get(text) ?? [];
    if (of !== "" && !things.includes(of)) things.push(of);
    lines.set(text, things);
  }
  return lines;
}

/** What it is of, and what it says of it. */
function sizeText(
  size: StepSize,
  shows: Shows,
  { sizes: say, joining, layout }: StepWords,
): readonly [of: string, text: string] {
  switch (size.what) {
    case "length":
      return [size.of, say.alongWay(lengthWords(size.m, shows))];
    case "cut length":
      return [size.of, say.cut(lengthWords(size.mm / 1000, shows), layout.wire(size.wire))];
    case "conductor":
      return ["", say.conductors(size.key.replaceAll(" ", tie))];
    case "hole":
      return [
        size.of,
        `${say.hole(boreWords(size.mm))}${size.face === undefined ? "" : `, ${say.face[size.face]}`}`,
      ];
    case "pilot":
      return ["", say.pilot(boreWords(size.mm))];
    case "spacing":
      return ["", say.heldEvery(lengthWords(size.m, shows))];
    case "rating":
      return [size.of, marked(size.a, "A")];
    case "gland":
      return [size.of, say.gland(size.size)];
    case "end":
      return [
        `${say.leg[size.leg]}${size.colour === undefined ? "" : `, ${layout.colour(size.colour)}`}`,
        [
          size.part === undefined ? "" : layout.part(size.part, "terminal"),
          say.strip(boreWords(size.stripMm)),
          size.sleeve === undefined ? "" : layout.part(size.sleeve, "sleeve"),
          layout.tool(size.tool),
          size.pullN === undefined ? "" : say.mustHold(forceWords(size.pullN, shows)),
        ]
          .filter((part) => part !== "")
          .join("; "),
      ];
    case "mark":
      return [size.of, markText(size, shows, say)];
    case "behind":
      return [size.of, say.behind(size.words)];
    case "through":
      return ["", say.through(listed(size.passages.map(layout.sided), joining))];
    default:
      return size satisfies never;
  }
}

function markText(size: Extract<StepSize, { what: "mark" }>, shows: Shows, say: StepWords["sizes"]): string {
  const read = (m: number) => readingWords(m, size.graduationM, shows);
  const readings = size.readings.map(({ from, m }) => say.reading(read(m), from));
  const check = size.check === undefined ? "" : say.check(say.reading(read(size.check.m), size.check.from));
  const set =
    size.method === "two tapes"
      ? readings.join(", ")
      : say.thenSquare(
          readings[0] ?? "",
          `${say.edges[size.edge ?? "unnamed"]}${size.way === undefined ? "" : `, ${say.ways[size.way]}`}`,
          read(size.readings[1]?.m ?? Number.NaN),
        );
  return `${set}${check}`;
}

/** A pull in the owner's unit, as the terminations print it. */
const forceWords = (pullN: number, shows: Shows): string =>
  shows.lengths === "inches"
    ? `${Math.round(pullN / pullTests.newtonsPerLbf)}${tie}lbf`
    : `${Math.round(pullN)}${tie}N`;
