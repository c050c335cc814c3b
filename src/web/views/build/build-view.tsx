import { useEffect, useMemo, useRef, useState } from "react";
import { stepTitles } from "../../../words/work-words.js";
import { usePlan } from "../../app/context.js";
import { ReadProblems } from "../../app/read-problems.js";
import type { WorkShown } from "../../garage/messages.js";
import { useWordsOfBuild } from "../../words/build.js";
import { Finish } from "./finish.js";
import { HandsTools } from "./hands-tools.js";
import { RecordSaid } from "./record-said.js";
import { StepList } from "./step-list.js";
import { StepSheet } from "./step-sheet.js";
import { useStepWords } from "./use-step-words.js";
import { useWork, type Work } from "./use-work.js";

/** The work in its order: one step at a time, large, with everything it needs; what is done is ticked and kept in the plan. */
export function View() {
  const words = useWordsOfBuild();
  const sound = usePlan(({ reading }) => reading.ok);
  return (
    <div className="build stack">
      <h2 className="away">{words.views.names.build}</h2>
      {sound ? <Garage /> : <ReadProblems />}
    </div>
  );
}

function Garage() {
  const words = useWordsOfBuild().build;
  const work = useWork();
  const { work: shown, problem } = work;
  return (
    <>
      {problem !== undefined && (
        <p className="problem" role="alert">
          {problem}
        </p>
      )}
      {shown ? <Bench work={work} shown={shown} /> : <p className="loading">{words.laying}</p>}
    </>
  );
}

function Bench({ work, shown }: { work: Work; shown: WorkShown }) {
  const words = useWordsOfBuild().build;
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const [chosen, choose] = useState<string>();
  const [spoken, setSpoken] = useState(false);
  const last = lastTick(shown);
  const open = chosen !== undefined && !shown.project.done.has(chosen) ? shown.step.get(chosen) : undefined;
  const step = open ?? shown.next?.step;
  const left = shown.order.steps.length;
  const total = shown.project.steps.length;
  const steps = useStepWords();
  const titleOf = useMemo(() => stepTitles(shown.step.values(), steps), [shown.step, steps]);
  const title = step === undefined ? undefined : titleOf(step.id);
  const wasAt = useRef(step?.id);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (wasAt.current === step?.id) return;
    wasAt.current = step?.id;
    // the next step is read out by a screen reader, and keys go on from there
    heading.current?.focus({ preventScroll: true });
    heading.current?.scrollIntoView({ block: "nearest" });
    if (spoken && title !== undefined) speak(title);
  }, [step?.id, spoken, title]);
  const tick = async () => {
    if (step === undefined) return false;
    // a note that is still being typed is kept before its step goes
    if (document.activeElement instanceof HTMLTextAreaElement) document.activeElement.blur();
    const kept = await work.tick(step.id);
    if (kept) choose(undefined);
    return kept;
  };
  return (
    <>
      <p className="build-progress">
        <progress
          max={total}
          value={total - left}
          aria-label={words.progress}
          aria-valuetext={words.doneOf(total - left, total)}
        />{" "}
        {words.doneOf(total - left, total)}
      </p>
      <div className="build-bench">
        <div className="stack">
          {step && title !== undefined ? (
            <StepSheet
              key={step.id}
              step={step}
              title={title}
              heading={heading}
              waitMin={shown.next?.step.id === step.id ? shown.next.waitMin : waitOf(shown, step.id)}
              blockedBy={blockedBy(shown, step.id)}
              tick={tick}
              note={work.note}
              draw={work.draw}
              readOnly={readOnly}
            />
          ) : (
            <Finish heading={heading} finish={work.finish} any={total > 0} readOnly={readOnly} />
          )}
          <HandsTools
            spoken={spoken}
            onSpoken={(on) => {
              setSpoken(on);
              if (on && title !== undefined) speak(title);
            }}
            forward={() => void tick()}
            back={() => last !== undefined && work.untick(last)}
            readOnly={readOnly}
          />
          {last !== undefined && !readOnly && (
            <button type="button" onClick={() => work.untick(last)}>
              {words.untick}: {titleOf(last)}
            </button>
          )}
        </div>
        <div className="stack">
          <RecordSaid shown={shown} title={titleOf} />
          <StepList shown={shown} title={titleOf} current={step?.id} choose={choose} />
        </div>
      </div>
    </>
  );
}

/** The step ticked last in the project in hand, by the order of the record. */
function lastTick({ project, asBuilt }: WorkShown): string | undefined {
  return asBuilt.record.workDone.findLast(({ step }) => project.done.has(step))?.step;
}

function waitOf({ rests }: WorkShown, id: string): number {
  return Math.max(
    0,
    ...rests.filter(({ holds }) => holds.includes(id)).map(({ leftMin, hours }) => leftMin ?? hours * 60),
  );
}

/** Steps that should come first. Ticking before them is allowed, and said. */
function blockedBy({ project, order }: WorkShown, id: string): readonly string[] {
  const open = new Set(order.steps.map(({ step }) => step));
  return [
    ...new Set(
      project.precedences.flatMap(({ before, after }) => (after === id && open.has(before) ? [before] : [])),
    ),
  ];
}

/** Reads a line aloud with a voice of this machine. None: nothing is said. */
function speak(text: string): void {
  const { lang: language } = document.documentElement;
  const voice = speechSynthesis
    .getVoices()
    .find(({ localService, lang }) => localService && lang.startsWith(language));
  speechSynthesis.cancel();
  const line = new SpeechSynthesisUtterance(text);
  line.lang = language;
  if (voice) line.voice = voice;
  speechSynthesis.speak(line);
}
