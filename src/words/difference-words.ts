import type { Place } from "../core/plan/model/placing.js";
import type { Shows } from "../core/plan/model/plan.js";
import type { Difference } from "../core/work/differences.js";
import type { TickProblem } from "../core/work/ticks.js";
import { boreWords } from "./hull-words.js";
import { lengthWords, marked } from "./numbers.js";
import { reasonWords } from "./work-words.js";

/** One difference between what was built and what the plan wants, as a sentence. */
export function differenceSentence(difference: Difference, shows: Shows): string {
  const length = (m: number) => lengthWords(Math.abs(m), shows);
  const { built } = difference;
  switch (difference.kind) {
    case "hole moved":
      return `The hole for ${difference.built.hole} exists; the plan now wants it ${moved(difference, length)}.`;
    case "hole not compared":
      return `The hole for ${difference.built.hole} exists at ${placeWords(difference.built.at, shows)}; whether that is where the plan wants it was not checked, since the two are counted from different points.`;
    case "hole on another face":
      return `The hole for ${difference.built.hole} exists in ${difference.built.on} (${difference.built.side}); the plan now wants it in ${difference.wanted.on} (${difference.wanted.side}).`;
    case "hole size":
      return `The hole for ${difference.built.hole} is ${boreWords(difference.built.sizeM * 1000)}; the plan now wants ${boreWords(difference.wantedM * 1000)}${difference.byM < 0 ? ", which is smaller than what is there" : ""}.`;
    case "hole not wanted":
      return `A hole of ${boreWords(difference.built.sizeM * 1000)} exists in ${difference.built.on} for ${difference.built.hole}; the plan has no hole for that any more. It must be closed or used.`;
    case "entry moved":
      return `The entry of ${difference.built.run} into ${difference.built.box} exists ${boxPlace(difference.built.on, difference.built.atM)}; the plan now wants it ${difference.wanted.on === undefined || difference.wanted.atM === undefined ? "elsewhere" : boxPlace(difference.wanted.on, difference.wanted.atM)}.`;
    case "entry size":
      return `The entry of ${difference.built.run} into ${difference.built.box} is ${boreWords(difference.built.holeM * 1000)}; the plan now wants ${boreWords(difference.wantedM * 1000)}.`;
    case "entry not wanted":
      return `${difference.built.box} has an entry of ${boreWords(difference.built.holeM * 1000)} for ${difference.built.run}, which does not go there any more: a spare entry now, to be plugged.`;
    case "length":
      return `${difference.built.run} lies ${length(difference.built.lengthM)} long; the plan says ${length(difference.wantedM)}, ${length(difference.byM)} ${difference.byM > 0 ? "more" : "less"}.`;
    case "conductor size":
      return `${difference.built.run} was made of ${difference.built.size?.key ?? "another size"}; the plan now wants ${difference.wanted}.`;
    case "run not wanted":
      return `${difference.built.run} lies in the boat, ${length(difference.built.lengthM)} of it; the plan has no such run any more.`;
    case "joint kind":
      return `The joint of ${difference.built.at} at its ${difference.built.end} is a ${difference.built.kind}; the plan now wants a ${difference.wanted}.`;
    case "joint not wanted":
      return `A ${difference.built.kind} was made at the ${difference.built.end} of ${difference.built.at}; the plan has nothing called so any more.`;
    case "rating":
      return `${difference.built.device} holds ${marked(difference.built.ratingA, "A")}; the plan now wants ${marked(difference.wantedA, "A")}.`;
    case "device not wanted":
      return `${difference.built.device} with ${marked(difference.built.ratingA, "A")} is on record; the plan has no such device any more.`;
    default:
      return `${String(built)}${difference satisfies never}`;
  }
}

/** `20 mm further along and 5 mm lower off the edge`. */
function moved(
  { alongM, offM, byM }: { readonly alongM: number; readonly offM: number; readonly byM: number },
  length: (m: number) => string,
): string {
  const parts = [
    ...(Math.abs(alongM) > 0.0005
      ? [`${length(alongM)} ${alongM > 0 ? "further" : "back"} along the edge`]
      : []),
    ...(Math.abs(offM) > 0.0005 ? [`${length(offM)} ${offM > 0 ? "further off" : "nearer to"} it`] : []),
  ];
  return parts.length === 0 ? `${length(byM)} away` : parts.join(" and ");
}

function placeWords({ alongM, from, edge, offM }: Place, shows: Shows): string {
  const along = `${lengthWords(alongM, shows)} along${from === undefined ? "" : ` from ${from}`}`;
  return `${along}, ${lengthWords(offM, shows)} ${edge === undefined ? "off" : `${edge.off} ${edge.line}`}`;
}

function boxPlace(on: string, [along, base]: readonly [number, number]): string {
  return `${boreWords(along * 1000)} along side ${on} and ${boreWords(base * 1000)} from the base`;
}

/** What is odd about a tick. `title` gives a step's own line, or its id where the plan has none. */
export function tickProblemSentence(problem: TickProblem, title: (step: string) => string): string {
  switch (problem.problem) {
    case "out of order": {
      const [first, ...rest] = problem.missing;
      const more = rest.length === 0 ? "" : `, and ${rest.length} more before it`;
      return first === undefined
        ? `“${title(problem.step)}” was ticked out of order.`
        : `“${title(problem.step)}” is ticked, but not “${title(first.step)}” (${reasonWords[first.reason]})${more}.`;
    }
    case "ticked twice":
      return `“${title(problem.step)}” is ticked ${problem.times} times.`;
    case "not in the plan":
      return `${problem.step} is on record; the plan has no such step any more. The record stays.`;
    default:
      return problem satisfies never;
  }
}

/** What is said of the record of the work, in one language. */
export interface RecordWords {
  readonly difference: typeof differenceSentence;
  readonly tick: typeof tickProblemSentence;
  readonly place: typeof placeWords;
}

export const recordInEnglish: RecordWords = {
  difference: differenceSentence,
  tick: tickProblemSentence,
  place: placeWords,
};
