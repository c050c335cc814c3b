import { useEffect } from "react";

let byKey = false;

/** A panel that closes gives the focus back by itself: it comes first [ms]. */
const settleMs = 80;

/** Tells how a link inside the page is followed: a click without a pointer counts no clicks. */
export function followed({ detail }: { readonly detail: number }): void {
  byKey = detail === 0;
}

/**
 * Where a link was followed by key or by a screen reader, the view it leads to takes the focus: its name is read out, and Tab goes on in
 * it. A pointer leaves the focus where it is.
 */
export function useArrival(view: string): void {
  useEffect(() => {
    if (!byKey || view === "") return;
    const timer = setTimeout(() => {
      byKey = false;
      document.getElementById("work")?.focus({ preventScroll: true });
    }, settleMs);
    return () => clearTimeout(timer);
  }, [view]);
}
