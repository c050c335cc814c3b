import { useEffect, useState } from "react";
import { type Comparison as Compared, compareFigures } from "../../../core/working/compare.js";
import { usePlanStore, useWords } from "../../app/context.js";
import { Comparison } from "../../parts/comparison.js";
import { lineHunks } from "../../state/text/lines.js";

interface Pair {
  readonly before: number;
  readonly after: number;
}

/** Any two states beside one another: figures, and the lines of the plan that differ. */
export function CompareStates({
  of,
  choose,
}: {
  of: Pair | undefined;
  choose: (pair: Pair | undefined) => void;
}) {
  const words = useWords();
  const store = usePlanStore();
  if (!of) return null;
  const steps = store.allSteps().map(({ no }) => no);
  const [before, after] = [store.textOf(of.before), store.textOf(of.after)];
  const picker = (which: keyof Pair) => (
    <select
      aria-label={which === "before" ? words.log.compare : words.log.compareWith}
      value={of[which]}
      onChange={(event) => choose({ ...of, [which]: Number(event.target.value) })}
    >
      {steps.map((no) => (
        <option key={no} value={no}>
          {words.log.step(no)}
        </option>
      ))}
    </select>
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
      {before === undefined || after === undefined ? (
        <p>{words.log.unreadable}</p>
      ) : before === after ? (
        <p>{words.log.same}</p>
      ) : (
        <>
          <FigureDifference before={before} after={after} />
          <TextDifference before={before} after={after} />
        </>
      )}
    </section>
  );
}

function FigureDifference({ before, after }: { before: string; after: string }) {
  const words = useWords();
  const store = usePlanStore();
  const [compared, setCompared] = useState<Compared | "unreadable">();
  useEffect(() => {
    let wanted = true;
    const ask = async () => {
      const [was, is] = [await store.figuresOf(before), await store.figuresOf(after)];
      if (!wanted) return;
      setCompared(
        was.is === "figures" && is.is === "figures" ? compareFigures(was.figures, is.figures) : "unreadable",
      );
    };
    void ask();
    return () => {
      wanted = false;
    };
  }, [store, before, after]);
  if (compared === undefined) return <p role="status">{words.shell.workingOut}</p>;
  if (compared === "unreadable") return <p>{words.shell.problemsInPlan}</p>;
  return (
    <section>
      <h4>{words.log.difference}</h4>
      <Comparison of={compared} />
    </section>
  );
}

const mostLines = 400;

function TextDifference({ before, after }: { before: string; after: string }) {
  const words = useWords().log;
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
