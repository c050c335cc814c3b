import { useState } from "react";
import { causesOf } from "../../../core/findings/causes.js";
import { type Level, levels } from "../../../core/findings/finding.js";
import { useFigures } from "../../app/context.js";
import { LevelMark } from "../../parts/level-mark.js";
import { useWordsOfRemedies } from "../../words/remedies.js";
import { CauseCard } from "./cause-card.js";

/** Everything that was found, by cause, gravest first; and what no plan can answer. */
export function View() {
  const words = useWordsOfRemedies();
  const figures = useFigures();
  const [shown, setShown] = useState<Level | "all">("all");
  if (!figures) return <p>{words.shell.workingOut}</p>;
  const { findings } = figures;
  const causes = causesOf(findings.filter(({ level }) => shown === "all" || level === shown));
  return (
    <div className="findings stack">
      <h2>{words.views.names.findings}</h2>
      {findings.length > 0 && <LevelFilter shown={shown} onShow={setShown} />}
      {causes.length === 0 && <p>{findings.length === 0 ? words.findings.noneAtAll : words.findings.none}</p>}
      {causes.map((cause) => (
        <CauseCard key={cause.id} cause={cause} />
      ))}
      <section className="never-checked">
        <h3>
          <LevelMark level="unchecked" /> {words.findings.neverChecked}
        </h3>
        <ul>
          {words.findings.neverCheckedLines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </section>
    </div>
  );
}

function LevelFilter({ shown, onShow }: { shown: Level | "all"; onShow: (level: Level | "all") => void }) {
  const words = useWordsOfRemedies().findings;
  const figures = useFigures();
  const counts = (level: Level) => figures?.findings.filter((finding) => finding.level === level).length ?? 0;
  return (
    <fieldset className="level-filter">
      <legend className="away">{words.show}</legend>
      <button type="button" aria-pressed={shown === "all"} onClick={() => onShow("all")}>
        {words.all}
      </button>
      {levels.map((level) => (
        <button key={level} type="button" aria-pressed={shown === level} onClick={() => onShow(level)}>
          <LevelMark level={level} /> {words.levels[level].name} {counts(level)}
        </button>
      ))}
    </fieldset>
  );
}
