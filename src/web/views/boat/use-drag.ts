import { useEffect, useRef, useState } from "react";
import type { Shows } from "../../../core/plan/model/plan.js";
import { usePlanStore } from "../../app/context.js";
import { type Drag, dragged, dragOf } from "./drag.js";
import { movedPlan } from "./model/moved-plan.js";
import type { Spot2, ViewName } from "./model/paper.js";
import { placeEdits } from "./model/place-edits.js";
import type { BoatScene, Moves } from "./model/scene.js";
import type { BoatThing } from "./model/things.js";
import { usePreview } from "./use-preview.js";

/** A moment without a key after which what was nudged counts as put down [ms]. */
const restMs = 500;

export interface Dragging {
  readonly drag: Drag | undefined;
  readonly start: (thing: BoatThing, view: ViewName, marked: readonly BoatThing[]) => boolean;
  readonly move: (byMm: Spot2, withinM: number) => void;
  readonly nudge: (thing: BoatThing, view: ViewName, byMm: Spot2, marked: readonly BoatThing[]) => void;
  /** The hand is on the drawing: what the figures of a drag need is fetched, if it has not been yet. */
  readonly expect: () => void;
  /** Puts it down where it is. */
  readonly drop: () => void;
  /** Puts it back where it was. */
  readonly cancel: () => void;
  /** Writes where pieces are to be. @returns why not, if not. */
  readonly place: (moves: Moves) => boolean;
}

/** What is dragged or nudged, shown at every step, written into the plan once when it is put down. */
export function useDrag(
  scene: BoatScene | undefined,
  shows: Shows,
  put: (drag: Drag, taken: boolean) => void,
): Dragging {
  const store = usePlanStore();
  const preview = usePreview(store);
  const [drag, setDrag] = useState<Drag>();
  const live = useRef<{ drag: Drag; others: readonly BoatThing[]; byMm: Spot2 }>(undefined);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const latest = useRef({ scene, shows, put });
  latest.current = { scene, shows, put };

  const show = (next: Drag) => {
    if (!live.current) return;
    live.current.drag = next;
    setDrag(next);
    const { scene: now, shows: written } = latest.current;
    if (!now) return;
    preview.follow({
      edits: () => placeEdits(now, next.moves, written),
      plan: () => movedPlan(now, next.moves, written),
    });
  };
  const place = (moves: Moves): boolean => {
    const { scene: now } = latest.current;
    const edits = now ? placeEdits(now, moves, latest.current.shows) : [];
    return edits.length > 0 && store.edit(edits).ok;
  };
  const end = () => {
    clearTimeout(timer.current);
    live.current = undefined;
    preview.stop();
    setDrag(undefined);
  };
  const drop = () => {
    const done = live.current?.drag;
    if (!done) return;
    const moved = done.at.some((value, axis) => Math.abs(value - (done.from[axis] ?? value)) > 1e-6);
    const taken = moved && place(done.moves);
    end();
    if (moved) latest.current.put(done, taken);
  };
  const start: Dragging["start"] = (thing, view, marked) => {
    drop();
    const begun = store.get().readOnly ? undefined : dragOf(thing, view, "pointer", marked);
    if (!begun) return false;
    const { others, ...first } = begun;
    live.current = { drag: first, others, byMm: [0, 0] };
    setDrag(first);
    return true;
  };
  const move: Dragging["move"] = (byMm, withinM) => {
    const { scene: now } = latest.current;
    if (!live.current || !now) return;
    show(dragged(now, live.current.drag, byMm, live.current.others, withinM));
  };
  const nudge: Dragging["nudge"] = (thing, view, byMm, marked) => {
    const { scene: now } = latest.current;
    if (!now || store.get().readOnly) return;
    const going = live.current;
    if (going?.drag.by !== "keys" || going.drag.lead.name !== thing.name || going.drag.view !== view) {
      drop();
      const begun = dragOf(latest.current.scene?.byName.get(thing.name) ?? thing, view, "keys", marked);
      if (!begun) return;
      const { others, ...first } = begun;
      live.current = { drag: first, others, byMm: [0, 0] };
    }
    if (!live.current) return;
    const { drag: before, others, byMm: sum } = live.current;
    live.current.byMm = [sum[0] + byMm[0], sum[1] + byMm[1]];
    show(dragged(now, before, live.current.byMm, others, 0));
    clearTimeout(timer.current);
    timer.current = setTimeout(drop, restMs);
  };

  const dropLast = useRef(drop);
  dropLast.current = drop;
  useEffect(() => {
    // leaving the view or the page puts down what is in hand
    const leave = () => dropLast.current();
    addEventListener("pagehide", leave);
    return () => {
      removeEventListener("pagehide", leave);
      leave();
    };
  }, []);
  const expect = () => void preview.getReady();
  return { drag, expect, start, move, nudge, drop, cancel: end, place };
}
