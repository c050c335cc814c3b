import { useEffect, useState } from "react";
import type { ScreenWords } from "../../../words/screen/en.js";
import { usePreferences } from "../../app/context.js";
import { goTo, usePlace } from "../../app/place.js";
import type { ViewId } from "../../app/view-ids.js";
import { useWordsOfWalk } from "../../words/walk.js";

interface Stop {
  readonly note: keyof ScreenWords["walk"]["notes"];
  /** Where one is taken for it; left out: one stays. */
  readonly view?: ViewId;
  /** What is marked on the page meanwhile. */
  readonly mark: string;
}

const stops: readonly Stop[] = [
  { note: "ledger", mark: ".ledger" },
  { note: "stages", mark: ".stages" },
  { note: "boat", view: "layout", mark: "main" },
  { note: "slip", mark: ".slip" },
  { note: "findings", view: "findings", mark: ".ledger-counts" },
  { note: "keeping", mark: ".undo" },
];

/** A walk through the page on an example: a note at a time, beside the work and never in its way. Escape leaves it. */
export default function Walk({ selectFirst, leave }: { selectFirst: () => void; leave: () => void }) {
  const words = useWordsOfWalk().walk;
  const [, set] = usePreferences();
  const place = usePlace();
  const [at, setAt] = useState(0);
  const stop = stops[at];
  useMark(stop?.mark, place.at === "plan" ? `${place.view} ${place.selected ?? ""}` : "");
  const end = () => {
    set({ walk: "seen" });
    leave();
  };
  const goOn = (to: number) => {
    const next = stops[to];
    if (!next) return end();
    if (next.view && place.at === "plan") goTo({ at: "plan", plan: place.plan, view: next.view });
    if (next.note === "slip") selectFirst();
    setAt(to);
  };
  if (!stop) return null;
  return (
    <aside
      className="walk"
      aria-label={words.title}
      onKeyDown={(event) => {
        if (event.key !== "Escape") return;
        event.preventDefault();
        end();
      }}
    >
      <p className="hint">{words.step(at + 1, stops.length)}</p>
      <p aria-live="polite">{words.notes[stop.note]}</p>
      <p className="row">
        <button type="button" className="main" onClick={() => goOn(at + 1)}>
          {at + 1 < stops.length ? words.next : words.done}
        </button>
        {at > 0 && (
          <button type="button" onClick={() => goOn(at - 1)}>
            {words.before}
          </button>
        )}
        {at + 1 < stops.length && (
          <button type="button" className="quiet" onClick={end}>
            {words.leave}
          </button>
        )}
      </p>
    </aside>
  );
}

/** Frames a part of the page while its note is open, also where it comes a moment later. */
function useMark(selector: string | undefined, whenChanged: string): void {
  useEffect(() => {
    if (selector === undefined || whenChanged === "") return;
    let marked: Element | null = null;
    const look = () => {
      marked = document.querySelector(selector);
      marked?.classList.add("walk-mark");
      return marked !== null;
    };
    const timer = look() ? 0 : window.setInterval(() => look() && clearInterval(timer), 200);
    return () => {
      clearInterval(timer);
      marked?.classList.remove("walk-mark");
    };
  }, [selector, whenChanged]);
}
