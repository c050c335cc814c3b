import { memo } from "react";
import type { Point } from "../../../../core/hull/vector.js";
import { conductorColour } from "../../../../drawing/palette.js";
import { project, type ViewName } from "../model/paper.js";
import type { DrawnRun } from "../model/runs.js";
import { type RunStrength, useRunFigures } from "../run-figures.js";
import { middleOf, pathOf, unspoken } from "./path.js";

interface RunLineProps {
  readonly run: DrawnRun;
  readonly course: readonly Point[];
  readonly view: ViewName;
  readonly selected: boolean;
  /** How it is drawn in the layer shown; undefined: in its own colours. */
  readonly strength: RunStrength | undefined;
  readonly label: string | undefined;
  readonly ghost?: boolean;
}

/** One run in one view. Strength shows by width and dashes as well as by colour, and is written at its middle. */
export const RunLine = memo(function RunLine(props: RunLineProps) {
  const { run, course, view, selected, strength, label, ghost = false } = props;
  const d = pathOf(view, course);
  const named = run.colours?.out === undefined ? undefined : conductorColour(run.colours.out);
  const style = strength === undefined ? `conductor conductor-${named ?? "ink"}` : `strength-${strength}`;
  const middle = label === undefined ? undefined : middleOf(course.map((point) => project(view, point)));
  return (
    <g
      className="run"
      data-run={run.name}
      data-course={run.course}
      data-selected={selected || undefined}
      data-ghost={ghost || undefined}
      {...unspoken}
    >
      {(strength === undefined || selected) && <path className="run-under" d={d} />}
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

/** A run with the places of its stops. */
export interface RunWithCourse {
  readonly run: DrawnRun;
  readonly course: readonly Point[];
}

interface RunLinesProps {
  readonly runs: readonly RunWithCourse[];
  readonly view: ViewName;
  readonly selected: string | undefined;
  readonly moving: ReadonlySet<string> | undefined;
}

/** All runs in one view, in the layer shown. */
export const RunLines = memo(function RunLines(props: RunLinesProps) {
  return <Lines {...props} strengths={useRunFigures().strengths} />;
});

const Lines = memo(function Lines(
  props: RunLinesProps & { strengths: ReadonlyMap<string, RunStrength> | undefined },
) {
  const { runs, view, selected, moving, strengths } = props;
  return runs.map(({ run, course }) => (
    <RunLine
      key={run.name}
      run={run}
      course={course}
      view={view}
      selected={run.name === selected}
      strength={strengths?.get(run.name)}
      label={undefined}
      ghost={moving !== undefined && run.stops.some((stop) => moving.has(stop))}
    />
  ));
});
