import { type RefObject, useLayoutEffect, useMemo, useState } from "react";
import type { Paper } from "../model/paper.js";

/** Wider than this the section stands beside the profile [px]. */
const besidePx = 620;

export interface SheetWindow {
  readonly widthPx: number;
  readonly beside: boolean;
  /** The height that shows the whole sheet, within what a screen holds [px]. */
  readonly heightOf: (paper: Paper) => number;
}

/** Size of the window that the sheet is seen through. */
export function useWindow(svg: RefObject<SVGSVGElement | null>): SheetWindow {
  const [widthPx, setWidthPx] = useState(0);
  useLayoutEffect(() => {
    const element = svg.current;
    if (!element) return;
    const measure = () => setWidthPx(Math.round(element.getBoundingClientRect().width));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [svg]);
  return useMemo(
    () => ({
      widthPx,
      beside: widthPx >= besidePx,
      heightOf: ({ widthMm, heightMm }) =>
        Math.round(Math.max(260, Math.min((widthPx * heightMm) / widthMm, innerHeight * 0.74))),
    }),
    [widthPx],
  );
}
