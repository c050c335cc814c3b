import type { StepNote, WorkRecord } from "../../../core/plan/model/work.js";
import { usePlan } from "../../app/context.js";
import { useWordsOfBuild } from "../../words/build.js";
import { StepPhotos } from "./step-photos.js";

/** What was noted and photographed of one step so far, ticked or not, in this project and before. */
export function StepRecord({ step }: { step: string }) {
  const words = useWordsOfBuild().build;
  const record = usePlan(({ reading }) => (reading.ok ? reading.plan.work : undefined));
  const said = record === undefined ? [] : saidOf(record, step);
  if (said.length === 0) return null;
  return (
    <section className="step-record">
      <h4>{words.recordOfStep}</h4>
      <ul className="step-lines">
        {said.map((one) => (
          <li key={`${one.when} ${one.note} ${one.photos.map(({ file }) => file).join(" ")}`}>
            <span className="hint">{one.when}</span>
            <Said one={one} />
          </li>
        ))}
      </ul>
    </section>
  );
}

/** One note with its photos. */
export function Said({ one }: { one: StepNote }) {
  return (
    <>
      {one.note !== undefined && (
        <p className="step-note">
          <bdi>{one.note}</bdi>
        </p>
      )}
      <StepPhotos files={one.photos.map(({ file }) => file)} />
    </>
  );
}

function saidOf(record: WorkRecord, step: string): StepNote[] {
  return [...record.projects, record]
    .flatMap(({ workDone, notes }) => [...workDone, ...notes])
    .filter((one) => one.step === step && (one.note !== undefined || one.photos.length > 0));
}
