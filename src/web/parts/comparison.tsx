import { levels } from "../../core/findings/finding.js";
import type { Comparison as Compared, FigureChange } from "../../core/working/compare.js";
import { hours, noFigure, percent } from "../../words/numbers.js";
import { useShows } from "../app/context.js";
import { useWordsOfComparison } from "../words/comparison.js";
import { FindingSentence } from "./finding-sentence.js";
import { saidText, valueWords } from "./given-words.js";
import { LevelMark } from "./level-mark.js";

const mostShown = 40;

/** Two states of a plan as figures beside one another: what changes, what is no longer found, what is newly found. */
export function Comparison({ of }: { of: Compared }) {
  const words = useWordsOfComparison();
  const { before, after } = of.ledger;
  const nothing = of.changes.length === 0 && of.gone.length === 0 && of.appeared.length === 0;
  if (nothing) return <p>{words.findings.noChange}</p>;
  const rows: (readonly [string, string, string])[] = [
    [words.shell.hoursLeft, hours(before.leastHours?.hours), hours(after.leastHours?.hours)],
    [words.shell.worstDrop, dropOf(before), dropOf(after)],
    ...levels.map(
      (level) =>
        [
          words.findings.levels[level].name,
          String(before.counts[level]),
          String(after.counts[level]),
        ] as const,
    ),
  ];
  return (
    <div className="comparison">
      <table>
        <Heads />
        <tbody>
          {rows
            .filter(([, was, is]) => was !== is)
            .map(([name, was, is]) => (
              <ChangeRow key={name} name={name} was={was} is={is} />
            ))}
          {of.changes.slice(0, mostShown).map((change) => (
            <FigureRow key={JSON.stringify([change.at, change.figure])} change={change} />
          ))}
        </tbody>
      </table>
      {of.changes.length > mostShown && <p className="hint">+ {of.changes.length - mostShown}</p>}
      <FindingList title={words.findings.gone} findings={of.gone} />
      <FindingList title={words.findings.appears} findings={of.appeared} />
    </div>
  );
}

const dropOf = ({ worstDrop }: Compared["ledger"]["before"]) =>
  worstDrop ? `${percent(worstDrop.gear.dropShare)} ${worstDrop.gear.id}` : noFigure;

function Heads() {
  const words = useWordsOfComparison().findings;
  return (
    <thead>
      <tr>
        <th scope="col">{words.figure}</th>
        <th scope="col" className="number">
          {words.before}
        </th>
        <th scope="col" className="number">
          {words.after}
        </th>
      </tr>
    </thead>
  );
}

function ChangeRow({ name, at, was, is }: { name: string; at?: string; was: string; is: string }) {
  return (
    <tr>
      <th scope="row">
        {at !== undefined && (
          <>
            <bdi>{at}</bdi>:{" "}
          </>
        )}
        {name}
      </th>
      <td className="number">{was}</td>
      <td className="number">
        <b>{is}</b>
      </td>
    </tr>
  );
}

function FigureRow({ change: { figure, at, before, after, unit } }: { change: FigureChange }) {
  const words = useWordsOfComparison().working;
  const shows = useShows();
  const said = (value: number | string | undefined) =>
    value === undefined ? noFigure : valueWords(saidText(value, words), unit, shows);
  return <ChangeRow name={words.names[figure.of]} at={at} was={said(before)} is={said(after)} />;
}

function FindingList({ title, findings }: { title: string; findings: Compared["gone"] }) {
  const words = useWordsOfComparison();
  if (findings.length === 0) return null;
  return (
    <section>
      <h4>{title}</h4>
      <ul className="short-findings">
        {findings.map((finding) => (
          <li key={`${finding.rule} ${finding.level} ${finding.at}`}>
            <LevelMark level={finding.level} />
            <span>
              <b>{words.findings.levels[finding.level].name}: </b>
              <FindingSentence of={finding} />
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
