import { levels } from "../../core/findings/finding.js";
import { type Ledger, ledgerOf } from "../../core/ledger.js";
import { hours, noFigure, percent } from "../../words/numbers.js";
import { Figure } from "../parts/figure.js";
import { LevelMark } from "../parts/level-mark.js";
import { Term } from "../parts/term.js";
import { ViewLink } from "../parts/view-link.js";
import { useFigures, usePlan, useWords } from "./context.js";

/** Hours left, worst drop, findings by level: always in sight, and never older than the last edit without saying so. */
export function LedgerLine() {
  const words = useWords();
  const figures = useFigures();
  const fresh = usePlan((state) => state.fresh || state.triedOut !== undefined);
  const outcome = usePlan((state) => state.outcome);
  const sound = usePlan(({ reading }) => reading.ok);
  if (!figures || !sound) {
    const waiting = sound && (outcome === undefined || outcome.is === "figures" || !fresh);
    return (
      <section className="ledger" aria-label={words.shell.ledger} aria-busy={waiting}>
        <p className="ledger-note">{waiting ? words.shell.workingOut : words.shell.notWorkedOut}</p>
        {outcome?.is === "fault" && <pre className="fault">{outcome.detail}</pre>}
      </section>
    );
  }
  const ledger = ledgerOf(figures);
  return (
    <section className="ledger" aria-label={words.shell.ledger} aria-busy={!fresh} data-fresh={fresh}>
      <Hours ledger={ledger} outings={figures.outings.length} />
      <Drop ledger={ledger} />
      <Counts ledger={ledger} />
    </section>
  );
}

function Hours({ ledger, outings }: { ledger: Ledger; outings: number }) {
  const reserve = ledger.leastHours;
  const words = useWords().shell;
  return (
    <div className="ledger-entry">
      <span className="ledger-label">
        {words.hoursLeft}
        <Term of="reserve" />
      </span>
      {reserve ? (
        <Figure
          of={{ of: "hours to reserve", outing: reserve.outing, battery: reserve.battery }}
          label={words.hoursLeft}
        >
          {hours(reserve.hours)}
        </Figure>
      ) : (
        <span className="figure-none">{noFigure}</span>
      )}
      <ViewLink view="outing" className="ledger-note">
        {reserve
          ? words.hoursOn(reserve.battery, reserve.outing)
          : outings === 0
            ? words.noOuting
            : words.notReached}
      </ViewLink>
    </div>
  );
}

function Drop({ ledger: { worstDrop } }: { ledger: Ledger }) {
  const words = useWords().shell;
  const drop = worstDrop?.gear;
  return (
    <div className="ledger-entry">
      <span className="ledger-label">
        {words.worstDrop}
        <Term of="drop" />
      </span>
      {drop ? (
        <Figure of={{ of: "gear drop", gear: drop.id, corner: "worst drop" }} label={words.worstDrop}>
          {percent(drop.dropShare)}
        </Figure>
      ) : (
        <span className="figure-none">{noFigure}</span>
      )}
      <span className="ledger-note">
        {worstDrop ? words.dropAt(worstDrop.gear.id, percent(worstDrop.limitShare, 0)) : words.noDrop}
      </span>
    </div>
  );
}

function Counts({ ledger: { counts } }: { ledger: Ledger }) {
  const words = useWords();
  return (
    <ViewLink view="findings" className="ledger-entry ledger-counts">
      <span className="ledger-label">{words.shell.findings} </span>
      <span className="counts">
        {levels.map((level) => (
          <span key={level} className="count" data-level={level} data-count={counts[level]}>
            <LevelMark level={level} />
            <b>{counts[level]}</b> <span className="count-name">{words.findings.levels[level].name}</span>
          </span>
        ))}
      </span>
    </ViewLink>
  );
}
