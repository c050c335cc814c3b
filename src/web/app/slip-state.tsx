import { createContext, type ReactNode, useContext, useMemo, useState } from "react";
import type { FigureRef } from "../../core/working/figure-ref.js";

interface SlipState {
  /** The figure whose working lies open, if any; it lies over the slip of what is selected. */
  readonly working: FigureRef | undefined;
  readonly showWorking: (figure: FigureRef | undefined) => void;
}

const Slip = createContext<SlipState>({ working: undefined, showWorking: () => {} });

export function SlipProvider({ children }: { children: ReactNode }) {
  const [working, showWorking] = useState<FigureRef>();
  const state = useMemo(() => ({ working, showWorking }), [working]);
  return <Slip value={state}>{children}</Slip>;
}

export function useSlip(): SlipState {
  return useContext(Slip);
}
