import type { ReactNode } from "react";
import type { NextReading } from "../../../core/proving/next-reading.js";
import { type Probe, probeKey } from "../../../core/proving/probe.js";
import type { Suspect } from "../../../core/proving/suspect.js";
import type { Change } from "../../../core/proving/taken/aged.js";
import type { JudgedReading } from "../../../core/proving/taken/judge.js";
import type { IdleMend } from "../../../core/proving/taken/mended.js";
import type { ProofWords } from "../../../words/proof/proof-words.js";
import {
  bandWords,
  branchWords,
  changeSentence,
  meterWords,
  nextWords,
  probabilityWords,
  probeWords,
  readingWords,
  suspectSentence,
  suspectsShown,
  takenWords,
  verdictSentence,
} from "../../../words/proving.js";
import { usePlan } from "../../app/context.js";
import type { DiagnosisShown } from "../../garage/messages.js";
import { WrittenField } from "../../parts/written-field.js";
import { useWordsOfProof } from "../../words/proof.js";
import { useMends, useProof, useTakeReading } from "./use-proof.js";
import { useProofWords } from "./use-proof-words.js";
import { Waiting } from "./waiting.js";

/** Readings on record judged, what may be wrong, and what to measure next, until one suspect stands. */
export function FaultsPart({ toSheet }: { toSheet: () => void }) {
  const words = useWordsOfProof().proof;
  const outcome = useProof("prove");
  if (outcome?.is !== "prove") return <Waiting outcome={outcome} />;
  const { diagnosis } = outcome;
  if (diagnosis.judged.length === 0)
    return (
      <>
        <p>{words.noReadings}</p>
        <button type="button" onClick={toSheet}>
          {words.parts.sheet}
        </button>
      </>
    );
  return (
    <>
      {diagnosis.meterShare !== undefined && <MeterOff share={diagnosis.meterShare} />}
      <Again again={diagnosis.again} />
      <Suspects diagnosis={diagnosis}>
        {diagnosis.again.length === 0 && (
          <Next next={diagnosis.next} ranked={diagnosis.faults !== undefined} />
        )}
      </Suspects>
      <Changed diagnosis={diagnosis} />
      <Mends idle={diagnosis.idleMends} />
      <Judged judged={diagnosis.judged} />
    </>
  );
}

/** So many suspects stand before the reading to take next; the others behind it, folded. */
const shownFirst = 3;

/** @param children What to measure next: it comes before a long list of suspects is scrolled through. */
function Suspects(props: { diagnosis: DiagnosisShown; children: ReactNode }) {
  const { faults } = props.diagnosis;
  const words = useWordsOfProof().proof;
  if (faults === undefined) return null;
  const suspects = suspectsShown(faults.suspects);
  const sound = suspects[0]?.kind === "well";
  const first = suspects.slice(0, sound ? 1 : shownFirst);
  const others = suspects.slice(first.length);
  return (
    <section>
      <h3>{words.suspects}</h3>
      <Ranked suspects={first} mendable={!sound} />
      {!faults.explained && <p className="problem">{words.unexplained}</p>}
      {faults.notApart.length > 1 && !sound && <p>{words.notApart(faults.notApart.length)}</p>}
      {props.children}
      {others.length > 0 && (
        <details className="sheet-part">
          <summary>{words.others(others.length)}</summary>
          <Ranked suspects={others} mendable={!sound} />
        </details>
      )}
    </section>
  );
}

/** A suspect less likely than this is not offered as mended: one would have looked elsewhere first. */
const mendableFrom = 0.05;

function Ranked({ suspects, mendable = false }: { suspects: readonly Suspect[]; mendable?: boolean }) {
  const words = useWordsOfProof().proof;
  const { words: said, language } = useProofWords();
  const { put } = useMends();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  return (
    <ol className="suspects" lang={language}>
      {suspects.map((suspect) => (
        <li key={`${suspect.kind} ${suspect.at.join(" ")}`}>
          <b>{probabilityWords(suspect.probability)}</b>
          <span>{suspectSentence(suspect, said)}</span>
          {mendable && !readOnly && suspect.at.length > 0 && suspect.probability >= mendableFrom && (
            <button type="button" onClick={() => put(suspect.at)}>
              {words.mendedNow}
            </button>
          )}
        </li>
      ))}
    </ol>
  );
}

function MeterOff({ share }: { share: number }) {
  const { words: said, language } = useProofWords();
  return (
    <p className="problem" lang={language}>
      {meterWords(share, said)}
    </p>
  );
}

/** What proves a mend. */
function Again({ again }: { again: readonly Probe[] }) {
  const words = useWordsOfProof().proof;
  const { words: said, language } = useProofWords();
  const take = useTakeReading();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  if (again.length === 0) return null;
  return (
    <section className="next-reading">
      <h3>{words.again}</h3>
      {again.map((probe) => (
        <div key={probeKey(probe)}>
          <p lang={language}>{probeWords(probe, said)}</p>
          {!readOnly && (
            <WrittenField
              label={probe.kind === "marking" ? words.markedNow : words.meterShowsNow}
              value=""
              assumed={words.notRead}
              onTake={(typed) => (typed === "" ? undefined : take(probe, typed))}
            />
          )}
        </div>
      ))}
      <p className="hint">{words.againHint}</p>
    </section>
  );
}

/** What was put right, each of which can be taken back; and what is odd about it. */
function Mends({ idle }: { idle: readonly IdleMend[] }) {
  const words = useWordsOfProof().proof;
  const { words: said, language } = useProofWords();
  const { takeBack, note: putNote } = useMends();
  const mends = usePlan(({ reading }) => (reading.ok ? reading.plan.work.mends : undefined)) ?? [];
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  if (mends.length === 0) return null;
  return (
    <section>
      <h3>{words.mends}</h3>
      {idle.map(({ at, why }) => (
        <p key={`${why} ${at}`} className="problem" lang={language}>
          {said.proving.idleMends[why](branchWords(at, said))}
        </p>
      ))}
      <ul className="sheet-tests" lang={language}>
        {mends.map(({ at, when, note }, row) => (
          <li key={`${at} ${when}`} className="sheet-test">
            <span>{branchWords(at, said)}</span>
            {!readOnly && (
              <button type="button" className="quiet" onClick={() => takeBack(row)}>
                {words.takeBack}
              </button>
            )}
            <span className="hint">{when}</span>
            <WrittenField
              label={words.mendNote}
              value={note ?? ""}
              assumed={words.mendNoteHint}
              disabled={readOnly}
              onTake={(said) => putNote(row, said)}
            />
          </li>
        ))}
      </ul>
    </section>
  );
}

function Next({ next, ranked }: { next: readonly NextReading[]; ranked: boolean }) {
  const words = useWordsOfProof().proof;
  const { words: said, language } = useProofWords();
  const take = useTakeReading();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const [first, ...others] = next.slice(0, 3);
  if (first === undefined) return ranked ? <p>{words.nothingMore}</p> : null;
  return (
    <section className="next-reading">
      <h3>{words.next}</h3>
      <p lang={language}>{nextWords(first, said)}</p>
      {!readOnly && (
        <WrittenField
          label={first.probe.kind === "marking" ? words.markedNow : words.meterShowsNow}
          value=""
          assumed={words.notRead}
          onTake={(typed) => (typed === "" ? undefined : take(first.probe, typed))}
        />
      )}
      {others.length > 0 && (
        <p className="hint" lang={language}>
          {words.orElse} {others.map((other) => nextWords(other, said)).join("; ")}
        </p>
      )}
    </section>
  );
}

function Changed({ diagnosis: { changes, agedFaults } }: { diagnosis: DiagnosisShown }) {
  const words = useWordsOfProof().proof;
  const { words: said, language } = useProofWords();
  const aged = changes.filter(({ changed }) => changed);
  if (aged.length === 0) return null;
  return (
    <section>
      <h3>{words.aged}</h3>
      <ul lang={language}>
        {aged.map((change) => (
          <li key={changeKey(change)}>{changeSentence(change, said)}</li>
        ))}
      </ul>
      {agedFaults && <Ranked suspects={agedFaults.suspects.slice(0, 3)} />}
    </section>
  );
}

function Judged({ judged }: { judged: readonly JudgedReading[] }) {
  const words = useWordsOfProof().proof;
  const { words: said, language } = useProofWords();
  return (
    <section>
      <h3>{words.judged}</h3>
      <ul className="sheet-tests" lang={language}>
        {judged.map((one) => (
          <li key={rowKey(one, judged)} className="sheet-test" data-verdict={one.verdict}>
            <span>{takenWords(one, said)}</span>
            <b>{readingWords(one.taken.kind, one.taken.value, said)}</b>
            <span className="hint">{judgement(one, said)}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Readings have no name of their own: the plan calls them by their row. */
const rowKey = (one: JudgedReading, all: readonly JudgedReading[]): string =>
  `reading ${all.indexOf(one) + 1}`;

const changeKey = ({ before, now }: Change): string =>
  `${before.at} ${before.against ?? ""} ${before.when ?? ""} ${now.when ?? ""}`;

function judgement(one: JudgedReading, said: ProofWords): string {
  const { taken, band } = one;
  return [
    ...(band ? [said.proving.soundBoat(bandWords(taken.kind, band, said))] : []),
    verdictSentence(one, said),
    ...(taken.when === undefined ? [] : [taken.when]),
  ].join("; ");
}
