import { useState } from "react";
import { boughtEdits } from "../../../core/parts/bought.js";
import type { LayoutFigures } from "../../../core/parts/layout-types.js";
import { partKinds } from "../../../core/parts/parts-list.js";
import { pricesWanting } from "../../../core/parts/prices-wanting.js";
import { moneyWords } from "../../../words/layout-words.js";
import { usePlan, usePlanStore, useShows } from "../../app/context.js";
import { ReadProblems } from "../../app/read-problems.js";
import { useLayoutWords } from "../../parts/use-layout-words.js";
import { useRefusal } from "../../parts/use-refusal.js";
import { ViewLink } from "../../parts/view-link.js";
import { useLayout } from "../../print/use-layout.js";
import { useWordsOfParts } from "../../words/parts.js";
import { type BuyLine, buyLines, shelfLines } from "./buy-lines.js";
import { useTicks } from "./ticks.js";

/** What to buy, kind by kind as one walks the shop, with a tick for what lies in the basket. */
export function View() {
  const words = useWordsOfParts();
  const sound = usePlan(({ reading }) => reading.ok);
  const { layout, fresh, fault } = useLayout();
  return (
    <div className="parts stack" aria-busy={!fresh}>
      <h2 className="away">{words.views.names.parts}</h2>
      {!sound && <ReadProblems />}
      {fault !== undefined && <p className="problem">{`${words.parts.failed} ${fault.split("\n")[0]}`}</p>}
      {layout ? (
        <Shopping layout={layout} />
      ) : (
        sound && fault === undefined && <p className="loading">{words.parts.working}</p>
      )}
    </div>
  );
}

function Shopping({ layout }: { layout: LayoutFigures }) {
  const words = useWordsOfParts();
  const shows = useShows();
  const { words: told } = useLayoutWords();
  const plan = usePlan(({ record }) => record.id);
  const { ticked, tick, clear } = useTicks(plan);
  const [hideDone, setHideDone] = useState(false);
  const [sure, setSure] = useState(false);
  const lines = buyLines(layout, shows, told);
  const wanting = pricesWanting(layout.parts);
  const shelf = shelfLines(layout, shows, told);
  const done = lines.filter(({ key }) => ticked.has(key)).length;
  if (lines.length === 0 && shelf.length === 0) return <p>{words.parts.nothing}</p>;
  const groups = partKinds.flatMap((kind) => {
    const own = lines.filter((line) => line.kind === kind && !(hideDone && ticked.has(line.key)));
    return own.length === 0 ? [] : [{ kind, own }];
  });
  return (
    <>
      <header className="basket-head">
        <p role="status">
          <b>{words.parts.inBasket(done, lines.length)}</b>
          {done === lines.length && ` ${words.parts.allDone}`}
        </p>
        <Total parts={layout.parts} />
        <label className="basket-hide">
          <input type="checkbox" checked={hideDone} onChange={(event) => setHideDone(event.target.checked)} />
          {words.parts.hideDone}
        </label>
      </header>
      {wanting && (
        <p className="basket-prices">
          {words.parts.pricesWanting(wanting.without, wanting.all)}{" "}
          <ViewLink view="gear">{words.parts.toPrices}</ViewLink>
        </p>
      )}
      {groups.map(({ kind, own }) => (
        <section key={kind}>
          <h3>{words.parts.kinds[kind]}</h3>
          <ul className="basket">
            {own.map((line) => (
              <Line
                key={line.key}
                line={line}
                noPrice={wanting ? "" : words.parts.noPrice}
                done={ticked.has(line.key)}
                onTick={(now) => tick(line.key, now)}
              />
            ))}
          </ul>
        </section>
      ))}
      {shelf.length > 0 && (
        <section>
          <h3>{words.parts.shelf}</h3>
          <p className="hint">{words.parts.shelfHint}</p>
          <ul className="shelf-list">
            {shelf.map(({ item, amount }) => (
              <li key={item}>
                <bdi>{item}</bdi>
                <b>{amount}</b>
              </li>
            ))}
          </ul>
        </section>
      )}
      {done > 0 && (
        <Bought
          layout={layout}
          items={new Set(lines.filter(({ key }) => ticked.has(key)).map(({ item }) => item))}
          onTaken={clear}
        />
      )}
      <footer className="row">
        <ViewLink view="gear">{words.parts.toStock}</ViewLink>
        <ViewLink view="print">{words.parts.toPrint}</ViewLink>
        {done > 0 && (
          <button
            type="button"
            className="quiet"
            onBlur={() => setSure(false)}
            onClick={() => {
              if (sure) clear();
              setSure(!sure);
            }}
          >
            {sure ? words.parts.clearSure : words.parts.clear}
          </button>
        )}
      </footer>
    </>
  );
}

/** What is ticked goes into the plan as stock, so that it is known wherever the plan is opened. */
function Bought(props: { layout: LayoutFigures; items: ReadonlySet<string>; onTaken: () => void }) {
  const { layout, items, onTaken } = props;
  const words = useWordsOfParts();
  const refusalOf = useRefusal();
  const store = usePlanStore();
  const plan = usePlan(({ reading, readOnly }) => (reading.ok && !readOnly ? reading.plan : undefined));
  const [refused, setRefused] = useState<string>();
  if (!plan) return null;
  const take = () => {
    const refusal = refusalOf(store.edit(boughtEdits(plan, layout.cuts.kinds, layout.parts, items)));
    setRefused(refusal);
    if (refusal === undefined) onTaken();
  };
  return (
    <section className="bought">
      <button type="button" className="main" onClick={take}>
        {words.parts.bought(items.size)}
      </button>
      <p className="hint">{words.parts.boughtHint}</p>
      {refused !== undefined && (
        <p className="problem" role="alert">
          {refused}
        </p>
      )}
    </section>
  );
}

function Total({ parts }: { parts: LayoutFigures["parts"] }) {
  const words = useWordsOfParts().parts;
  if (parts.currencies.length > 1) return <p>{words.currencies(parts.currencies.join(", "))}</p>;
  return (
    <p>
      {parts.total !== undefined && (
        <>
          {words.total} <b>{moneyWords(parts.total)}</b>
          {parts.withoutPrice.length > 0 && "; "}
        </>
      )}
      {parts.withoutPrice.length > 0 && words.withoutPrice(parts.withoutPrice.length)}
    </p>
  );
}

/** @param props.noPrice What stands where there is no price. */
function Line(props: { line: BuyLine; noPrice: string; done: boolean; onTick: (done: boolean) => void }) {
  const { line, noPrice, done, onTick } = props;
  const words = useWordsOfParts().parts;
  const facts = [
    [words.needed, line.needed],
    [words.spare, line.spare],
    [words.onHand, line.onHand],
    [words.leftOver, line.leftOver],
  ].filter(([, amount]) => amount !== "");
  return (
    <li data-done={done}>
      <label>
        <input type="checkbox" checked={done} onChange={(event) => onTick(event.target.checked)} />
        <span className="basket-item">
          <b>
            <bdi>{line.name}</bdi>
          </b>
          <span>{line.buy}</span>
          <span className="hint">{facts.map(([name, amount]) => `${name} ${amount}`).join(" · ")}</span>
          {line.uses.length > 0 && (
            <span className="hint">
              {words.for} <bdi>{line.uses.slice(0, 4).join(", ")}</bdi>
              {line.uses.length > 4 && ` + ${line.uses.length - 4}`}
            </span>
          )}
        </span>
        <span className="basket-price">{line.price ?? <i className="hint">{noPrice}</i>}</span>
      </label>
    </li>
  );
}
