import { levels } from "../core/findings/finding.js";
import type { Shows } from "../core/plan/model/plan.js";
import type { Step } from "../core/work/step.js";
import type { PlanChanges } from "../core/working/plan-changes.js";
import type { ChangeLanguage } from "./change-language.js";
import { changesInEnglish, figureName, figureValue, partAmounts, thingLines } from "./change-words.js";
import { findingSentence } from "./findings.js";
import { hours, lengthWords, noFigure } from "./numbers.js";
import { stepTitles } from "./work-words.js";

const changeTopics = ["written", "figures", "findings", "parts", "work", "built"] as const;
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
export function changesTold(
  changes: PlanChanges,
  shows: Shows,
  words: ChangeLanguage = changesInEnglish,
): readonly ChangesTold[] {
  const { things, gone, appeared, parts, work } = changes;
  const told = (about: ChangeTopic, said: Partial<ChangesTold>): ChangesTold => ({
    about,
    counts: [],
    sentences: [],
    rows: [],
    ...said,
  });
  return [
    told("written", { sentences: things.flatMap((one) => thingLines(one, words)) }),
    told("figures", { rows: figureRows(changes, words) }),
    told("findings", {
      counts: levelCounts(changes, words),
      sentences: [
        ...gone.map((one) => `${words.ofFindings.gone}: ${findingSentence(one, shows, words.findings)}`),
        ...appeared.map((one) => `${words.ofFindings.come}: ${findingSentence(one, shows, words.findings)}`),
      ],
    }),
    told("parts", {
      sentences: cutSentences(changes, shows, words),
      rows: parts.map((one) => [one.item, ...partAmounts(one, shows)]),
    }),
    told("work", { sentences: workSentences(work, words) }),
    told("built", { sentences: work.undone.map((one) => words.difference(one, shows)) }),
  ].filter(({ sentences, rows }) => sentences.length + rows.length > 0);
}

function figureRows({ changes }: PlanChanges, words: ChangeLanguage): string[][] {
  return (
    changes
      .map((change) => [
        change.at,
        figureName(change, words),
        figureValue(change.before, change.unit, words),
        figureValue(change.after, change.unit, words),
      ])
      // what reads alike before and after is no change to anyone
      .filter(([, , before, after]) => before !== after)
  );
}

function levelCounts({ ledger }: PlanChanges, words: ChangeLanguage): string[] {
  return levels.flatMap((level) => {
    const [was, is] = [ledger.before.counts[level], ledger.after.counts[level]];
    return was === is ? [] : [`${words.levels[level].name.toLowerCase()} ${was} → ${is}`];
  });
}

const mostSteps = 12;

function cutSentences({ cuts }: PlanChanges, shows: Shows, words: ChangeLanguage): string[] {
  const length = (mm: number | undefined) => (mm === undefined ? noFigure : lengthWords(mm / 1000, shows));
  const more = cuts.length - mostSteps;
  return [
    ...cuts
      .slice(0, mostSteps)
      .map(({ run, beforeMm, afterMm }) => words.cut(run, length(beforeMm), length(afterMm))),
    ...(more > 0 ? [words.moreCuts(more)] : []),
  ];
}

function workSentences(
  { come, gone, beforeMin, afterMin }: PlanChanges["work"],
  words: ChangeLanguage,
): string[] {
  if (come.length + gone.length === 0 && beforeMin === afterMin) return [];
  return [
    words.workLeft(hours(beforeMin / 60), hours(afterMin / 60)),
    ...stepSentences("come", come, words),
    ...stepSentences("gone", gone, words),
  ];
}

function stepSentences(fate: "come" | "gone", steps: readonly Step[], words: ChangeLanguage): string[] {
  const title = stepTitles(steps, words.steps);
  const more = steps.length - mostSteps;
  return [
    ...steps.slice(0, mostSteps).map(({ id }) => `${words.ofSteps[fate]}: ${title(id)}`),
    ...(more > 0 ? [words.moreSteps[fate](more)] : []),
  ];
}
