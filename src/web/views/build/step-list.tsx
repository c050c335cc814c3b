import { useLayoutEffect, useRef, useState } from "react";
import { type WorkDay, workDays } from "../../../core/work/work-days.js";
import { hours } from "../../../words/numbers.js";
import { clockText, dayText, spanWords } from "../../../words/work-times.js";
import { bindingWords, proofWords } from "../../../words/work-words.js";
import type { WorkShown } from "../../garage/messages.js";
import { ViewLink } from "../../parts/view-link.js";
import { useWordsOfBuild } from "../../words/build.js";
import { Said } from "./step-record.js";
import { useStepWords } from "./use-step-words.js";
import { isDesk } from "./use-work.js";

/** All that is left in its order, then what was done. A tap brings a step up. */
export function StepList(props: {
  shown: WorkShown;
  title: (step: string) => string;
  current: string | undefined;
  choose: (step: string) => void;
}) {
  const { shown, title, current, choose } = props;
  const words = useWordsOfBuild().build;
  const steps = useStepWords();
  const { order, nowMin } = shown;
  // beside the step it lies open from the first
  const [wide] = useState(isDesk);
  const held = order.binds.filter(({ by, waitedMin }) => by !== "hands" && waitedMin > 0).slice(0, 4);
  if (order.steps.length === 0) return <DoneList shown={shown} title={title} />;
  return (
    <>
      <details className="step-order" open={wide}>
        <summary>
          <h3>{words.order(order.steps.length)}</h3>
        </summary>
        <p>
          {steps.order(hours(order.workMin / 60), order.changes, spanWords(order.elapsedMin, steps))}{" "}
          {proofWords(order, steps)}
        </p>
        {shown.freeHours.assumed && <p className="hint">{words.assumedHours}</p>}
        <ul className="hint">
          {held.map((link) => (
            <li key={link.step}>{bindingWords(link, title, steps)}</li>
          ))}
        </ul>
        <p>
          <ViewLink view="print">{words.toShort}</ViewLink>
        </p>
        {workDays(shown).map((day) => (
          <DayFold
            key={day.day}
            day={day}
            name={dayText(day.startMin, undefined, nowMin, steps)}
            title={title}
            current={current}
            choose={choose}
          />
        ))}
      </details>
      <p>
        <ViewLink view="log">{words.toProjects}</ViewLink>
      </p>
      <DoneList shown={shown} title={title} />
    </>
  );
}

/** One day's steps. It opens when the step in hand is among them, and shuts by hand only, so that nothing moves under a finger. */
function DayFold(props: {
  day: WorkDay;
  name: string;
  title: (step: string) => string;
  current: string | undefined;
  choose: (step: string) => void;
}) {
  const { day, name, title, current, choose } = props;
  const words = useWordsOfBuild().build;
  const steps = useStepWords();
  const fold = useRef<HTMLDetailsElement>(null);
  const inHand = day.steps.some(({ step }) => step === current);
  useLayoutEffect(() => {
    if (inHand && fold.current) fold.current.open = true;
  }, [inHand]);
  return (
    <details className="step-day" ref={fold}>
      <summary>
        <h4>
          {name}{" "}
          <span className="hint">
            {words.dayDone(day.done, day.done + day.steps.length, hours(day.leftMin / 60))}
          </span>
        </h4>
      </summary>
      <ol className="step-lines">
        {day.steps.map((planned) => (
          <li key={planned.step}>
            <button
              type="button"
              className="quiet"
              aria-current={planned.step === current ? "step" : undefined}
              onClick={() => choose(planned.step)}
            >
              <span className="step-clock">{clockText(planned.startMin)}</span>
              <span>{title(planned.step)}</span>
            </button>
            {planned.lastUseOf.length > 0 && (
              <span className="hint">
                {words.putAway} {planned.lastUseOf.map((tool) => steps.tools[tool]).join(", ")}
              </span>
            )}
          </li>
        ))}
      </ol>
    </details>
  );
}

function DoneList({ shown, title }: { shown: WorkShown; title: (id: string) => string }) {
  const words = useWordsOfBuild().build;
  const told = shown.asBuilt.steps.flatMap(({ step, state, done, notes }) =>
    [...done, ...notes].map((one, at) => ({ step, state, one, key: `${step} ${at}` })),
  );
  if (told.length === 0) return null;
  return (
    <details className="step-order">
      <summary>
        <h3>{words.record(told.length)}</h3>
      </summary>
      <ol className="step-lines">
        {told.map(({ step, state, one, key }) => (
          <li key={key}>
            <span>{title(step)}</span>{" "}
            <span className="hint">
              {[words.states[state], one.when].filter((part) => part !== undefined).join(", ")}
            </span>
            <Said one={one} />
          </li>
        ))}
      </ol>
    </details>
  );
}
