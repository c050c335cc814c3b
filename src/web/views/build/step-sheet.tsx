import { type Ref, useState } from "react";
import type { Step } from "../../../core/work/step.js";
import { sizeLines } from "../../../words/step-lines.js";
import { stepCautions } from "../../../words/work-cautions.js";
import { consumableText, kindTitles, stepTitle, toolWords } from "../../../words/work-words.js";
import { usePlan, useShows, useWords } from "../../app/context.js";
import { keepPhoto } from "../../garage/photos.js";
import { ownersMinutes } from "../../garage/use-foreman.js";
import { Icon } from "../../parts/icon.js";
import { ViewLink } from "../../parts/view-link.js";
import { StepPhotos } from "./step-photos.js";

/** One step with everything it needs, readable at arm's length. */
export function StepSheet(props: {
  step: Step;
  heading: Ref<HTMLHeadingElement>;
  waitMin: number;
  blockedBy: readonly string[];
  tick: (note: string, photos: readonly string[]) => Promise<boolean>;
  readOnly: boolean;
}) {
  const { step, waitMin, blockedBy, tick, readOnly } = props;
  const words = useWords().build;
  const [note, setNote] = useState("");
  const [photos, setPhotos] = useState<readonly string[]>([]);
  const [busy, setBusy] = useState(false);
  const done = async () => {
    setBusy(true);
    if (!(await tick(note, photos))) setBusy(false);
  };
  return (
    <article className="step-sheet" data-step={step.id}>
      <p className="hint" lang="en">
        {kindTitles[step.kind]} · {words.minutes(step.minutes)}
      </p>
      <h3 ref={props.heading} tabIndex={-1} lang="en">
        {stepTitle(step)}
      </h3>
      {step.caution !== undefined && (
        <p className="step-caution" lang="en">
          {stepCautions[step.caution]}
        </p>
      )}
      {waitMin > 0 && <p className="step-wait">{words.wait(waitWords(waitMin))}</p>}
      {waitMin === 0 && blockedBy.length > 0 && <p className="step-wait">{words.early(blockedBy.length)}</p>}
      <StepNeeds step={step} />
      {step.readings.length > 0 && (
        <p>
          <ViewLink view="proof">{words.toProof}</ViewLink>
        </p>
      )}
      {!readOnly && (
        <>
          <label className="field">
            <span>{words.note}</span>
            <textarea rows={2} value={note} onChange={(event) => setNote(event.target.value)} />
          </label>
          <StepPhotos files={photos} />
          <div className="step-buttons">
            <button type="button" className="main step-done" aria-busy={busy} onClick={() => void done()}>
              <Icon name="check" /> {words.done}
            </button>
            <PhotoButton step={step.id} onKept={(file) => setPhotos([...photos, file])} />
          </div>
        </>
      )}
    </article>
  );
}

function StepNeeds({ step }: { step: Step }) {
  const words = useWords().build;
  const shows = useShows();
  const sizes = sizeLines(step, shows);
  return (
    <>
      {sizes.length > 0 && (
        <ul className="step-sizes" lang="en">
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
              <dd lang="en">{step.tools.map((tool) => toolWords[tool]).join(", ")}</dd>
            </div>
          )}
          {step.consumables.length > 0 && (
            <div>
              <dt>{words.takes}</dt>
              <dd lang="en">{step.consumables.map(consumableText).join(", ")}</dd>
            </div>
          )}
        </dl>
      )}
    </>
  );
}

function PhotoButton({ step, onKept }: { step: string; onKept: (file: string) => void }) {
  const words = useWords().build;
  const plan = usePlan(({ record }) => record.id);
  const [failed, setFailed] = useState(false);
  const take = async (picture: File | undefined) => {
    if (picture === undefined) return;
    const kind = /^image\/(\w+)$/.exec(picture.type)?.[1] ?? "jpg";
    const file = `${step.replace(/[^\p{L}\p{N}]+/gu, "-").slice(0, 60)}-${ownersMinutes().toString(36)}-${Math.floor(performance.now()).toString(36)}.${kind}`;
    try {
      await keepPhoto(plan, file, picture);
      setFailed(false);
      onKept(file);
    } catch {
      setFailed(true);
    }
  };
  return (
    <>
      <label className="photo-button">
        {words.photo}
        <input
          className="away"
          type="file"
          accept="image/*"
          capture="environment"
          onChange={(event) => {
            void take(event.target.files?.[0]);
            event.target.value = "";
          }}
        />
      </label>
      {failed && (
        <p className="problem" role="alert">
          {words.photoFailed}
        </p>
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
