import { type RefObject, useEffect, useRef } from "react";
import type { Spot2 } from "./model/paper.js";
import type { Zoom } from "./sheet/zoom.js";

export interface Hands {
  /** The thing at a place of the window [px], within so much of it. */
  readonly thingAt: (
    spotPx: Spot2,
    withinPx: number,
  ) => { readonly name: string; readonly view: string } | undefined;
  /** May it be taken by a finger? A mouse may take anything. */
  readonly held: (name: string) => boolean;
  readonly take: (name: string, view: string) => boolean;
  readonly move: (byPx: Spot2, free: boolean) => void;
  readonly drop: () => void;
  readonly cancel: () => void;
  readonly tap: (name: string | undefined, view: string | undefined, several: boolean) => void;
}

/** Farther than this is a drag, not a tap [px]. */
const slackPx = 5;
const fingerPx = 22;
const mousePx = 12;

interface Pointer {
  readonly start: Spot2;
  at: Spot2;
}

/** Mouse, pen and fingers on the sheet: take a thing, pan, pinch, wheel. */
export function useGestures(svg: RefObject<SVGSVGElement | null>, zoom: Zoom, hands: Hands): void {
  const latest = useRef(hands);
  latest.current = hands;
  useEffect(() => {
    const element = svg.current;
    if (!element) return;
    const pointers = new Map<number, Pointer>();
    let mode: "none" | "undecided" | "thing" | "pan" | "pinch" = "none";
    let under: ReturnType<Hands["thingAt"]>;
    const spotOf = (event: { clientX: number; clientY: number }): Spot2 => {
      const box = element.getBoundingClientRect();
      return [event.clientX - box.left, event.clientY - box.top];
    };
    const down = (event: PointerEvent) => {
      if (event.pointerType === "mouse" && event.button !== 0) return;
      const at = spotOf(event);
      pointers.set(event.pointerId, { start: at, at });
      if (pointers.size === 2) {
        if (mode === "thing") latest.current.cancel();
        mode = "pinch";
        return;
      }
      if (pointers.size > 2) return;
      mode = "undecided";
      under = latest.current.thingAt(at, event.pointerType === "mouse" ? mousePx : fingerPx);
    };
    const move = (event: PointerEvent) => {
      const pointer = pointers.get(event.pointerId);
      if (!pointer) return;
      const at = spotOf(event);
      const [dx, dy] = [at[0] - pointer.at[0], at[1] - pointer.at[1]];
      if (mode === "pinch") {
        const other = [...pointers].find(([id]) => id !== event.pointerId)?.[1];
        if (other) {
          const apart = (spot: Spot2) => Math.hypot(spot[0] - other.at[0], spot[1] - other.at[1]);
          const middle: Spot2 = [(at[0] + other.at[0]) / 2, (at[1] + other.at[1]) / 2];
          zoom.pan(dx / 2, dy / 2);
          if (apart(pointer.at) > 1) zoom.by(apart(at) / apart(pointer.at), middle);
        }
      } else if (mode === "undecided" && far(pointer.start, at)) {
        const may = under && (event.pointerType === "mouse" || latest.current.held(under.name));
        mode = under && may && latest.current.take(under.name, under.view) ? "thing" : "pan";
        capture(event.pointerId);
      }
      if (mode === "thing")
        latest.current.move([at[0] - pointer.start[0], at[1] - pointer.start[1]], event.altKey);
      else if (mode === "pan") zoom.pan(dx, dy);
      pointer.at = at;
    };
    const up = (event: PointerEvent) => {
      if (!pointers.delete(event.pointerId)) return;
      if (mode === "undecided") {
        const several = event.shiftKey || event.ctrlKey || event.metaKey;
        latest.current.tap(under?.name, under?.view, several);
      } else if (mode === "thing") latest.current.drop();
      mode = pointers.size > 0 ? "pan" : "none";
    };
    const cancel = (event: PointerEvent) => {
      if (!pointers.delete(event.pointerId)) return;
      if (mode === "thing") latest.current.cancel();
      mode = pointers.size > 0 ? "pan" : "none";
    };
    const capture = (id: number) => {
      // a pointer that is gone already can't be captured; then there is nothing to hold
      if (element.hasPointerCapture(id)) return;
      try {
        element.setPointerCapture(id);
      } catch {
        pointers.delete(id);
      }
    };
    const wheel = (event: WheelEvent) => {
      const out = event.deltaY > 0;
      // at the whole boat the wheel goes on to scroll the page
      if (out && zoom.isWhole() && !event.ctrlKey) return;
      event.preventDefault();
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
      zoom.by(Math.exp((-event.deltaY * lines) / (event.ctrlKey ? 120 : 500)), spotOf(event));
    };
    element.addEventListener("pointerdown", down);
    element.addEventListener("pointermove", move);
    element.addEventListener("pointerup", up);
    element.addEventListener("pointercancel", cancel);
    element.addEventListener("wheel", wheel, { passive: false });
    return () => {
      element.removeEventListener("pointerdown", down);
      element.removeEventListener("pointermove", move);
      element.removeEventListener("pointerup", up);
      element.removeEventListener("pointercancel", cancel);
      element.removeEventListener("wheel", wheel);
    };
  }, [svg, zoom]);
}

const far = (a: Spot2, b: Spot2) => Math.hypot(a[0] - b[0], a[1] - b[1]) > slackPx;
