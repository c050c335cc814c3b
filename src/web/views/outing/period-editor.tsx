import { useId } from "react";
import type { OnPeriod, Outing } from "../../../core/plan/model/outing.js";
import { readDuty } from "../../../core/quantity/forms.js";
import { readQuantity } from "../../../core/quantity/read.js";
import { percent } from "../../../words/numbers.js";
import { QuantityField } from "../../parts/quantity-field.js";
import { WrittenField } from "../../parts/written-field.js";
import { useWordsOfOuting } from "../../words/outing.js";
import { dutyText, levelText, placeOf } from "./period-edits.js";
import { momentWords, readMomentOf, samePeriod } from "./times.js";
import type { OutingHands } from "./use-outing.js";

/** The bar that is open: its times as one types them, how often it runs, and at what share of its draw. */
export function PeriodEditor(props: {
  outing: Outing;
  index: number;
  hands: OutingHands;
  readOnly: boolean;
  close: () => void;
}) {
  const { outing, index, hands, readOnly, close } = props;
  const words = useWordsOfOuting().outing;
  const kept = outing.on[index];
  if (!kept) return null;
  const period = hands.draft?.index === index ? hands.draft.period : kept;
  const said = (atH: number) => momentWords(atH, outing.startClockH);
  const takeMoment = (field: "fromH" | "toH") => (typed: string) => {
    const atH = readMomentOf(typed, outing.startClockH);
    if (atH === undefined) return words.notATime(outing.startClockH === undefined ? "1 h 30 min" : "19:00");
    // What ends at the hour it starts at ends a day later.
    const wrapped = field === "toH" && atH === 0 ? outing.lastsH : atH;
    return hands.take(index, { ...kept, [field]: wrapped });
  };
  const take = (to: OnPeriod) => {
    if (!samePeriod(to, kept)) return hands.take(index, to);
    hands.letGo();
    return undefined;
  };
  return (
    <section className="period-editor outing-wide" aria-label={period.what}>
      <header className="row">
        <h3>
          <bdi>{period.what}</bdi>
        </h3>
        <button type="button" className="quiet" onClick={close}>
          {words.close}
        </button>
      </header>
      <div className="period-fields">
        <WrittenField
          label={words.from}
          value={said(period.fromH)}
          disabled={readOnly}
          onTake={takeMoment("fromH")}
        />
        <WrittenField
          label={words.to}
          value={said(period.toH)}
          disabled={readOnly}
          onTake={takeMoment("toH")}
        />
        <div className="field">
          <QuantityField
            label={words.runs}
            kind="duty"
            value={period.duty < 1 ? dutyText(period.duty) : ""}
            assumed={words.allTheTime}
            disabled={readOnly}
            onTake={(typed) => {
              const read = readDuty(typed);
              return take({ ...kept, duty: typed === "" ? 1 : read.ok ? read.value : kept.duty });
            }}
          />
          <Slide
            label={words.minutesLabel}
            value={Math.round(period.duty * 60)}
            most={60}
            said={words.minutesInHour(Math.round(period.duty * 60))}
            disabled={readOnly}
            onTry={(minutes) => hands.tryPeriod(index, { ...kept, duty: minutes / 60 })}
            onTake={(minutes) => take({ ...kept, duty: minutes / 60 })}
          />
        </div>
        <div className="field">
          <QuantityField
            label={words.level}
            kind="share"
            value={period.level < 1 ? levelText(period.level) : ""}
            assumed="100 %"
            disabled={readOnly}
            onTake={(typed) => {
              const read = readQuantity(typed, "share");
              return take({ ...kept, level: typed === "" ? 1 : read.ok ? read.value.value : kept.level });
            }}
          />
          <Slide
            label={words.levelLabel}
            value={Math.round(period.level * 100)}
            most={100}
            step={5}
            said={percent(period.level, 0)}
            disabled={readOnly}
            onTry={(level) => hands.tryPeriod(index, { ...kept, level: level / 100 })}
            onTake={(level) => take({ ...kept, level: level / 100 })}
          />
        </div>
      </div>
      {!readOnly && (
        <button
          type="button"
          className="quiet"
          onClick={() => {
            close();
            hands.make([{ edit: "remove field", at: placeOf(outing), field: `on / ${index + 1}` }]);
          }}
        >
          {words.removePeriod(period.what)}
        </button>
      )}
    </section>
  );
}

function Slide(props: {
  label: string;
  value: number;
  most: number;
  step?: number;
  said: string;
  disabled: boolean;
  onTry: (value: number) => void;
  onTake: (value: number) => void;
}) {
  const id = useId();
  const take = (target: HTMLInputElement) => props.onTake(Number(target.value));
  return (
    <input
      id={id}
      type="range"
      aria-label={props.label}
      aria-valuetext={props.said}
      min={props.step ?? 1}
      max={props.most}
      step={props.step ?? 1}
      value={props.value}
      disabled={props.disabled}
      onChange={(event) => props.onTry(Number(event.target.value))}
      onPointerUp={(event) => take(event.currentTarget)}
      onKeyUp={(event) => take(event.currentTarget)}
      onBlur={(event) => take(event.currentTarget)}
    />
  );
}
