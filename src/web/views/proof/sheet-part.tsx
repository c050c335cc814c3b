import { useId } from "react";
import type { Plan } from "../../../core/plan/model/plan.js";
import type { TakenReading } from "../../../core/plan/model/work.js";
import { type Probe, probeKey } from "../../../core/proving/probe.js";
import { againstSheet } from "../../../core/proving/sheet/against-sheet.js";
import type { SheetSection, SheetTest } from "../../../core/proving/sheet/types.js";
import type { JudgedReading } from "../../../core/proving/taken/judge.js";
import { readingWords } from "../../../words/proving.js";
import { expectedWords, howWords, sectionWords, settingWords } from "../../../words/test-sheet.js";
import { useFigures, usePlan } from "../../app/context.js";
import { LevelMark } from "../../parts/level-mark.js";
import { WrittenField } from "../../parts/written-field.js";
import { useWordsOfProof } from "../../words/proof.js";
import { useProof, useTakeReading } from "./use-proof.js";
import { useProofWords } from "./use-proof-words.js";
import { Waiting } from "./waiting.js";

/**
 * The test sheet: each reading with what to expect, and a place to put what the meter shows.
 * @param props.asked Sections that lie open, the first of them in sight: those of the step one comes from.
 */
export function SheetPart({ asked, toFaults }: { asked: readonly string[]; toFaults: () => void }) {
  const words = useWordsOfProof().proof;
  const { words: said, language } = useProofWords();
  const outcome = useProof("sheet");
  if (outcome?.is !== "sheet") return <Waiting outcome={outcome} />;
  return (
    <>
      <p className="hint">{words.sheetHint}</p>
      {outcome.sections
        .filter(({ tests }) => tests.length > 0)
        .map((section) => (
          <details
            key={section.id}
            className="sheet-part"
            open={asked.includes(section.id)}
            ref={section.id === asked[0] ? intoSight : undefined}
          >
            <summary>
              <h3 lang={language}>{sectionWords(section, said)}</h3>
            </summary>
            <Section section={section} toFaults={toFaults} />
          </details>
        ))}
    </>
  );
}

const intoSight = (section: HTMLDetailsElement | null) => section?.scrollIntoView();

function Section({ section, toFaults }: { section: SheetSection; toFaults: () => void }) {
  return (
    <ul className="sheet-tests">
      {section.tests.map((test) => (
        <Test key={test.id} test={test} section={section} toFaults={toFaults} />
      ))}
    </ul>
  );
}

function Test(props: { test: SheetTest; section: SheetSection; toFaults: () => void }) {
  const { test, section, toFaults } = props;
  const words = useWordsOfProof().proof;
  const { words: said, language } = useProofWords();
  const expectId = useId();
  const take = useTakeReading();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const plan = usePlan(({ reading }) => (reading.ok ? reading.plan : undefined));
  const { probe } = test;
  const how = howWords(test, said);
  const judged = useFigures()?.readings ?? [];
  const last = probe && plan && lastOf(plan, judged, probe);
  const shown = last?.beforeMend ? undefined : last?.taken;
  return (
    <li className="sheet-test">
      <span lang={language}>
        <b>{said.sheet.tests[test.test]}</b>
        {probe === undefined && ` · ${test.at}`}
      </span>
      {probe && (
        <WrittenField
          label={probe.kind === "marking" ? how : words.meterShows(how)}
          labelHidden
          describedBy={expectId}
          value={shown === undefined ? "" : readingWords(shown.kind, shown.value, said)}
          assumed={
            last?.beforeMend
              ? words.beforeMend(readingWords(last.taken.kind, last.taken.value, said))
              : words.notRead
          }
          disabled={readOnly}
          onTake={(typed) =>
            typed === ""
              ? undefined
              : take(probe, typed, section.kind === "way" ? `prove / ${section.at}` : undefined)
          }
        />
      )}
      {shown && <Against test={test} shown={shown} toFaults={toFaults} />}
      <span className="sheet-expect" lang={language} id={expectId}>
        {expectedWords(test, said)}
      </span>
      <span className="hint" lang={language}>
        {settingWords(test, said)}: {how}. {said.sheet.stops[test.stop]}
      </span>
    </li>
  );
}

/** What the reading on record says against what is expected, at once; where it is off, the way to what may be wrong. */
function Against(props: { test: SheetTest; shown: TakenReading; toFaults: () => void }) {
  const { proof } = useWordsOfProof();
  const { words: said, language } = useProofWords();
  const verdict = againstSheet(props.test, props.shown.value);
  if (verdict === undefined) return null;
  return (
    <p className="sheet-verdict" data-verdict={verdict} role="status">
      {verdict !== "within" && <LevelMark level="mend" />}
      <b lang={language}>{said.proving.verdicts[verdict]}</b>
      {verdict !== "within" && (
        <button type="button" className="quiet" onClick={props.toFaults}>
          {proof.parts.faults}
        </button>
      )}
    </p>
  );
}

interface Last {
  readonly taken: TakenReading;
  readonly beforeMend: boolean;
}

/** The last reading on record of that very thing. Of what the figures do not know yet the plan is asked. */
function lastOf({ work }: Plan, judged: readonly JudgedReading[], probe: Probe): Last | undefined {
  const on = [...probe.on].sort().join("|");
  const fresh = work.readings
    .slice(judged.length)
    .findLast(
      ({ kind, at, against, withOn, lifted = [] }) =>
        kind === probe.kind &&
        at === probe.at &&
        (!("against" in probe) || against === probe.against) &&
        lifted.length === 0 &&
        [...withOn].sort().join("|") === on,
    );
  if (fresh) return { taken: fresh, beforeMend: false };
  const key = probeKey(probe);
  const known = judged.findLast(({ reading }) => reading && probeKey(reading.probe) === key);
  return known && { taken: known.taken, beforeMend: known.mended !== undefined };
}
