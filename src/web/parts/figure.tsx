import type { ReactNode } from "react";
import type { FigureRef } from "../../core/working/figure-ref.js";
import { useSlip } from "../app/slip-state.js";

/** A worked-out figure, written as it is shown. A tap opens its working: formula, numbers, table row, source, assumptions. */
export function Figure({ of, label, children }: { of: FigureRef; label?: string; children: ReactNode }) {
  const { showWorking } = useSlip();
  return (
    <button
      type="button"
      className="figure"
      aria-label={label === undefined || typeof children !== "string" ? undefined : `${label}: ${children}`}
      onClick={() => showWorking(of)}
    >
      {children}
    </button>
  );
}
