import { useEffect, useState } from "react";
import { type ChangesTold, changesTold } from "../../../words/changes-told.js";
import { usePlan, useShows } from "../../app/context.js";
import type { ForemanOutcome } from "../../garage/messages.js";
import { useForeman } from "../../garage/use-foreman.js";
import { lineHunks } from "../../state/text/lines.js";
import { useWordsOfLog } from "../../words/log.js";
import { StepPicker } from "./step-picker.js";
import { useChangeWords } from "./use-change-words.js";
import { useTexts } from "./use-steps.js";

interface Pair {
  readonly before: number;
  readonly after: number;
}

/** What lies between any two states: in words and figures as `skiffloom changes` tells it, and as lines of the plan. */
export function CompareStates({
  of,
  choose,
}: {
  of: Pair | undefined;
  choose: (pair: Pair | undefined) => void;
}) {
  const words = useWordsOfLog();
  const last = usePlan(({ record }) => record.steps);
  if (!of) return null;
  const picker = (which: keyof Pair) => (
    <StepPicker
      label={which === "before" ? words.log.compare : words.log.compareWith}
      no={of[which]}
      last={last}
      choose={(no) => choose({ ...of, [which]: no })}
    />
  );
  return (
    <section className="compare" aria-label={words.log.compare}>
      <h3>{words.log.compare}</h3>
      <p className="row">
        {picker("before")} {words.log.compareWith} {picker("after")}
        <button type="button" className="quiet" onClick={() => choose(undefined)}>
          {words.shell.close}
        </button>
      </p>
      <Compared of={of} />
    </section>
  );
}

function Compared({ of }: { of: Pair }) {
  const words = useWordsOfLog();
  const texts = useTexts(of.before, of.after);
  if (texts === undefined) return <p role="status">{words.shell.loading}</p>;
  if (texts.is === "failed") return <p role="alert">{words.keeping.notRead}</p>;
  const [before, after] = texts.found;
  if (before === undefined || after === undefined) return <p>{words.log.unreadable}</p>;
  if (before === after) return <p>{words.log.same}</p>;
  return (
    <>
      <Difference before={before} after={after} />
      <TextDifference before={before} after={after} />
    </>
  );
}

function Difference({ before, after }: { before: string; after: string }) {
  const words = useWordsOfLog();
  const shows = useShows();
  const { language, words: said } = useChangeWords();
  const ask = useForeman();
  const [outcome, setOutcome] = useState<ForemanOutcome>();
  useEffect(() => {
    let wanted = true;
    const load = async () => {
      setOutcome(undefined);
      const answer = await ask({ ask: "changes", before, text: after });
      if (wanted) setOutcome(answer);
    };
    void load();
    return () => {
      wanted = false;
    };
  }, [ask, before, after]);
  if (outcome === undefined) return <p role="status">{words.shell.workingOut}</p>;
  if (outcome.is !== "changes") return <p>{words.shell.problemsInPlan}</p>;
  const told = changesTold(outcome.changes, shows, said);
  return (
    <section>
      <h4>{words.log.difference}</h4>
      {told.length === 0 ? (
        <p>{words.log.nothingElse}</p>
      ) : (
        told.map((one) => <Told key={one.about} of={one} language={language} />)
      )}
    </section>
  );
}

/** One head of what the change does. */
function Told(props: { of: ChangesTold; language: string }) {
  const { about, counts, sentences, rows } = props.of;
  const words = useWordsOfLog().log;
  return (
    <section className="told" data-about={about}>
      <h5>
        {words.topics[about]}
        {counts.length > 0 && <span lang={props.language}>: {counts.join(", ")}</span>}
      </h5>
      {sentences.length > 0 && (
        <ul lang={props.language}>
          {sentences.map((one) => (
            <li key={one}>
              <bdi>{one}</bdi>
            </li>
          ))}
        </ul>
      )}
      {rows.length > 0 && (
        <ToldTable
          rows={rows}
          heads={about === "parts" ? words.partColumns : words.figureColumns}
          // parts to buy are called as in the list of parts, in English
          language={about === "parts" ? "en" : props.language}
        />
      )}
    </section>
  );
}

function ToldTable(props: { rows: ChangesTold["rows"]; heads: readonly string[]; language: string }) {
  const { rows, heads, language } = props;
  // the last two columns say what was and what is
  const ofNumber = (column: number) => (column >= heads.length - 2 ? "number" : undefined);
  return (
    <div className="wide">
      <table>
        <thead>
          <tr>
            {heads.map((head, column) => (
              <th key={head} scope="col" className={ofNumber(column)}>
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody lang={language}>
          {rows.map((row) => (
            <tr key={row.join("\n")}>
              {heads.map((head, column) =>
                column === 0 ? (
                  <th key={head} scope="row">
                    <bdi>{row[column]}</bdi>
                  </th>
                ) : (
                  <td key={head} className={ofNumber(column)}>
                    {row[column]}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

const mostLines = 400;

function TextDifference({ before, after }: { before: string; after: string }) {
  const words = useWordsOfLog().log;
  const [was, is] = [before.split("\n"), after.split("\n")];
  const lines = lineHunks(was, is).flatMap(({ fromA, toA, fromB, toB }) => [
    ...was.slice(fromA, toA).map((line, index) => ({ sign: "−", line, no: fromA + index + 1 })),
    ...is.slice(fromB, toB).map((line, index) => ({ sign: "+", line, no: fromB + index + 1 })),
  ]);
  return (
    <section>
      <h4>{words.differenceText}</h4>
      <pre className="difference">
        {lines.slice(0, mostLines).map(({ sign, line, no }) => (
          <span key={`${sign} ${no}`} className={sign === "+" ? "added" : "removed"}>
            {sign} <bdi>{line}</bdi>
            {"\n"}
          </span>
        ))}
        {lines.length > mostLines && "…"}
      </pre>
    </section>
  );
}
