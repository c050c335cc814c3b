import { memo } from "react";
import type { Figures } from "../../core/figures-types.js";
import { type Level, levels } from "../../core/findings/finding.js";
import { ledgerOf } from "../../core/ledger.js";
import { hours, noFigure, percentAgainst, shareSet } from "../../words/numbers.js";
import { Figure } from "../parts/figure.js";
import { LevelMark } from "../parts/level-mark.js";
import { Term } from "../parts/term.js";
import { ViewLink } from "../parts/view-link.js";
import { useWordsOfFindings } from "../words/findings.js";
import { useOfFigures, usePlan } from "./context.js";
import { LedgerSaid } from "./ledger-said.js";

/** Hours left, worst drop, findings by level: always in sight, and never older than the last edit without saying so. */
export function LedgerLine() {
  const words = useWordsOfFindings();
  const shown = useOfFigures(ledgerShown);
  const fresh = usePlan((state) => state.fresh || state.triedOut !== undefined);
  const outcome = usePlan((state) => state.outcome);
  const sound = usePlan(({ reading }) => reading.ok);
  if (!shown || !sound) {
    const waiting = sound && (outcome === undefined || outcome.is === "figures" || !fresh);
    return (
      <section className="ledger" aria-label={words.shell.ledger} aria-busy={waiting}>
        <p className="ledger-note">{waiting ? words.shell.workingOut : words.shell.notWorkedOut}</p>
        {outcome?.is === "fault" && <pre className="fault">{outcome.detail}</pre>}
      </section>
    );
  }
  const { hours: reserve, drop, counts } = shown;
  return (
    <section className="ledger" aria-label={words.shell.ledger} aria-busy={!fresh} data-fresh={fresh}>
      <Hours {...reserve} />
      <Drop {...drop} />
      <Counts {...counts} />
      <LedgerSaid shown={shown} />
    </section>
  );
}

/** What the line says, part by part: a part that says the same is not drawn anew. */
function ledgerShown(figures: Figures | undefined) {
  if (!figures) return undefined;
  const { leastHours, worstDrop, counts } = ledgerOf(figures);
  return {
    hours: {
      outings: figures.outings.length,
      ...(leastHours && {
        hoursLeft: hours(leastHours.hours),
        battery: leastHours.battery,
        outing: leastHours.outing,
      }),
    },
    drop: worstDrop && {
      gear: worstDrop.gear.id,
      share: percentAgainst(worstDrop.gear.dropShare, worstDrop.limitShare),
      limit: shareSet(worstDrop.limitShare),
    },
    counts,
  };
}

const Hours = memo(function Hours(props: {
  outings: number;
  hoursLeft?: string;
  battery?: string;
  outing?: string;
}) {
  const { outings, hoursLeft, battery, outing } = props;
  const words = useWordsOfFindings().shell;
  const reached = hoursLeft !== undefined && battery !== undefined && outing !== undefined;
  return (
    <div className="ledger-entry">
      <span className="ledger-label">
        {words.hoursLeft}
        <Term of="reserve" />
      </span>
      {reached ? (
        <Figure of={{ of: "hours to reserve", outing, battery }} label={words.hoursLeft}>
          {hoursLeft}
        </Figure>
      ) : (
        <span className="figure-none">{noFigure}</span>
      )}
      <ViewLink view="outing" className="ledger-note">
        {reached ? words.hoursOn(battery, outing) : outings === 0 ? words.noOuting : words.notReached}
      </ViewLink>
    </div>
  );
});

const Drop = memo(function Drop({ gear, share, limit }: { gear?: string; share?: string; limit?: string }) {
  const words = useWordsOfFindings().shell;
  const known = gear !== undefined && share !== undefined && limit !== undefined;
  return (
    <div className="ledger-entry">
      <span className="ledger-label">
        {words.worstDrop}
        <Term of="drop" />
      </span>
      {known ? (
        <Figure of={{ of: "gear drop", gear, corner: "worst drop" }} label={words.worstDrop}>
          {share}
        </Figure>
      ) : (
        <span className="figure-none">{noFigure}</span>
      )}
      <span className="ledger-note">{known ? words.dropAt(gear, limit) : words.noDrop}</span>
    </div>
  );
});

const Counts = memo(function Counts(counts: Readonly<Record<Level, number>>) {
  const words = useWordsOfFindings();
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
});
