import { useMemo, useState } from "react";
import type { RunLayer } from "./model/layers.js";

/** What is shown on the sheet. */
export interface ShownLayers {
  readonly runs: boolean;
  readonly zones: boolean;
  readonly water: boolean;
  readonly names: boolean;
}

export interface LayerChoice {
  readonly shown: ShownLayers;
  readonly layer: RunLayer;
  readonly setLayer: (layer: RunLayer) => void;
  readonly toggle: (what: "zones" | "water" | "names") => void;
  /** Name of the corner asked for; where the plan has none so called, its first one is meant. */
  readonly corner: string;
  readonly setCorner: (name: string) => void;
}

/** What a person has chosen to see on the sheet. */
export function useLayers(usual: Pick<ShownLayers, "runs" | "zones">): LayerChoice {
  const [layer, setLayer] = useState<RunLayer>("colours");
  const [on, setOn] = useState({ zones: usual.zones, water: true, names: true });
  const [corner, setCorner] = useState("worst drop");
  const runs = usual.runs || layer !== "colours";
  const shown = useMemo(() => ({ runs, ...on }), [runs, on]);
  return {
    shown,
    layer,
    setLayer,
    toggle: (what) => setOn({ ...on, [what]: !on[what] }),
    corner,
    setCorner,
  };
}
