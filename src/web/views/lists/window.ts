import { type RefObject, useEffect, useState } from "react";

/** Lines of a long list that are in sight, with some before and after. */
export interface Sight {
  readonly from: number;
  readonly to: number;
  readonly rowPx: number;
  readonly pageRows: number;
}

const spare = 8;
/** Height of a line, in the root's type size: `--touch`. */
const rowRem = 2.75;

/** Follows the scrolling of a list. */
export function useSight(scroller: RefObject<HTMLElement | null>, count: number): Sight {
  const [seen, setSeen] = useState({ top: 0, height: 600, rem: 16 });
  useEffect(() => {
    const element = scroller.current;
    if (!element) return undefined;
    const look = () => {
      const rem = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;
      setSeen({ top: element.scrollTop, height: element.clientHeight, rem });
    };
    look();
    element.addEventListener("scroll", look, { passive: true });
    const sizes = new ResizeObserver(look);
    sizes.observe(element);
    sizes.observe(document.documentElement);
    return () => {
      element.removeEventListener("scroll", look);
      sizes.disconnect();
    };
  }, [scroller]);
  const rowPx = rowRem * seen.rem;
  const pageRows = Math.max(Math.floor(seen.height / rowPx) - 2, 1);
  const from = Math.min(Math.max(Math.floor(seen.top / rowPx) - spare, 0), Math.max(count - 1, 0));
  const to = Math.min(from + Math.ceil(seen.height / rowPx) + 2 * spare, count);
  return { from, to, rowPx, pageRows };
}

/** Numbers of the lines to make, in order: those in sight and the one where one is. */
export function madeLines({ from, to }: Sight, here: number): number[] {
  const seen = Array.from({ length: to - from }, (_, index) => from + index);
  if (here < from) return [here, ...seen];
  return here >= to ? [...seen, here] : seen;
}
