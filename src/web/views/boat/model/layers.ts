import type { CornerFigures } from "../../../../core/circuit/results.js";
import type { DrawnRun } from "./runs.js";

/** What the runs are drawn by: their own colours, or one of their figures. */
export const runLayers = ["colours", "drop", "current", "heat", "bundle"] as const;
export type RunLayer = (typeof runLayers)[number];
export type FigureLayer = Exclude<RunLayer, "colours">;

/** How strongly a run is drawn: 0 the least, 3 the most. Each has a line style of its own besides its colour. */
export const strengths = [0, 1, 2, 3] as const;
export type Strength = (typeof strengths)[number];

export interface RunFigure {
  /** V, A, W/m, or a count of conductors; undefined: there is no such figure. */
  readonly value?: number;
  /** Drop as a share of nominal voltage. */
  readonly share?: number;
  readonly strength?: Strength;
}

/** Where one strength gives way to the next: drop as a share of nominal, A, W/m, conductors. For the eye only; limits are told by findings. */
export const layerSteps: Readonly<Record<FigureLayer, readonly [number, number, number]>> = {
  drop: [0.01, 0.03, 0.05],
  current: [1, 5, 15],
  heat: [0.05, 0.5, 2],
  bundle: [3, 7, 25],
};

interface RunFacts {
  readonly nominalV?: number;
  readonly lengthM?: number;
}

/** The figure of each run in a layer. `corner` undefined, or not solved: there are no electrical figures. */
export function figuresIn(
  layer: FigureLayer,
  runs: readonly DrawnRun[],
  corner: CornerFigures | undefined,
  facts: (run: string) => RunFacts,
): Map<string, RunFigure> {
  const byRun = corner?.status === "solved" ? sumsOf(corner) : new Map<string, Readonly<Sums>>();
  return new Map(
    runs.map((run): [string, RunFigure] => [
      run.name,
      figureOf(layer, run, byRun.get(run.name), facts(run.name)),
    ]),
  );
}

/** The greatest drop out and back, the greatest current, and all heat of one run. */
interface Sums {
  outV: number;
  backV: number;
  currentA: number;
  heatW: number;
}

const isReturn = /(?:^| \/ )return(?: \/ |$)/;

// at every step of a drag: nothing is made here but one line a run
function sumsOf(corner: CornerFigures): ReadonlyMap<string, Readonly<Sums>> {
  const byRun = new Map<string, Sums>();
  for (const { id, of, dropV, currentA, heatW } of corner.branches) {
    let sums = byRun.get(of);
    if (sums === undefined) {
      sums = { outV: 0, backV: 0, currentA: 0, heatW: 0 };
      byRun.set(of, sums);
    }
    const lostV = Math.abs(dropV);
    if (isReturn.test(id)) sums.backV = Math.max(sums.backV, lostV);
    else sums.outV = Math.max(sums.outV, lostV);
    sums.currentA = Math.max(sums.currentA, Math.abs(currentA));
    sums.heatW += heatW;
  }
  return byRun;
}

function figureOf(
  layer: FigureLayer,
  run: DrawnRun,
  sums: Readonly<Sums> | undefined,
  { nominalV, lengthM }: RunFacts,
): RunFigure {
  if (layer === "bundle") return graded(layer, run.loadedConductors);
  if (!sums) return {};
  if (layer === "current") return graded(layer, sums.currentA);
  if (layer === "heat")
    return lengthM !== undefined && lengthM > 0 ? graded(layer, sums.heatW / lengthM) : {};
  const value = sums.outV + sums.backV;
  if (nominalV === undefined) return { value };
  const share = value / nominalV;
  return { value, share, strength: strengthOf(layer, share) };
}

function graded(layer: FigureLayer, value: number): RunFigure {
  return { value, strength: strengthOf(layer, value) };
}

function strengthOf(layer: FigureLayer, value: number): Strength {
  const [low, middle, high] = layerSteps[layer];
  return value < low ? 0 : value < middle ? 1 : value < high ? 2 : 3;
}
