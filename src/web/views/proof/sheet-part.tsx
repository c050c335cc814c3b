import type { Plan } from "../../../core/plan/model/plan.js";
import type { TakenReading } from "../../../core/plan/model/work.js";
import type { Probe } from "../../../core/proving/probe.js";
import type { SheetSection, SheetTest } from "../../../core/proving/sheet/types.js";
import { readingWords } from "../../../words/proving.js";
import {
  expectedWords,
  howWords,
  sectionWords,
  settingWords,
  sheetTestWords,
  stopWords,
} from "../../../words/test-sheet.js";
import { usePlan, useWords } from "../../app/context.js";
import { WrittenField } from "../../parts/written-field.js";
import { useProof, useTakeReading } from "./use-proof.js";
import { Waiting } from "./waiting.js";

/** The test sheet: each reading with what to expect, and a place to put what the meter shows. */
export function SheetPart() {
  const words = useWords().proof;
  const outcome = useProof("sheet");
  if (outcome?.is !== "sheet") return <Waiting outcome={outcome} />;
  return (
    <>
      <p className="hint">{words.sheetHint}</p>
      {outcome.sections
        .filter(({ tests }) => tests.length > 0)
        .map((section) => (
          <details key={section.id} className="sheet-part">
            <summary>
              <h3 lang="en">{sectionWords(section)}</h3>
            </summary>
            <Section section={section} />
          </details>
        ))}
    </>
  );
}

function Section({ section }: { section: SheetSection }) {
  return (
    <ul className="sheet-tests">
      {section.tests.map((test) => (
        <Test key={test.id} test={test} section={section} />
      ))}
    </ul>
  );
}

function Test({ test, section }: { test: SheetTest; section: SheetSection }) {
  const words = useWords().proof;
  const take = useTakeReading();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const plan = usePlan(({ reading }) => (reading.ok ? reading.plan : undefined));
  const { probe } = test;
  const shown = probe && plan && lastOf(plan, probe);
  return (
    <li className="sheet-test">
      <span lang="en">
        <b>{sheetTestWords[test.test]}</b>
        {probe === undefined && ` · ${test.at}`}
      </span>
      {probe && (
        <WrittenField
          label={probe.kind === "marking" ? howWords(test) : words.meterShows(howWords(test))}
          labelHidden
          value={shown === undefined ? "" : readingWords(shown.kind, shown.value)}
          assumed={words.notRead}
          disabled={readOnly}
          onTake={(typed) =>
            typed === ""
              ? undefined
              : take(probe, typed, section.kind === "way" ? `prove / ${section.at}` : undefined)
          }
        />
      )}
      <span className="sheet-expect" lang="en">
        {expectedWords(test)}
      </span>
      <span className="hint" lang="en">
        {settingWords(test)}: {howWords(test)}. {stopWords[test.stop]}
      </span>
    </li>
  );
}

/** The last reading on record of that very thing. */
function lastOf({ work }: Plan, probe: Probe): TakenReading | undefined {
  const on = [...probe.on].sort().join("|");
  return work.readings.findLast(
    ({ kind, at, against, withOn, lifted = [] }) =>
      kind === probe.kind &&
      at === probe.at &&
      (!("against" in probe) || against === probe.against) &&
      lifted.length === 0 &&
      [...withOn].sort().join("|") === on,
  );
}
