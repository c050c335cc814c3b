import { nearestOf } from "../core/quantity/nearest.js";
import type { TerminalWords } from "../words/terminal/english.js";
import { InputProblem } from "./problem.js";
import { harmless } from "./terminal.js";

/** More names than these stand one a line. */
const mostInLine = 6;

/** That nothing of a kind has the name asked for: which was probably meant, and all there are. */
export function notThere(
  kind: keyof TerminalWords["common"]["unknown"]["kinds"],
  asked: string,
  names: readonly string[],
): InputProblem {
  const [only] = names;
  const meant = meantOf(asked, names);
  return new InputProblem(({ common: { unknown: say } }) => {
    const named = say.kinds[kind];
    const line =
      only === undefined
        ? say.none(named, asked)
        : names.length === 1
          ? say.only(named, asked, only)
          : meant !== undefined
            ? say.meant(named, asked, meant)
            : names.length <= mostInLine
              ? say.these(named, asked, names.join(", "))
              : undefined;
    return line === undefined
      ? [harmless(say.list(named, asked)), ...names.map((name) => `  ${harmless(name)}`)]
      : harmless(line);
  });
}

/** The one nearly written so, or the only one that has the word in it. */
export function meantOf(asked: string, names: readonly string[]): string | undefined {
  const near = nearestOf(asked, names);
  if (near !== undefined) return near;
  const word = asked.trim().toLowerCase().replace(/s$/, "");
  const holding = names.filter((name) => name.toLowerCase().includes(word));
  return word.length >= 3 && holding.length === 1 ? holding[0] : undefined;
}
