import type { FigureRef } from "../../../core/working/figure-ref.js";
import { figuresOfThing, type ThingFigure } from "../../../core/working/figures-of-thing.js";
import { pathWords } from "../../../words/path-words.js";
import type { ScreenWords } from "../../../words/screen/en.js";
import { useOfFigures, useShows } from "../../app/context.js";
import { cornerName } from "../../parts/corner-name.js";
import { Figure } from "../../parts/figure.js";
import { saidText, valueWords } from "../../parts/given-words.js";
import { useWordsOfSlip } from "../../words/slip.js";

/** The figures of one thing, each leading to its working: those of every case side by side, the others line by line. */
export function ThingFigures({ name, kind }: { name: string; kind: string }) {
  const words = useWordsOfSlip();
  const lines = useOfFigures((figures) => figures && figuresOfThing(figures, name, kind));
  if (!lines) return <p className="hint">{words.shell.workingOut}</p>;
  if (lines.length === 0) return null;
  const cases = [...new Set(lines.flatMap(({ figure }) => ("corner" in figure ? [figure.corner] : [])))];
  const beside = cases.length > 1 ? lines.filter(({ figure }) => "corner" in figure) : [];
  const others = lines.filter((line) => !beside.includes(line));
  return (
    <section>
      <h3>{words.slip.figures}</h3>
      {beside.length > 0 && <CaseTable lines={beside} cases={cases} />}
      {others.length > 0 && (
        <dl className="given">
          {others.map((line) => (
            <div key={keyOf(line.figure)}>
              <dt>
                {words.working.names[line.figure.of]}
                <span className="hint"> {whereOf(line.figure, words)}</span>
              </dt>
              <dd>
                <OneFigure line={line} />
              </dd>
            </div>
          ))}
        </dl>
      )}
    </section>
  );
}

function OneFigure({ line: { figure, value, unit } }: { line: ThingFigure }) {
  const words = useWordsOfSlip();
  const shows = useShows();
  return (
    <Figure of={figure} label={words.working.names[figure.of]}>
      {valueWords(saidText(value, words.working), unit, shows)}
    </Figure>
  );
}

/** A row a figure, a column a case: usual, worst drop, highest voltage, and the plan's own. */
function CaseTable({ lines, cases }: { lines: readonly ThingFigure[]; cases: readonly string[] }) {
  const words = useWordsOfSlip();
  const rows = [...new Set(lines.map(({ figure }) => figure.of))];
  const of = (row: string, inCase: string) =>
    lines.find(({ figure }) => figure.of === row && "corner" in figure && figure.corner === inCase);
  return (
    <div className="wide">
      <table className="case-table">
        <thead>
          <tr>
            <td />
            {cases.map((each) => (
              <th key={each} scope="col">
                <bdi>{cornerName(each, words)}</bdi>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row}>
              <th scope="row">{words.working.names[row]}</th>
              {cases.map((each) => {
                const line = of(row, each);
                return <td key={each}>{line && <OneFigure line={line} />}</td>;
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

const keyOf = (figure: FigureRef) => JSON.stringify(figure);

function whereOf(figure: FigureRef, words: Pick<ScreenWords, "circuits" | "working">): string {
  const { path } = words.working;
  if ("corner" in figure) return cornerName(figure.corner, words);
  if ("outing" in figure) return figure.outing;
  if ("device" in figure) return pathWords(figure.device, path);
  return "choice" in figure ? pathWords(figure.choice, path) : "";
}
