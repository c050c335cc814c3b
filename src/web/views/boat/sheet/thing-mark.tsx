import { memo } from "react";
import type { Point } from "../../../../core/hull/vector.js";
import { axesOf, project, type ViewName } from "../model/paper.js";
import type { BoatThing } from "../model/things.js";
import { asChoice } from "./path.js";
import { ThingSign } from "./thing-sign.js";

interface ThingMarkProps {
  readonly thing: BoatThing;
  readonly at: Point;
  readonly view: ViewName;
  /** What a screen reader says of it; empty: it says it of the same thing in another view; undefined: it only shows. */
  readonly label?: string;
  readonly selected: boolean;
  readonly marked: boolean;
  /** The one that the tab key reaches. */
  readonly reached?: boolean;
  readonly moving: boolean;
}

/** One thing in one view: its body to scale, and a sign that keeps its size on screen. */
export const ThingMark = memo(function ThingMark(props: ThingMarkProps) {
  const { thing, at, view, label, selected, marked, reached = false, moving } = props;
  const [x, y] = project(view, at);
  return (
    <g
      {...(label !== undefined && label !== "" && asChoice(label, selected, reached))}
      className="thing"
      data-kind={thing.kind}
      data-thing={label === undefined ? undefined : thing.name}
      data-view={view}
      data-selected={selected || undefined}
      data-marked={marked || undefined}
      data-moving={moving || undefined}
      data-assumed={!thing.sizeKnown || undefined}
      transform={`translate(${x} ${y})`}
    >
      <Signs thing={thing} view={view} selected={selected} marked={marked} />
    </g>
  );
});

/** What is drawn of it, the same wherever it is. */
const Signs = memo(function Signs(props: Pick<ThingMarkProps, "thing" | "view" | "selected" | "marked">) {
  const { thing, view, selected, marked } = props;
  const [right, up] = axesOf(view);
  const [wide, high] = [thing.sizeM[right] * 1000, thing.sizeM[up] * 1000];
  const round = thing.kind === "gear" && thing.role !== "electronics";
  return (
    <>
      <rect
        className="body"
        x={-wide / 2}
        y={-high / 2}
        width={wide}
        height={high}
        rx={round ? Math.min(wide, high) / 2 : 4}
      />
      <g className="still sign-size">
        <ThingSign thing={thing} />
      </g>
      <g className="still">
        {marked && <circle className="mark-ring" r={12} />}
        {selected && <circle className="ring" r={15} />}
        <circle className="focus-ring" r={19} />
        {selected && <circle className="grip" r={22} />}
      </g>
    </>
  );
});
