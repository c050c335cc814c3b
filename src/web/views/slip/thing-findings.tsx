import { useOfFigures } from "../../app/context.js";
import { FindingSentence } from "../../parts/finding-sentence.js";
import { LevelMark } from "../../parts/level-mark.js";
import { ViewLink } from "../../parts/view-link.js";
import { useWordsOfSlip } from "../../words/slip.js";

/** Findings about a thing, gravest first. */
export function ThingFindings({ names }: { names: readonly string[] }) {
  const words = useWordsOfSlip();
  const findings = useOfFigures((figures) =>
    (figures?.findings ?? []).filter(
      ({ at, with: others = [] }) => names.includes(at) || others.some((other) => names.includes(other)),
    ),
  );
  return (
    <section>
      <h3>{words.slip.findings}</h3>
      {findings.length === 0 ? (
        <p className="hint">{words.slip.noFindings}</p>
      ) : (
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
      )}
      {findings.length > 0 && <ViewLink view="findings">{words.shell.toFindings}</ViewLink>}
    </section>
  );
}
