import type { FigureRef } from "../../../core/working/figure-ref.js";
import type { Working } from "../../../core/working/working.js";
import { workingOf } from "../../../core/working/working-of.js";
import { sourceWords } from "../../../words/source-words.js";
import { useFigures, useShows, useWords } from "../../app/context.js";
import { useSlip } from "../../app/slip-state.js";
import { Assumptions } from "../../parts/assumptions.js";
import { valueWords } from "../../parts/given-words.js";
import { Icon } from "../../parts/icon.js";
import { Slip } from "../../parts/slip.js";
import { WorkingTable } from "./working-table.js";

/** How a figure came about: formula, numbers put in, table row, sources, assumptions. */
export default function WorkingSlip({ figure, close }: { figure: FigureRef; close: () => void }) {
  const words = useWords().working;
  const figures = useFigures();
  const shows = useShows();
  const { before, back } = useSlip();
  const working = figures && workingOf(figures, figure);
  const where = [
    "corner" in figure ? words.corner(figure.corner) : undefined,
    "outing" in figure ? words.outing(figure.outing) : undefined,
  ].filter((part) => part !== undefined);
  return (
    // a slip of its own for each figure, so that the focus comes to it
    <Slip
      key={JSON.stringify(figure)}
      title={working?.at ?? words.names[figure.of]}
      kind={words.names[figure.of]}
      close={close}
    >
      {before && (
        <button type="button" className="quiet" onClick={back}>
          <Icon name="back" /> {words.backTo}
        </button>
      )}
      {working === undefined ? (
        <p>{words.gone}</p>
      ) : (
        <div className="working">
          <p className="working-value">
            <output>{valueWords(working.value, working.unit, shows)}</output>
            {where.length > 0 && <span className="hint"> {where.join(", ")}</span>}
          </p>
          <p>{words.says[working.says]}</p>
          <Body working={working} />
        </div>
      )}
    </Slip>
  );
}

function Body({ working }: { working: Working }) {
  const words = useWords().working;
  const shows = useShows();
  const { showWorking } = useSlip();
  return (
    <>
      {working.formula !== undefined && (
        <section>
          <h3>{words.formula}</h3>
          <p className="formula">{working.formula}</p>
        </section>
      )}
      {working.given.length > 0 && (
        <section>
          <h3>{words.given}</h3>
          <dl className="given">
            {working.given.map(({ term, value, unit, at, figure }) => (
              <div key={`${term} ${at ?? ""} ${value}`}>
                <dt>
                  {words.terms[term]}
                  {at !== undefined && (
                    <span className="hint">
                      {" "}
                      <bdi>{at}</bdi>
                    </span>
                  )}
                </dt>
                <dd>
                  {figure ? (
                    <button type="button" className="figure" onClick={() => showWorking(figure)}>
                      {valueWords(value, unit, shows)}
                    </button>
                  ) : (
                    <bdi>{valueWords(value, unit, shows)}</bdi>
                  )}
                </dd>
              </div>
            ))}
          </dl>
        </section>
      )}
      {working.table && working.table.rows.length > 0 && (
        <section>
          <h3>{words.added}</h3>
          <WorkingTable table={working.table} />
        </section>
      )}
      <section>
        <h3>{words.sources}</h3>
        {working.sources.length === 0 ? (
          <p className="hint">{words.ownWorking}</p>
        ) : (
          <ul className="sources" lang="en">
            {[...new Set(working.sources.map(sourceWords))].map((source) => (
              <li key={source}>{source}</li>
            ))}
          </ul>
        )}
      </section>
      <Assumptions of={working.assumptions} title={words.assumed} />
    </>
  );
}
