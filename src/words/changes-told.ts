import { levels } from "../core/findings/finding.js";
import type { Shows } from "../core/plan/model/plan.js";
import type { Step } from "../core/work/step.js";
import type { PlanChanges } from "../core/working/plan-changes.js";
import { figureName, figureValue, partAmounts, thingLines } from "./change-words.js";
import { differenceSentence } from "./difference-words.js";
import { findingSentence } from "./findings.js";
import { levelWords } from "./labels.js";
import { counted, hours } from "./numbers.js";
import { stepTitles } from "./work-words.js";

export const changeTopics = ["written", "figures", "findings", "parts", "work", "built"] as const;
export type ChangeTopic = (typeof changeTopics)[number];

/** What a change of plan does on one head: sentences, and rows of a table. */
export interface ChangesTold {
  readonly about: ChangeTopic;
  /** Beside the heading: how many findings there were and are. */
  readonly counts: readonly string[];
  readonly sentences: readonly string[];
  /** Of figures: at, figure, before, after. Of parts: item, needed, to buy. */
  readonly rows: readonly (readonly string[])[];
}

/** What a change of plan does, in the same words wherever it is asked; a topic with nothing to say is left out. Empty: nothing changes. */
export function changesTold(changes: PlanChanges, shows: Shows): readonly ChangesTold[] {
  const { things, gone, appeared, parts, work } = changes;
  const told = (about: ChangeTopic, said: Partial<ChangesTold>): ChangesTold => ({
    about,
    counts: [],
    sentences: [],
    rows: [],
    ...said,
  });
  return [
    told("written", { sentences: things.flatMap(thingLines) }),
    told("figures", { rows: figureRows(changes) }),
    told("findings", {
      counts: levelCounts(changes),
      sentences: [
        ...gone.map((one) => `gone: ${findingSentence(one, shows)}`),
        ...appeared.map((one) => `new: ${findingSentence(one, shows)}`),
      ],
    }),
    told("parts", { rows: parts.map((one) => [one.item, ...partAmounts(one, shows)]) }),
    told("work", { sentences: workSentences(work) }),
    told("built", { sentences: work.undone.map((one) => differenceSentence(one, shows)) }),
  ].filter(({ sentences, rows }) => sentences.length + rows.length > 0);
}

function figureRows({ changes }: PlanChanges): string[][] {
  return (
    changes
      .map((change) => [
        change.at,
        figureName(change),
        figureValue(change.before, change.unit),
        figureValue(change.after, change.unit),
      ])
      // what reads alike before and after is no change to anyone
      .filter(([, , before, after]) => before !== after)
  );
}

function levelCounts({ ledger }: PlanChanges): string[] {
  return levels.flatMap((level) => {
    const [was, is] = [ledger.before.counts[level], ledger.after.counts[level]];
    return was === is ? [] : [`${levelWords[level].name.toLowerCase()} ${was} → ${is}`];
  });
}

const mostSteps = 12;

function workSentences({ come, gone, beforeMin, afterMin }: PlanChanges["work"]): string[] {
  if (come.length + gone.length === 0 && beforeMin === afterMin) return [];
  return [
    `${hours(beforeMin / 60)} of work left → ${hours(afterMin / 60)}`,
    ...stepSentences("new", come),
    ...stepSentences("gone", gone),
  ];
}

function stepSentences(word: string, steps: readonly Step[]): string[] {
  const title = stepTitles(steps);
  const more = steps.length - mostSteps;
  return [
    ...steps.slice(0, mostSteps).map(({ id }) => `${word}: ${title(id)}`),
    ...(more > 0 ? [`and ${counted(more, `more step ${word}`, `more steps ${word}`)}`] : []),
  ];
}
