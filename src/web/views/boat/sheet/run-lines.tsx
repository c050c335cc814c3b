import { memo } from "react";
import type { Point } from "../../../../core/hull/vector.js";
import { conductorColour } from "../../../../drawing/palette.js";
import type { RunFigure } from "../model/layers.js";
import { project, type ViewName } from "../model/paper.js";
import type { DrawnRun } from "../model/runs.js";
import { middleOf, pathOf, unspoken } from "./path.js";

interface RunLineProps {
  readonly run: DrawnRun;
  readonly course: readonly Point[];
  readonly view: ViewName;
  readonly selected: boolean;
  /** Its figure in the layer shown; undefined: own colours. */
  readonly figure: RunFigure | undefined;
  readonly label: string | undefined;
  readonly ghost?: boolean;
}

/** One run in one view. Strength shows by width and dashes as well as by colour, and is written at its middle. */
export const RunLine = memo(function RunLine(props: RunLineProps) {
  const { run, course, view, selected, figure, label, ghost = false } = props;
  const d = pathOf(view, course);
  const named = run.colours?.out === undefined ? undefined : conductorColour(run.colours.out);
  const style = figure ? `strength-${figure.strength ?? "none"}` : `conductor conductor-${named ?? "ink"}`;
  const middle = middleOf(course.map((point) => project(view, point)));
  return (
    <g
      className="run"
      data-run={run.name}
      data-course={run.course}
      data-selected={selected || undefined}
      data-ghost={ghost || undefined}
      {...unspoken}
    >
      <path className="run-under" d={d} />
      <path className={`run-line ${style.replaceAll("dark blue", "dark-blue")}`} d={d} />
      {label !== undefined && middle && (
        <g transform={`translate(${middle[0]} ${middle[1]})`}>
          <text className="still run-label" textAnchor="middle" dy="0.35em">
            {label}
          </text>
        </g>
      )}
    </g>
  );
});
