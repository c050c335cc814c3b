import { createContext, type ReactNode, useContext, useMemo, useState } from "react";
import type { FigureRef } from "../../core/working/figure-ref.js";

interface SlipState {
  /** The figure whose working lies open, if any; it lies over the slip of what is selected. */
  readonly working: FigureRef | undefined;
  readonly showWorking: (figure: FigureRef | undefined) => void;
  /** Is there a working one came from, and back to it. */
  readonly before: boolean;
  readonly back: () => void;
}

const nothing: SlipState = { working: undefined, showWorking: () => {}, before: false, back: () => {} };
const Slip = createContext<SlipState>(nothing);

export function SlipProvider({ children }: { children: ReactNode }) {
  const [opened, setOpened] = useState<readonly FigureRef[]>([]);
  const state = useMemo((): SlipState => {
    const showWorking = (figure: FigureRef | undefined) =>
      setOpened(figure === undefined ? [] : [...opened.slice(-20), figure]);
    return {
      working: opened.at(-1),
      showWorking,
      before: opened.length > 1,
      back: () => setOpened(opened.slice(0, -1)),
    };
  }, [opened]);
  return <Slip value={state}>{children}</Slip>;
}

export function useSlip(): SlipState {
  return useContext(Slip);
}
