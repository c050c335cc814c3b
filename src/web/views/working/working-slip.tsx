import type { FigureRef } from "../../../core/working/figure-ref.js";
import type { Given, Term, Working } from "../../../core/working/working.js";
import { workingOf } from "../../../core/working/working-of.js";
import { pathWords } from "../../../words/path-words.js";
import type { ScreenWords } from "../../../words/screen/en.js";
import { useFigures, useShows } from "../../app/context.js";
import { useSlip } from "../../app/slip-state.js";
import { Assumptions } from "../../parts/assumptions.js";
import { cornerName } from "../../parts/corner-name.js";
import { saidText, valueWords } from "../../parts/given-words.js";
import { Icon } from "../../parts/icon.js";
import { Slip } from "../../parts/slip.js";
import { SourceList } from "../../parts/source-list.js";
import { useWordsOfWorking } from "../../words/working.js";
import { WorkingTable } from "./working-table.js";

/** How a figure came about: formula, numbers put in, table row, sources, assumptions. */
export default function WorkingSlip({ figure, close }: { figure: FigureRef; close: () => void }) {
  const all = useWordsOfWorking();
  const words = all.working;
  const figures = useFigures();
  const shows = useShows();
  const { before, back } = useSlip();
  const working = figures && workingOf(figures, figure);
  const where = [
    "corner" in figure ? words.corner(cornerName(figure.corner, all)) : undefined,
    "outing" in figure ? words.outing(figure.outing) : undefined,
  ].filter((part) => part !== undefined);
  return (
    // a slip of its own for each figure, so that the focus comes to it
    <Slip
      key={JSON.stringify(figure)}
      title={working === undefined ? words.names[figure.of] : pathWords(working.at, words.path)}
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
            <b>{valueWords(saidText(working.value, words), working.unit, shows)}</b>
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
  const words = useWordsOfWorking().working;
  const shows = useShows();
  const { showWorking } = useSlip();
  return (
    <>
      {working.formula !== undefined && (
        <section>
          <h3>{words.formula}</h3>
          <p className="formula">{words.formulaOf(working.formula)}</p>
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
                      <bdi>{saidAt(term, at, words)}</bdi>
                    </span>
                  )}
                </dt>
                <dd>
                  {figure ? (
                    <button type="button" className="figure" onClick={() => showWorking(figure)}>
                      {valueWords(saidValue(term, value, words), unit, shows)}
                    </button>
                  ) : (
                    <bdi>{valueWords(saidValue(term, value, words), unit, shows)}</bdi>
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
          <WorkingTable table={working.table} says={working.says} />
        </section>
      )}
      <section>
        <h3>{words.sources}</h3>
        {working.sources.length === 0 ? (
          <p className="hint">{words.ownWorking}</p>
        ) : (
          <SourceList of={working.sources} />
        )}
      </section>
      <Assumptions of={working.assumptions} title={words.assumed} />
    </>
  );
}

/** Terms whose text is one of ours; that of the others is the owner's. */
const ownTexts: ReadonlySet<Term> = new Set(["behaviour", "condition", "state", "reason", "aim", "proof"]);

const saidValue = (term: Term, value: Given["value"], words: ScreenWords["working"]): Given["value"] =>
  typeof value === "number"
    ? value
    : ownTexts.has(term)
      ? saidText(value, words)
      : pathWords(value, words.path);

/** What a factor allows for, and what the next smaller rating fails at; else a thing by its name. */
function saidAt(term: Term, at: string, words: ScreenWords["working"]): string {
  if (term !== "factor" && term !== "next smaller") return pathWords(at, words.path);
  return at
    .split(", ")
    .map((one) => saidText(one, words))
    .join(", ");
}
