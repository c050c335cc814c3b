import { useState } from "react";
import type { BoughtThing } from "../../../core/parts/bought-lines.js";
import type { LayoutFigures } from "../../../core/parts/layout-types.js";
import { partKinds } from "../../../core/parts/parts-list.js";
import { pricesWanting } from "../../../core/parts/prices-wanting.js";
import { boughtWords, moneyWords } from "../../../words/layout-words.js";
import { usePlan, useShows } from "../../app/context.js";
import { ReadProblems } from "../../app/read-problems.js";
import { useLayoutWords } from "../../parts/use-layout-words.js";
import { ViewLink } from "../../parts/view-link.js";
import { useLayout } from "../../print/use-layout.js";
import { useWordsOfParts } from "../../words/parts.js";
import { type BuyLine, boughtNow, buyLines, shelfLines, type Unwanted, unwantedLines } from "./buy-lines.js";
import { useOldTicks } from "./use-old-ticks.js";
import { useTicks } from "./use-ticks.js";

/** What to buy, kind by kind as one walks the shop, with a tick for what lies in the basket. */
export function View() {
  const words = useWordsOfParts();
  const sound = usePlan(({ reading }) => reading.ok);
  const { layout, fresh, fault } = useLayout();
  useOldTicks(fresh ? layout : undefined);
  return (
    <div className="parts stack" aria-busy={!fresh}>
      <h2 className="away">{words.views.names.parts}</h2>
      {!sound && <ReadProblems />}
      {fault !== undefined && <p className="problem">{`${words.parts.failed} ${fault.split("\n")[0]}`}</p>}
      {layout ? (
        <Shopping layout={layout} fresh={fresh} />
      ) : (
        sound && fault === undefined && <p className="loading">{words.parts.working}</p>
      )}
    </div>
  );
}

function Shopping({ layout, fresh }: { layout: LayoutFigures; fresh: boolean }) {
  const words = useWordsOfParts();
  const shows = useShows();
  const { words: told } = useLayoutWords();
  const plan = usePlan(({ reading }) => (reading.ok ? reading.plan : undefined));
  const { tick, untick, shelve, refused } = useTicks(layout);
  const [hideDone, setHideDone] = useState(false);
  const [sure, setSure] = useState(false);
  const lines = buyLines(layout, shows, told);
  const bought = plan ? boughtNow(plan, layout, fresh) : layout.parts.bought;
  const boughtOf = ({ wire, item }: BuyLine) =>
    (wire ? bought.wire : bought.parts).find((one) => one.item === item && one.wanted);
  const isDone = (line: BuyLine) => boughtOf(line)?.more === 0;
  const wanting = pricesWanting(layout.parts);
  const shelf = shelfLines(layout, shows, told);
  const unwanted = unwantedLines(bought, shows, told);
  const done = lines.filter(isDone).length;
  const all = [...bought.wire, ...bought.parts].length;
  if (lines.length === 0 && shelf.length === 0 && all === 0) return <p>{words.parts.nothing}</p>;
  const groups = partKinds.flatMap((kind) => {
    const own = lines.filter((line) => line.kind === kind && !(hideDone && isDone(line)));
    return own.length === 0 ? [] : [{ kind, own }];
  });
  return (
    <>
      <header className="basket-head">
        <p role="status">
          <b>{words.parts.inBasket(done, lines.length)}</b>
          {done === lines.length && lines.length > 0 && ` ${words.parts.allDone}`}
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
      {refused !== undefined && (
        <p className="problem" role="alert">
          {refused}
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
                bought={boughtOf(line)}
                onTick={tick && ((now) => (now ? tick(line) : untick([line])))}
              />
            ))}
          </ul>
        </section>
      ))}
      {unwanted.length > 0 && <NotWanted lines={unwanted} takeOff={tick && ((line) => untick([line]))} />}
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
      {all > 0 && tick && (
        <section className="bought">
          <button type="button" className="main" onClick={shelve}>
            {words.parts.bought(all)}
          </button>
          <p className="hint">{words.parts.boughtHint}</p>
        </section>
      )}
      <footer className="row">
        <ViewLink view="gear">{words.parts.toStock}</ViewLink>
        <ViewLink view="print">{words.parts.toPrint}</ViewLink>
        {all > 0 && tick && (
          <button
            type="button"
            className="quiet"
            onBlur={() => setSure(false)}
            onClick={() => {
              if (sure)
                untick([
                  ...bought.wire.map(({ item }) => ({ wire: true, item })),
                  ...bought.parts.map(({ item }) => ({ wire: false, item })),
                ]);
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

/** What was bought before the list changed: nothing of it is lost, and nothing hidden. */
function NotWanted(props: { lines: readonly Unwanted[]; takeOff: ((line: Unwanted) => void) | undefined }) {
  const { lines, takeOff } = props;
  const words = useWordsOfParts().parts;
  const { words: told } = useLayoutWords();
  return (
    <section className="not-wanted">
      <h3>{told.bought.notWanted}</h3>
      <p className="hint">{words.notWantedHint}</p>
      <ul className="shelf-list">
        {lines.map((line) => (
          <li key={`${line.wire} ${line.item}`}>
            <bdi>{line.name}</bdi>
            <b>{line.amount}</b>
            {takeOff && (
              <button
                type="button"
                className="quiet"
                aria-label={words.takeOffItem(line.name)}
                onClick={() => takeOff(line)}
              >
                {words.takeOff}
              </button>
            )}
          </li>
        ))}
      </ul>
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

/**
 * @param props.noPrice What stands where there is no price.
 * @param props.onTick Left out where nothing can be changed.
 */
function Line(props: {
  line: BuyLine;
  noPrice: string;
  bought: BoughtThing | undefined;
  onTick: ((done: boolean) => void) | undefined;
}) {
  const { line, noPrice, bought, onTick } = props;
  const done = bought?.more === 0;
  const shows = useShows();
  const { words: told } = useLayoutWords();
  const words = useWordsOfParts().parts;
  const facts = [
    [words.needed, line.needed],
    [words.spare, line.spare],
    [words.onHand, line.onHand],
    [words.leftOver, line.leftOver],
  ].filter(([, amount]) => amount !== "");
  const said = boughtWords(bought, shows, told);
  return (
    <li data-done={done}>
      <label>
        <input
          type="checkbox"
          checked={done}
          disabled={!onTick}
          onChange={(event) => onTick?.(event.target.checked)}
        />
        <span className="basket-item">
          <b>
            <bdi>{line.name}</bdi>
          </b>
          <span>{line.buy}</span>
          {said !== undefined && <strong className="basket-said">{said}</strong>}
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
