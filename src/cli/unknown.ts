import { nearestOf } from "../core/quantity/nearest.js";
import { InputProblem } from "./problem.js";
import { harmless } from "./terminal.js";

/** More names than these stand one a line. */
const mostInLine = 6;

/**
 * That nothing of a kind has the name asked for: which was probably meant, and all there are.
 * @param kind `face`, `part of the packet`.
 */
export function notThere(kind: string, asked: string, names: readonly string[]): InputProblem {
  const [only] = names;
  const meant = meantOf(asked, names);
  const start = `no ${kind} is called ${asked}; `;
  const lines =
    only === undefined
      ? [`${start}there is none`]
      : names.length === 1
        ? [`${start}there is only ${only}`]
        : meant !== undefined
          ? [`${start}did you mean '${meant}'?`]
          : names.length <= mostInLine
            ? [`${start}there are ${names.join(", ")}`]
            : [`${start}there are`, ...names.map((name) => `  ${name}`)];
  return new InputProblem(lines.map((line) => line.match(/^ */)?.[0] + harmless(line.trimStart())));
}

/** The one nearly written so, or the only one that has the word in it. */
export function meantOf(asked: string, names: readonly string[]): string | undefined {
  const near = nearestOf(asked, names);
  if (near !== undefined) return near;
  const word = asked.trim().toLowerCase().replace(/s$/, "");
  const holding = names.filter((name) => name.toLowerCase().includes(word));
  return word.length >= 3 && holding.length === 1 ? holding[0] : undefined;
}
