import type { Point } from "../../../../core/hull/vector.js";
import { axesOf, type Paper, project, type Spot2, type ViewName } from "../model/paper.js";
import type { Snap } from "../model/snap.js";
import { unspoken } from "./path.js";

/** While something is dragged: what it holds on to, and how far it is from the aft end, the centreline and the base line. */
export function DragLines(props: {
  at: Point;
  view: ViewName;
  snaps: readonly Snap[];
  paper: Paper;
  sayLength: (lengthM: number) => string;
  saySnap: (snap: Snap) => string;
}) {
  const { at, view, snaps, paper, sayLength, saySnap } = props;
  const { reach } = paper;
  const [x, y] = project(view, at);
  const [right, up] = axesOf(view);
  const along = foot(view, at, right, right === 0 ? reach.fromM : 0);
  const over = foot(view, at, up, 0);
  return (
    <g className="drag-lines" {...unspoken}>
      {snaps.map((snap) => {
        const across = snap.axis === right;
        const far = 60_000;
        return (
          <g key={snap.axis} className="snap">
            <path d={across ? `M${x} ${y - far}V${y + far}` : `M${x - far} ${y}H${x + far}`} />
            <g transform={`translate(${x} ${y})`}>
              <text className="still" x={across ? 6 : 26} y={across ? 34 : -8}>
                {saySnap(snap)}
              </text>
            </g>
          </g>
        );
      })}
      <Distance
        from={along}
        to={[x, y]}
        text={sayLength(Math.abs(at[right] - (right === 0 ? reach.fromM : 0)))}
      />
      <Distance from={over} to={[x, y]} text={sayLength(Math.abs(at[up]))} upright />
    </g>
  );
}

/** The same place with one axis of the boat at another value. */
function foot(view: ViewName, at: Point, axis: 0 | 1 | 2, valueM: number): Spot2 {
  const there: [number, number, number] = [...at];
  there[axis] = valueM;
  return project(view, there);
}

function Distance(props: { from: Spot2; to: Spot2; text: string; upright?: boolean }) {
  const { from, to, text, upright = false } = props;
  return (
    <g className="distance">
      <path d={`M${from[0]} ${from[1]}L${to[0]} ${to[1]}`} />
      <g transform={`translate(${(from[0] + to[0]) / 2} ${(from[1] + to[1]) / 2})`}>
        <text
          className="still"
          textAnchor={upright ? "start" : "middle"}
          x={upright ? 5 : 0}
          y={upright ? 4 : -5}
        >
          {text}
        </text>
      </g>
    </g>
  );
}
