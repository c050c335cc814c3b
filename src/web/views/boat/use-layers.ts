import { useMemo, useState } from "react";
import type { CornerFigures } from "../../../core/circuit/results.js";
import { amps, decimals, percent, threeDigits, volts } from "../../../words/numbers.js";
import { useFigures } from "../../app/context.js";
import { type FigureLayer, figuresIn, type RunFigure, type RunLayer } from "./model/layers.js";
import type { BoatScene } from "./model/scene.js";

/** What is shown on the sheet. */
export interface ShownLayers {
  readonly runs: boolean;
  readonly zones: boolean;
  readonly water: boolean;
  readonly names: boolean;
  readonly figures: ReadonlyMap<string, RunFigure> | undefined;
  readonly labels: ReadonlyMap<string, string> | undefined;
}

export interface LayerChoice {
  readonly shown: ShownLayers;
  readonly layer: RunLayer;
  readonly setLayer: (layer: RunLayer) => void;
  readonly toggle: (what: "zones" | "water" | "names") => void;
  readonly corner: CornerFigures | undefined;
  readonly corners: readonly string[];
  readonly setCorner: (name: string) => void;
}

/** A figure of a run as it is written beside it. */
export function runFigureWords(layer: FigureLayer, { value, share }: RunFigure): string | undefined {
  if (value === undefined) return undefined;
  switch (layer) {
    case "drop":
      return share === undefined ? volts(value) : `${volts(value)} · ${percent(share)}`;
    case "current":
      return amps(value);
    case "heat":
      return `${threeDigits(value)}\u00a0W/m`;
    case "bundle":
      return decimals(value, 0);
    default:
      return layer satisfies never;
  }
}

export function useLayers(
  scene: BoatScene | undefined,
  usual: Pick<ShownLayers, "runs" | "zones">,
): LayerChoice {
  const figures = useFigures();
  const [layer, setLayer] = useState<RunLayer>("colours");
  const [on, setOn] = useState({ zones: usual.zones, water: true, names: true });
  const [cornerName, setCorner] = useState("worst drop");
  const corners = figures?.corners ?? none;
  const corner = corners.find(({ name }) => name === cornerName) ?? corners[0];
  const found = useMemo(() => {
    if (layer === "colours" || !scene) return undefined;
    const runs = new Map(figures?.plan.runs.map((run) => [run.name, run]));
    const figured = figuresIn(layer, scene.runs.drawn, corner, (name) => {
      const run = runs.get(name);
      const circuit = run && figures?.plan.circuits.get(run.carries[0] ?? "");
      return {
        ...(circuit && { nominalV: circuit.nominalV }),
        ...(run && { lengthM: run.lengthM }),
      };
    });
    const labels = new Map<string, string>();
    for (const [name, figure] of figured) {
      const text = runFigureWords(layer, figure);
      if (text !== undefined) labels.set(name, text);
    }
    return { figured, labels };
  }, [layer, scene, figures, corner]);
  const runs = usual.runs || layer !== "colours";
  const shown = useMemo(
    () => ({ runs, ...on, figures: found?.figured, labels: found?.labels }),
    [runs, on, found],
  );
  return {
    shown,
    layer,
    setLayer,
    toggle: (what) => setOn({ ...on, [what]: !on[what] }),
    corner,
    corners: corners.map(({ name }) => name),
    setCorner,
  };
}

const none: readonly CornerFigures[] = [];
