import { useState } from "react";
import { hours } from "../../../words/numbers.js";
import { clockText, dayText, spanWords } from "../../../words/work-times.js";
import { bindingWords, proofWords, toolWords } from "../../../words/work-words.js";
import { useWords } from "../../app/context.js";
import type { WorkShown } from "../../garage/messages.js";
import { ViewLink } from "../../parts/view-link.js";
import { Said } from "./step-record.js";
import { isDesk } from "./use-work.js";

/** All that is left in its order, then what was done. A tap brings a step up. */
export function StepList(props: {
  shown: WorkShown;
  title: (step: string) => string;
  current: string | undefined;
  choose: (step: string) => void;
}) {
  const { shown, title, current, choose } = props;
  const words = useWords().build;
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
        <p lang="en">
          {hours(order.workMin / 60)} of work, {order.changes} changes of tool, done{" "}
          {spanWords(order.elapsedMin)} from now. {proofWords(order)}
        </p>
        {shown.freeHours.assumed && <p className="hint">{words.assumedHours}</p>}
        <ul className="hint" lang="en">
          {held.map((link) => (
            <li key={link.step}>{bindingWords(link, title)}</li>
          ))}
        </ul>
        <p>
          <ViewLink view="print">{words.toShort}</ViewLink>
        </p>
        <ol className="step-lines">
          {order.steps.map((planned, at) => {
            const day = dayText(planned.startMin, order.steps[at - 1]?.startMin, nowMin);
            return (
              <li key={planned.step}>
                {day !== "" && (
                  <b className="step-day" lang="en">
                    {day}
                  </b>
                )}
                <button
                  type="button"
                  className="quiet"
                  aria-current={planned.step === current ? "step" : undefined}
                  onClick={() => choose(planned.step)}
                >
                  <span className="step-clock">{clockText(planned.startMin)}</span>
                  <span lang="en">{title(planned.step)}</span>
                </button>
                {planned.lastUseOf.length > 0 && (
                  <span className="hint">
                    {words.putAway}{" "}
                    <span lang="en">{planned.lastUseOf.map((tool) => toolWords[tool]).join(", ")}</span>
                  </span>
                )}
              </li>
            );
          })}
        </ol>
      </details>
      <p>
        <ViewLink view="log">{words.toProjects}</ViewLink>
      </p>
      <DoneList shown={shown} title={title} />
    </>
  );
}

function DoneList({ shown, title }: { shown: WorkShown; title: (id: string) => string }) {
  const words = useWords().build;
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
            <span lang="en">{title(step)}</span>{" "}
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
