import { memo, useMemo } from "react";
import type { Waterplane } from "../../../../core/hull/float/waterplane.js";
import type { Point } from "../../../../core/hull/vector.js";
import type { DrawnForm } from "../model/drawn-form.js";
import type { Paper, ViewName } from "../model/paper.js";
import { waterAt, waterLine, wetProfile, wetSection } from "../model/water.js";
import { pathOf, unspoken } from "./path.js";

interface WaterProps {
  readonly drawn: DrawnForm;
  readonly plane: Waterplane;
  readonly paper: Paper;
  readonly view: ViewName;
  readonly sectionM: number;
}

/** Still water: a line past the hull in profile and section with what lies under it, and where it meets the skin in plan. */
export const WaterLines = memo(function WaterLines(props: WaterProps) {
  const { drawn, plane, paper, view, sectionM } = props;
  const paths = useMemo(
    () => linesOf({ drawn, plane, paper, view, sectionM }),
    [drawn, plane, paper, view, sectionM],
  );
  const wet = useMemo(() => {
    if (view === "plan") return "";
    return pathOf(
      view,
      view === "profile" ? wetProfile(drawn, plane) : wetSection(drawn, plane, sectionM),
      true,
    );
  }, [drawn, plane, view, sectionM]);
  return (
    <g className="water" {...unspoken}>
      {wet !== "" && <path className="under-water" d={wet} />}
      {paths.map((d) => (
        <path key={d} d={d} />
      ))}
    </g>
  );
});

function linesOf({ drawn, plane, paper, view, sectionM }: WaterProps): string[] {
  const { fromM, toM, halfM } = paper.reach;
  if (view === "plan") return ([1, -1] as const).map((side) => pathOf(view, waterLine(drawn, plane, side)));
  const past = (toM - fromM) * 0.03;
  const ends: Point[] =
    view === "profile"
      ? [
          [fromM - past, 0, waterAt(plane, fromM - past, 0)],
          [toM + past, 0, waterAt(plane, toM + past, 0)],
        ]
      : [
          [sectionM, halfM + past, waterAt(plane, sectionM, halfM + past)],
          [sectionM, -halfM - past, waterAt(plane, sectionM, -halfM - past)],
        ];
  return [pathOf(view, ends)];
}
