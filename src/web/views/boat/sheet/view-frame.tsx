import { memo } from "react";
import { boxOf, type Paper, type ViewName } from "../model/paper.js";
import { unspoken } from "./path.js";
import type { StationTick } from "./stations.js";

/** Title of a view, and the scale under the profile. */
export const ViewFrame = memo(function ViewFrame(props: {
  paper: Paper;
  view: ViewName;
  title: string;
  ticks: readonly StationTick[];
  /** Station of the section, to mark it in the other views [m]. */
  sectionM: number;
}) {
  const { paper, view, title, ticks, sectionM } = props;
  const { middle, half } = boxOf(paper, view);
  const [x, y] = paper.origins[view];
  const [left, top] = [middle[0] - half[0] - x, middle[1] - half[1] - y];
  const bottom = top + 2 * half[1];
  return (
    <g className="view-frame" {...unspoken}>
      <g transform={`translate(${view === "section" ? 0 : left} ${top})`}>
        <text
          className="still view-title"
          y={view === "section" ? -16 : -10}
          textAnchor={view === "section" ? "middle" : "start"}
        >
          {title}
        </text>
      </g>
      {view === "profile" &&
        ticks.map(({ atM, text }) => (
          <g key={atM} transform={`translate(${atM * 1000} ${bottom})`} className="tick">
            <g className="still">
              <path d={`M0 6V${text === "" ? 10 : 13}`} />
              {text !== "" && (
                <text y={25} textAnchor="middle">
                  {text}
                </text>
              )}
            </g>
          </g>
        ))}
      {view !== "section" && (
        <g className="section-mark" transform={`translate(${sectionM * 1000} 0)`}>
          <path d={`M0 ${top - 20}V${bottom + 20}`} />
        </g>
      )}
    </g>
  );
});
