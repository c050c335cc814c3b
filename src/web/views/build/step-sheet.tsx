import { type Ref, useState } from "react";
import type { Step } from "../../../core/work/step.js";
import { sizeLines } from "../../../words/step-lines.js";
import { consumableText } from "../../../words/work-words.js";
import { useShows } from "../../app/context.js";
import { Icon } from "../../parts/icon.js";
import { ViewLink } from "../../parts/view-link.js";
import { useWordsOfBuild } from "../../words/build.js";
import { askFor } from "../proof/asked.js";
import { StepDrawings } from "./step-drawings.js";
import { NoteField, PhotoButton } from "./step-notes.js";
import { StepRecord } from "./step-record.js";
import { useStepWords } from "./use-step-words.js";
import type { Work } from "./use-work.js";

/** One step with everything it needs, readable at arm's length. */
export function StepSheet(props: {
  step: Step;
  title: string;
  heading: Ref<HTMLHeadingElement>;
  waitMin: number;
  blockedBy: readonly string[];
  tick: () => Promise<boolean>;
  note: Work["note"];
  draw: Work["draw"];
  readOnly: boolean;
}) {
  const { step, waitMin, blockedBy, tick, note, readOnly } = props;
  const words = useWordsOfBuild().build;
  const steps = useStepWords();
  const [busy, setBusy] = useState(false);
  const done = async () => {
    setBusy(true);
    if (!(await tick())) setBusy(false);
  };
  return (
    <article className="step-sheet" data-step={step.id}>
      <p className="hint">
        {steps.kinds[step.kind]} · {words.minutes(step.minutes)}
      </p>
      <h3 ref={props.heading} tabIndex={-1}>
        {props.title}
      </h3>
      {step.caution !== undefined && <p className="step-caution">{steps.cautions[step.caution]}</p>}
      {waitMin > 0 && <p className="step-wait">{words.wait(waitWords(waitMin))}</p>}
      {waitMin === 0 && blockedBy.length > 0 && <p className="step-wait">{words.early(blockedBy.length)}</p>}
      <StepNeeds step={step} />
      {isDrawn(step) && <StepDrawings step={step} draw={props.draw} />}
      {step.readings.length > 0 && (
        <p>
          <ViewLink view="proof" onGo={() => askFor(step.readings)}>
            {words.toProof}
          </ViewLink>
        </p>
      )}
      {!readOnly && (
        <>
          <NoteField keep={(said) => note(step.id, { note: said })} />
          <div className="step-buttons">
            <button type="button" className="main step-done" aria-busy={busy} onClick={() => void done()}>
              <Icon name="check" /> {words.done}
            </button>
            <PhotoButton step={step.id} onKept={(photo) => note(step.id, { photo })} />
          </div>
        </>
      )}
      <StepRecord step={step.id} />
    </article>
  );
}

const isDrawn = (step: Step): step is Step & { drawing: NonNullable<Step["drawing"]> } =>
  step.drawing !== undefined;

function StepNeeds({ step }: { step: Step }) {
  const words = useWordsOfBuild().build;
  const steps = useStepWords();
  const shows = useShows();
  const sizes = sizeLines(step, shows, steps);
  return (
    <>
      {sizes.length > 0 && (
        <ul className="step-sizes">
          {sizes.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
      {(step.tools.length > 0 || step.consumables.length > 0) && (
        <dl className="given step-needs">
          {step.tools.length > 0 && (
            <div>
              <dt>{words.tools}</dt>
              <dd>{step.tools.map((tool) => steps.tools[tool]).join(", ")}</dd>
            </div>
          )}
          {step.consumables.length > 0 && (
            <div>
              <dt>{words.takes}</dt>
              <dd>{step.consumables.map((one) => consumableText(one, steps)).join(", ")}</dd>
            </div>
          )}
        </dl>
      )}
    </>
  );
}

/** `1 h 20 min`; the least is one minute, so that a clock never shows none while it runs. */
export function waitWords(minutes: number): string {
  const whole = Math.max(1, Math.ceil(minutes));
  const hours = Math.floor(whole / 60);
  return hours === 0 ? `${whole}\u00a0min` : `${hours}\u00a0h ${whole % 60}\u00a0min`;
}
