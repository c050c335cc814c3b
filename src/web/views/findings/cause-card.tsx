import type { Cause } from "../../../core/findings/causes.js";
import type { Finding } from "../../../core/findings/finding.js";
import { ruleOf } from "../../../core/findings/rules.js";
import { workingLines } from "../../../words/findings.js";
import { pathWords } from "../../../words/path-words.js";
import { ruleText } from "../../../words/rules.js";
import { quantityIn } from "../../../words/say.js";
import { usePlan, useShows } from "../../app/context.js";
import { useSelection } from "../../app/place.js";
import { FindingSentence } from "../../parts/finding-sentence.js";
import { LevelMark } from "../../parts/level-mark.js";
import { SourceList } from "../../parts/source-list.js";
import { useFindingWords } from "../../parts/use-finding-words.js";
import { useWordsOfRemedies } from "../../words/remedies.js";
import { AddCharger } from "../lists/add-charger.js";
import { Answers } from "./answers.js";
import { Remedies } from "./remedies.js";

/** One cause with its findings; each opens to figure, limit, rule, source, working and remedies. */
export function CauseCard({ cause }: { cause: Cause }) {
  const words = useWordsOfRemedies().findings;
  const { findings } = cause;
  return (
    <article className="cause">
      {findings.length > 1 && <p className="hint">{words.causeOf(findings.length)}</p>}
      {findings.map((finding) => (
        <OneFinding key={`${finding.rule} ${finding.level} ${finding.at}`} finding={finding} />
      ))}
    </article>
  );
}

function OneFinding({ finding }: { finding: Finding }) {
  const words = useWordsOfRemedies().findings;
  const { level, rule, at, with: others = [] } = finding;
  const told = useFindingWords();
  const { title, why, mend } = ruleText(rule, told.words);
  return (
    <details className="finding" data-level={level} data-rule={rule}>
      <summary>
        <LevelMark level={level} />
        <span>
          <b>{words.levels[level].name}. </b>
          <FindingSentence of={finding} />
        </span>
      </summary>
      <div className="finding-body">
        <p className="hint">{words.levels[level].means}</p>
        <Answers finding={finding} />
        {rule === "charger-missing" && <AddCharger battery={at} />}
        <Figures finding={finding} />
        <div lang={told.language}>
          <h3>{title}</h3>
          <p>{why}</p>
          <p>{mend}</p>
        </div>
        <Working finding={finding} />
        <Sources rule={rule} />
        <Things names={[at, ...others]} />
        <Remedies edits={finding.remedies ?? []} />
      </div>
    </details>
  );
}

function Figures({ finding: { figure, limit, unit } }: { finding: Finding }) {
  const words = useWordsOfRemedies().findings;
  const shows = useShows();
  const { words: said } = useFindingWords();
  if (figure === undefined && limit === undefined) return null;
  return (
    <dl className="given">
      <div>
        <dt>{words.figure}</dt>
        <dd>{quantityIn(figure, unit, shows, said)}</dd>
      </div>
      <div>
        <dt>{words.limit}</dt>
        <dd>{quantityIn(limit, unit, shows, said)}</dd>
      </div>
    </dl>
  );
}

function Working({ finding }: { finding: Finding }) {
  const words = useWordsOfRemedies().findings;
  const shows = useShows();
  const { language, words: said } = useFindingWords();
  const lines = workingLines(finding, shows, said);
  if (lines.length === 0) return null;
  return (
    <section>
      <h3>{words.working}</h3>
      <ul className="working-lines" lang={language}>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}

function Sources({ rule }: { rule: string }) {
  const words = useWordsOfRemedies().findings;
  const rules = usePlan(({ reading }) => (reading.ok ? reading.plan.rules : undefined));
  const sources = rules === undefined ? [] : (ruleOf(rule)?.sources[rules] ?? []);
  return (
    <section>
      <h3>{words.source}</h3>
      <SourceList of={sources} />
      <p className="hint">
        {words.rule}: {rule}
      </p>
    </section>
  );
}

function Things({ names }: { names: readonly string[] }) {
  const { findings: words, working } = useWordsOfRemedies();
  const { path } = working;
  const [, select] = useSelection();
  const things = [...new Set(names)].filter((name) => name !== "plan");
  if (things.length === 0) return null;
  return (
    <p className="row">
      <span className="hint">{words.about}:</span>
      {things.map((name) => (
        <button
          key={name}
          type="button"
          aria-label={words.select(pathWords(name, path))}
          onClick={() => select(name)}
        >
          <bdi>{pathWords(name, path)}</bdi>
        </button>
      ))}
    </p>
  );
}
