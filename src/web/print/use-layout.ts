import { useEffect, useRef, useState } from "react";
import type { LayoutFigures } from "../../core/parts/layout-types.js";
import { usePlan, useShows } from "../app/context.js";
import { Press } from "./press.js";

export interface LayoutState {
  readonly layout: LayoutFigures | undefined;
  /** Does it belong to the plan as it is now. */
  readonly fresh: boolean;
  readonly fault: string | undefined;
}

/** What is cut, drilled and bought, worked out beside the page when a view asks for it. */
export function useLayout(): LayoutState {
  const text = usePlan((state) => state.text);
  const { lengths, conductors, paper } = useShows();
  const press = useRef<Press>(undefined);
  const [known, setKnown] = useState<{ text: string; layout?: LayoutFigures; fault?: string }>();
  useEffect(
    () => () => {
      press.current?.close();
      press.current = undefined;
    },
    [],
  );
  useEffect(() => {
    let wanted = true;
    const load = async () => {
      press.current ??= new Press();
      const shows = { lengths, conductors, paper };
      const outcome = await press.current.ask({
        text,
        shows,
        paper,
        language: "en",
        wanted: { file: "layout" },
      });
      if (!wanted) return;
      if (outcome.is === "layout") setKnown({ text, layout: outcome.layout });
      else if (outcome.is === "fault") setKnown({ text, fault: outcome.detail });
    };
    void load();
    return () => {
      wanted = false;
    };
  }, [text, lengths, conductors, paper]);
  return { layout: known?.layout, fresh: known?.text === text, fault: known?.fault };
}
