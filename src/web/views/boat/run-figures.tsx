import { createContext, type ReactNode, useCallback, useContext, useMemo } from "react";
import type { CornerFigures } from "../../../core/circuit/results.js";
import type { Figures } from "../../../core/figures-types.js";
import { amps, decimals, percent, threeDigits, volts } from "../../../words/numbers.js";
import { useOfFigures } from "../../app/context.js";
import { useSame } from "../../parts/use-same.js";
import { type FigureLayer, figuresIn, type RunFigure, type Strength } from "./model/layers.js";
import type { BoatScene } from "./model/scene.js";
import type { LayerChoice } from "./use-layers.js";

/** How a run is drawn in a layer of figures. */
export type RunStrength = Strength | "none";

/** The runs in the layer chosen, by their names. Each map stays the same one as long as it says the same. */
export interface RunFigures {
  /** Undefined: in their own colours. */
  readonly strengths: ReadonlyMap<string, RunStrength> | undefined;
  readonly labels: ReadonlyMap<string, string> | undefined;
}

const OfRuns = createContext<RunFigures>({ strengths: undefined, labels: undefined });

/** Works out the figures of the runs once for all that show them. What is inside is not drawn anew with each of them, but for what asks (`useRunFigures`). */
export function RunFiguresProvider(props: { scene: BoatScene; choice: LayerChoice; children: ReactNode }) {
  const { scene, choice, children } = props;
  const { layer, corner } = choice;
  const read = useCallback(
    (figures: Figures | undefined) => runFiguresOf(scene, { layer, corner }, figures),
    [scene, layer, corner],
  );
  const found = useOfFigures(read);
  const strengths = useSame(found.strengths);
  const labels = useSame(found.labels);
  const value = useMemo(() => ({ strengths, labels }), [strengths, labels]);
  return <OfRuns value={value}>{children}</OfRuns>;
}

export function useRunFigures(): RunFigures {
  return useContext(OfRuns);
}

/** The corner asked for, else the first. */
export function cornerIn({ corners }: Pick<Figures, "corners">, name: string): CornerFigures | undefined {
  return corners.find((corner) => corner.name === name) ?? corners[0];
}

function runFiguresOf(
  scene: BoatScene,
  { layer, corner }: Pick<LayerChoice, "layer" | "corner">,
  figures: Figures | undefined,
): RunFigures {
  if (layer === "colours") return { strengths: undefined, labels: undefined };
  const runs = new Map(figures?.plan.runs.map((run) => [run.name, run]));
  const figured = figuresIn(layer, scene.runs.drawn, figures && cornerIn(figures, corner), (name) => {
    const run = runs.get(name);
    const circuit = run && figures?.plan.circuits.get(run.carries[0] ?? "");
    return {
      ...(circuit && { nominalV: circuit.nominalV }),
      ...(run && { lengthM: run.lengthM }),
    };
  });
  const strengths = new Map<string, RunStrength>();
  const labels = new Map<string, string>();
  for (const [name, figure] of figured) {
    strengths.set(name, figure.strength ?? "none");
    const text = runFigureWords(layer, figure);
    if (text !== undefined) labels.set(name, text);
  }
  return { strengths, labels };
}

/** A figure of a run as it is written beside it. */
function runFigureWords(layer: FigureLayer, { value, share }: RunFigure): string | undefined {
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
