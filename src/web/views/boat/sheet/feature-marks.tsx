import { memo } from "react";
import type { Point } from "../../../../core/hull/vector.js";
import type { Feature } from "../model/features.js";
import { project, type ViewName } from "../model/paper.js";
import { pathOf, unspoken } from "./path.js";

/** Reference points, openings, holes, faces and zones not to drill, in one view. The list below the drawing tells them in words. */
export const FeatureMarks = memo(function FeatureMarks(props: {
  features: readonly Feature[];
  view: ViewName;
  /** In a section only what is so near to it is shown [m]. */
  near?: { readonly xM: number; readonly withinM: number };
}) {
  const { features, view, near } = props;
  const isNear = ([x]: Point) => near === undefined || Math.abs(x - near.xM) <= near.withinM;
  return (
    <g className="features" {...unspoken}>
      {features.map((feature, i) => {
        const key = `${feature.kind} ${feature.name} ${i}`;
        if ("outline" in feature)
          return view === "section" ? null : (
            <path key={key} className={`feature-${feature.kind}`} d={pathOf(view, feature.outline, true)} />
          );
        if (!isNear(feature.at)) return null;
        const [x, y] = project(view, feature.at);
        return (
          <g key={key} transform={`translate(${x} ${y})`} className={`feature-${feature.kind}`}>
            {feature.acrossM > 0 && <circle className="to-scale" r={feature.acrossM * 500} />}
            <g className="still">
              {feature.kind === "reference" && (
                <path d="M-6 0H6M0-6V6M-3.500-3.500L3.500 3.500M-3.500 3.500L3.500-3.500" />
              )}
              {feature.kind === "hole" && <path d="M-4 0H4M0-4V4" />}
              {feature.kind === "opening" && <circle r={3} />}
            </g>
          </g>
        );
      })}
    </g>
  );
});
