import { type KeyboardEvent, type PointerEvent, useRef } from "react";
import type { OnPeriod, Outing } from "../../../core/plan/model/outing.js";
import { percent } from "../../../words/numbers.js";
import type { ScreenWords } from "../../../words/screen/en.js";
import { useWordsOfOuting } from "../../words/outing.js";
import { hourMarks, momentWords, samePeriod, snapped, stepH } from "./times.js";
import type { OutingHands } from "./use-outing.js";

type Grip = "start" | "end" | "whole";

interface LaneProps {
  readonly outing: Outing;
  readonly index: number;
  readonly hands: OutingHands;
  readonly open: boolean;
  readonly onOpen: () => void;
  readonly readOnly: boolean;
}

/** One thing that is on: its name, and a bar with an end to drag at either side. The bar is as high as its level, striped as it runs. */
export function Lane({ outing, index, hands, open, onOpen, readOnly }: LaneProps) {
  const words = useWordsOfOuting();
  const track = useRef<HTMLDivElement>(null);
  const held = useRef<{ grip: Grip; x: number; from: OnPeriod; moved: boolean }>(undefined);
  const { lastsH, startClockH } = outing;
  const kept = outing.on[index];
  if (!kept) return null;
  const period = hands.draft?.index === index ? hands.draft.period : kept;
  const moved = (from: OnPeriod, grip: Grip, byH: number): OnPeriod => {
    if (grip === "start") return { ...from, fromH: snapped(from.fromH + byH, 0, from.toH) };
    if (grip === "end") return { ...from, toH: snapped(from.toH + byH, from.fromH, lastsH) };
    const length = from.toH - from.fromH;
    const fromH = snapped(from.fromH + byH, 0, lastsH - length);
    return { ...from, fromH, toH: fromH + length };
  };
  const down = (grip: Grip) => (event: PointerEvent<HTMLElement>) => {
    if (readOnly || event.button !== 0) return;
    held.current = { grip, x: event.clientX, from: kept, moved: false };
    event.currentTarget.setPointerCapture(event.pointerId);
  };
  const move = (event: PointerEvent<HTMLElement>) => {
    const { current } = held;
    const width = track.current?.clientWidth ?? 0;
    if (!current || width === 0) return;
    if (Math.abs(event.clientX - current.x) < 4 && !current.moved) return;
    current.moved = true;
    hands.tryPeriod(index, moved(current.from, current.grip, ((event.clientX - current.x) / width) * lastsH));
  };
  const up = () => {
    const { current } = held;
    held.current = undefined;
    if (!current?.moved) return;
    if (samePeriod(period, kept)) hands.letGo();
    else hands.take(index, period);
  };
  const lost = () => {
    if (held.current) hands.letGo();
    held.current = undefined;
  };
  const onKey = (grip: Grip) => (event: KeyboardEvent) => {
    const byH = keyStep(event.key, lastsH);
    if (byH === undefined || readOnly) return;
    event.preventDefault();
    const to = moved(kept, grip, byH);
    if (!samePeriod(to, kept)) hands.take(index, to);
  };
  const said = (atH: number) => momentWords(atH, startClockH);
  const drags = { onPointerMove: move, onPointerUp: up, onPointerCancel: lost };
  const grip = (which: "start" | "end") => {
    const [value, least, most, label] =
      which === "start"
        ? ([period.fromH, 0, period.toH, words.outing.startOf(period.what)] as const)
        : ([period.toH, period.fromH, lastsH, words.outing.endOf(period.what)] as const);
    return (
      <div
        className="bar-end"
        data-end={which}
        role="slider"
        tabIndex={readOnly ? -1 : 0}
        aria-label={label}
        aria-describedby={index === 0 && which === "start" ? "outing-hint" : undefined}
        aria-disabled={readOnly}
        aria-valuemin={least}
        aria-valuemax={most}
        aria-valuenow={value}
        aria-valuetext={said(value)}
        style={{ insetInlineStart: `${(value / lastsH) * 100}%` }}
        onPointerDown={down(which)}
        onKeyDown={onKey(which)}
        {...drags}
      />
    );
  };
  const how = howWords(period, words);
  return (
    <>
      <button type="button" className="lane-name quiet" aria-expanded={open} onClick={onOpen}>
        <bdi>{period.what}</bdi>
        {how !== "" && <span className="hint"> {how}</span>}
      </button>
      <div className="lane lane-time" ref={track}>
        <Lines lastsH={lastsH} />
        <button
          type="button"
          className="bar"
          data-on={period.what}
          aria-expanded={open}
          aria-label={words.outing.barOf(
            period.what,
            said(period.fromH),
            said(period.toH),
            how && `, ${how}`,
          )}
          style={{
            insetInlineStart: `${(period.fromH / lastsH) * 100}%`,
            width: `${((period.toH - period.fromH) / lastsH) * 100}%`,
          }}
          onPointerDown={down("whole")}
          {...drags}
          onKeyDown={(event) => event.key.startsWith("Arrow") && onKey("whole")(event)}
          onClick={(event) => {
            if (!held.current?.moved) onOpen();
            event.stopPropagation();
          }}
        >
          <span
            className="bar-fill"
            data-cycles={period.duty < 1}
            style={{
              height: `${Math.max(period.level * 100, 8)}%`,
              backgroundSize: `${100 / Math.max(period.toH - period.fromH, stepH)}% 100%`,
              ...(period.duty < 1 ? { "--duty": `${Math.max(period.duty * 100, 4)}%` } : {}),
            }}
          />
        </button>
        {grip("start")}
        {grip("end")}
      </div>
    </>
  );
}

/** Light lines at the hours, the same in every lane and under the curves. */
export function Lines({ lastsH }: { lastsH: number }) {
  return hourMarks(lastsH, 6).map((atH) => (
    <span key={atH} className="hour-line" style={{ insetInlineStart: `${(atH / lastsH) * 100}%` }} />
  ));
}

function howWords({ duty, level }: OnPeriod, { outing: words }: Pick<ScreenWords, "outing">): string {
  const minutes = duty * 60;
  return [
    ...(duty < 1 ? [words.minutesInHour(Number(minutes.toPrecision(2)))] : []),
    ...(level < 1 ? [words.atLevel(percent(level, 0))] : []),
  ].join(", ");
}

function keyStep(key: string, lastsH: number): number | undefined {
  switch (key) {
    case "ArrowLeft":
    case "ArrowDown":
      return -stepH;
    case "ArrowRight":
    case "ArrowUp":
      return stepH;
    case "PageDown":
      return -1;
    case "PageUp":
      return 1;
    case "Home":
      return -lastsH;
    case "End":
      return lastsH;
    default:
      return undefined;
  }
}
