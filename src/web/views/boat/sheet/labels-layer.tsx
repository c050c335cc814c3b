import { memo, useMemo } from "react";
import type { Point } from "../../../../core/hull/vector.js";
import { setLabels, type WantedLabel } from "../model/labels.js";
import { boxOf, onPaper, type Paper, project, type ViewName } from "../model/paper.js";
import type { DrawnRun } from "../model/runs.js";
import type { BoatThing } from "../model/things.js";
import { middleOf, unspoken } from "./path.js";

interface LabelsProps {
  readonly paper: Paper;
  readonly view: ViewName;
  readonly things: readonly BoatThing[];
  readonly runs: readonly { readonly run: DrawnRun; readonly course: readonly Point[] }[];
  /** Figures of the runs, where a layer shows them. */
  readonly runLabels: ReadonlyMap<string, string> | undefined;
  readonly pxPerMm: number;
  readonly selected: string | undefined;
  readonly moving: ReadonlySet<string> | undefined;
}

const weights: Readonly<Record<BoatThing["kind"], number>> = {
  battery: 5,
  panel: 5,
  box: 4,
  converter: 4,
  charger: 3,
  gear: 3,
  waypoint: 1,
};

/** Before the name of a run, to tell it from a thing; no name begins so. */
const runKey = "/ ";

/** Names beside the marks and figures beside the runs, where there is room for them. */
export const LabelsLayer = memo(function LabelsLayer(props: LabelsProps) {
  const { paper, view, things, runs, runLabels, pxPerMm, selected, moving } = props;
  const byName = useMemo(() => new Map(things.map((thing) => [thing.name, thing])), [things]);
  const labels = useMemo(() => {
    const wanted = things.flatMap((thing): WantedLabel[] => {
      if (!thing.at) return [];
      const [x, y] = onPaper(paper, view, thing.at);
      const weight = thing.name === selected ? 9 : weights[thing.kind];
      return [{ key: thing.name, text: thing.name, x: x * pxPerMm, y: y * pxPerMm, clearPx: 9, weight }];
    });
    const origin = paper.origins[view];
    for (const { run, course } of runs) {
      const text = runLabels?.get(run.name);
      const at = middleOf(course.map((point) => project(view, point)));
      if (text === undefined || !at) continue;
      const [x, y] = [(origin[0] + at[0]) * pxPerMm, (origin[1] + at[1]) * pxPerMm];
      wanted.push({ key: `${runKey}${run.name}`, text, x, y, clearPx: 2, weight: 7 });
    }
    const { middle, half } = boxOf(paper, view);
    const room = paper.gapMm / 2;
    const within = {
      left: 0,
      right:
        view === "section" || !paper.beside
          ? paper.widthMm * pxPerMm
          : (middle[0] + half[0] + room * 1.6) * pxPerMm,
      top: (middle[1] - half[1] - room) * pxPerMm,
      bottom: (middle[1] + half[1] + room) * pxPerMm,
    };
    const titleTop = (middle[1] - half[1]) * pxPerMm;
    const titleLeft = (view === "section" ? middle[0] : middle[0] - half[0]) * pxPerMm;
    const reachPx = view === "section" ? [75, 75] : [0, 50];
    const title = {
      left: titleLeft - (reachPx[0] ?? 0),
      right: titleLeft + (reachPx[1] ?? 0),
      top: titleTop - 34,
      bottom: titleTop - 6,
    };
    return setLabels(
      wanted,
      view === "section" && paper.beside
        ? { ...within, left: (middle[0] - half[0] - room) * pxPerMm }
        : within,
      [title],
      // a small sheet holds few words; zooming in makes room for more
      Math.max(6, Math.round((paper.widthMm * pxPerMm) / 45)),
    );
  }, [things, runs, runLabels, paper, view, pxPerMm, selected]);
  const spots = useMemo(
    () =>
      new Map(
        runs.map(({ run, course }) => [run.name, middleOf(course.map((point) => project(view, point)))]),
      ),
    [runs, view],
  );
  return (
    <g className="labels" {...unspoken}>
      {labels.map(({ key, dx, dy, anchor }) => {
        const run = key.startsWith(runKey) ? key.slice(runKey.length) : undefined;
        const at = byName.get(key)?.at;
        const spot = run === undefined ? at && project(view, at) : spots.get(run);
        if (!spot || moving?.has(key)) return null;
        const [x, y] = spot;
        return (
          <g key={key} transform={`translate(${x} ${y})`}>
            <text
              className={run === undefined ? "still" : "still run-label"}
              data-run-label={run}
              x={dx}
              y={dy}
              textAnchor={anchor}
            >
              {run === undefined ? key : runLabels?.get(run)}
            </text>
          </g>
        );
      })}
    </g>
  );
});
