import { useRef, useState } from "react";
import { newPlanText } from "../../../core/plan/new/new-plan.js";
import { MeasuredIn, usePreferences } from "../../app/context.js";
import { goTo } from "../../app/place.js";
import { useTitle } from "../../app/use-title.js";
import { Mark } from "../../parts/mark.js";
import { PlaceLink } from "../../parts/place-link.js";
import { useProblemWords } from "../../parts/use-problem-words.js";
import { withReader } from "../../state/full-reader.js";
import { takeIn } from "../../state/take-in.js";
import { useWordsOfAsking } from "../../words/asking.js";
import { BatteryQuestions } from "./battery-questions.js";
import { BoatQuestions } from "./boat-questions.js";
import { answersOf, type Draft, firstDraft } from "./draft.js";
import { GearQuestions } from "./gear-questions.js";

/** A few questions, and a plan to go on from. */
export default function NewPlanView() {
  const words = useWordsOfAsking();
  useTitle(words.asking.title);
  const told = useProblemWords().words;
  const [{ lengths }] = usePreferences();
  const usual = /^en$|-(US|LR|MM)\b/.test(navigator.language) ? "inches" : "millimetres";
  const [draft, setDraft] = useState<Draft>(() => firstDraft(words, lengths === "as plan" ? usual : lengths));
  const [problems, setProblems] = useState<readonly string[]>([]);
  const change = (part: Partial<Draft>) => setDraft((now) => ({ ...now, ...part }));
  const asked = useRef<HTMLElement>(null);
  const make = async () => {
    // what was typed and can't be read is not passed over: one is brought back to it
    const refused = asked.current?.querySelector<HTMLInputElement>('[aria-invalid="true"]');
    if (refused) {
      setProblems([words.asking.refused]);
      refused.focus();
      return;
    }
    const faults = gearFaults(draft, words.asking);
    const made = await withReader(() => newPlanText(answersOf(draft)));
    if (!made.ok) faults.push(...made.problems.map(told.line));
    setProblems(faults);
    if (faults.length > 0 || !made.ok) return;
    const { id } = await takeIn(made.text, { did: "made", from: "new" }, draft.name);
    goTo({ at: "plan", plan: id, view: "gear" });
  };
  return (
    <div className="start">
      <header className="start-head">
        <PlaceLink to={{ at: "start" }} className="start-name" title={words.shell.toStart}>
          <Mark sizePx={38} /> {words.shell.name}
        </PlaceLink>
      </header>
      <main className="asking" ref={asked}>
        <h1>{words.asking.title}</h1>
        <p className="lead">{words.asking.lead}</p>
        <MeasuredIn lengths={draft.lengths}>
          <BoatQuestions draft={draft} change={change} />
          <BatteryQuestions draft={draft} change={change} />
          <GearQuestions draft={draft} change={change} />
        </MeasuredIn>
        {problems.length > 0 && (
          <div className="read-problems" role="alert">
            <p>{words.asking.notSound}</p>
            <ul>
              {problems.map((problem) => (
                <li key={problem}>
                  <bdi>{problem}</bdi>
                </li>
              ))}
            </ul>
          </div>
        )}
        <p className="row">
          <button type="button" className="main" onClick={() => void make()}>
            {words.asking.make}
          </button>
          <PlaceLink to={{ at: "start" }} className="tick">
            {words.shell.cancel}
          </PlaceLink>
        </p>
      </main>
      <footer className="foot">{words.shell.planningAid}</footer>
    </div>
  );
}

interface GearWords {
  readonly nameTaken: string;
  readonly noName: string;
  readonly wholeNumber: string;
}

function gearFaults({ gear }: Draft, words: GearWords): string[] {
  const pieces = gear.filter((piece) => piece.taken);
  const names = pieces.map(({ name }) => name.trim());
  const faults: string[] = [];
  if (names.includes("")) faults.push(words.noName);
  if (new Set(names).size < names.length) faults.push(words.nameTaken);
  if (pieces.some(({ count }) => !/^[1-9]\d{0,3}$/.test(count))) faults.push(words.wholeNumber);
  return faults;
}
