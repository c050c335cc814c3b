import { useShows } from "../../app/context.js";
import type { WorkShown } from "../../garage/messages.js";
import { LevelMark } from "../../parts/level-mark.js";
import { useWordsOfBuild } from "../../words/build.js";
import { waitWords } from "./step-sheet.js";
import { useRecordWords } from "./use-record-words.js";
import { useStepWords } from "./use-step-words.js";

/** What rests, what was built otherwise than the plan wants now, and what is odd on the record. */
export function RecordSaid({ shown, title }: { shown: WorkShown; title: (step: string) => string }) {
  const words = useWordsOfBuild().build;
  const shows = useShows();
  const steps = useStepWords();
  const { language, words: said } = useRecordWords();
  const { rests, asBuilt } = shown;
  return (
    <>
      {rests.length > 0 && (
        <section>
          <h3>{words.resting}</h3>
          <ul>
            {rests.map(({ after, cure, leftMin }) => (
              <li key={`${after} ${cure}`}>
                {title(after)}: {steps.cures[cure]}
                {"; "}
                <b>
                  {leftMin === undefined
                    ? words.noClock
                    : leftMin > 0
                      ? words.leftOf(waitWords(leftMin))
                      : words.over}
                </b>
              </li>
            ))}
          </ul>
        </section>
      )}
      {asBuilt.differences.length > 0 && (
        <section>
          <h3>
            <LevelMark level="mind" /> {words.otherwise}
          </h3>
          <ul lang={language}>
            {asBuilt.differences.map((one) => {
              const sentence = said.difference(one, shows);
              return <li key={sentence}>{sentence}</li>;
            })}
          </ul>
        </section>
      )}
      {asBuilt.problems.length > 0 && (
        <section>
          <h3>
            <LevelMark level="mind" /> {words.odd}
          </h3>
          <ul lang={language}>
            {asBuilt.problems.map((one) => {
              const sentence = said.tick(one, title);
              return <li key={sentence}>{sentence}</li>;
            })}
          </ul>
        </section>
      )}
    </>
  );
}
