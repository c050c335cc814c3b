import { type RefObject, useEffect, useLayoutEffect, useRef, useState } from "react";
import type { CircuitMap } from "../../../drawing/circuit-map/lay-out.js";

/** CSS pixels of a millimetre at the person's size of text. */
export const pxPerMm = () =>
  (96 / 25.4) * (Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / 16);

/** Width of an element's inside [px], as it changes. */
export function useWidth(element: RefObject<HTMLElement | null>): number | undefined {
  const [width, setWidth] = useState<number>();
  useLayoutEffect(() => {
    const { current } = element;
    if (!current) return;
    const measure = () => setWidth(current.clientWidth);
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(current);
    return () => observer.disconnect();
  }, [element]);
  return width;
}

/** On a phone the slip covers the lower part and the ledger line the top: brings a thing into what is left between them. */
export function showAboveSlip(spot: Element): void {
  const { top } = spot.getBoundingClientRect();
  if (top < innerHeight * 0.17 || top > innerHeight * 0.32) scrollBy(0, top - innerHeight * 0.22);
}

/** Keeps what one looks at where it is on the screen when a change of the plan shifts the map. */
export function useSteady(
  scroller: RefObject<HTMLElement | null>,
  map: CircuitMap,
  pxOfMm: number,
  anchor: string | undefined,
): void {
  const last = useRef<{ map: CircuitMap; pxOfMm: number }>(undefined);
  useLayoutEffect(() => {
    const { current } = scroller;
    const before = last.current;
    last.current = { map, pxOfMm };
    if (!current || !before || before.map === map || before.pxOfMm !== pxOfMm) return;
    const inSight = before.map.spots.find(({ down }) => down * pxOfMm >= current.scrollTop)?.id;
    const was = before.map.spots.find(({ id }) => id === (anchor ?? inSight));
    const is = was && map.spots.find(({ id }) => id === was.id);
    if (was && is) current.scrollTop += (is.down - was.down) * pxOfMm;
  }, [scroller, map, pxOfMm, anchor]);
}

/** Drags the window of a map by its paper with a mouse; fingers scroll it by themselves, two of them pinch. */
export function useHands(scroller: RefObject<HTMLElement | null>, onScale: (factor: number) => void): void {
  const scale = useRef(onScale);
  scale.current = onScale;
  useEffect(() => {
    const { current } = scroller;
    if (!current) return;
    const held = new Map<number, { x: number; y: number }>();
    let moved = false;
    const apart = () => {
      const [one, two] = [...held.values()];
      return one && two ? Math.hypot(one.x - two.x, one.y - two.y) : 0;
    };
    const down = (event: PointerEvent) => {
      if (event.pointerType === "mouse" && event.button !== 0) return;
      held.set(event.pointerId, { x: event.clientX, y: event.clientY });
      moved = false;
    };
    const move = (event: PointerEvent) => {
      const was = held.get(event.pointerId);
      if (!was) return;
      const before = apart();
      held.set(event.pointerId, { x: event.clientX, y: event.clientY });
      if (held.size === 2 && before > 20) scale.current(apart() / before);
      if (held.size > 1 || event.pointerType !== "mouse") return;
      moved = moved || Math.hypot(event.clientX - was.x, event.clientY - was.y) > 2;
      current.scrollBy(was.x - event.clientX, was.y - event.clientY);
    };
    const up = (event: PointerEvent) => held.delete(event.pointerId);
    const wheel = (event: WheelEvent) => {
      if (!event.ctrlKey) return;
      event.preventDefault();
      scale.current(Math.exp(-event.deltaY / 400));
    };
    // A drag of the paper is no tap on what lies under it.
    const click = (event: MouseEvent) => {
      if (moved) event.stopPropagation();
      moved = false;
    };
    current.addEventListener("pointerdown", down);
    addEventListener("pointermove", move);
    addEventListener("pointerup", up);
    addEventListener("pointercancel", up);
    current.addEventListener("wheel", wheel, { passive: false });
    current.addEventListener("click", click, { capture: true });
    return () => {
      current.removeEventListener("pointerdown", down);
      removeEventListener("pointermove", move);
      removeEventListener("pointerup", up);
      removeEventListener("pointercancel", up);
      current.removeEventListener("wheel", wheel);
      current.removeEventListener("click", click, { capture: true });
    };
  }, [scroller]);
}
