import type { CSSProperties } from "react";
import { type Colour, palette } from "../../drawing/palette.js";
import type { Arc, PathStep, Shape, Stroke } from "../../drawing/shapes.js";

/** Colours of the drawings that follow the light of the page; conductors keep theirs. */
const ofPage: Partial<Readonly<Record<Colour, string>>> = {
  paper: "var(--sheet)",
  ink: "var(--ink)",
  soft: "var(--soft)",
  hair: "var(--hair)",
  wash: "var(--wash)",
  accent: "var(--accent)",
};

export const cssColour = (colour: Colour): string => ofPage[colour] ?? palette[colour];

/** Shapes of a drawing inside an SVG measured in millimetres whose y counts downwards; the origin is that of the group around. */
export function ShapeView({ shapes }: { shapes: readonly Shape[] }) {
  return shapes.map((shape) => <OneShape key={JSON.stringify(shape)} shape={shape} />);
}

function OneShape({ shape }: { shape: Shape }) {
  switch (shape.kind) {
    case "line":
      return <path d={`M${shape.x1} ${-shape.y1}L${shape.x2} ${-shape.y2}`} style={painted(shape)} />;
    case "polyline": {
      const steps = shape.points.map(({ x, y }) => `${x} ${-y}`).join("L");
      return <path d={`M${steps}${shape.closed ? "Z" : ""}`} style={painted(shape)} />;
    }
    case "circle":
      return <circle cx={shape.cx} cy={-shape.cy} r={shape.r} style={painted(shape)} />;
    case "arc":
      return <path d={arcData(shape)} style={painted(shape)} />;
    case "path":
      return <path d={shape.steps.map(stepData).join("")} style={painted(shape)} />;
    case "text":
      return (
        <text
          x={shape.x}
          y={-shape.y}
          fontSize={shape.sizeMm}
          fontWeight={shape.weight === "semibold" ? 600 : 400}
          textAnchor={shape.anchor}
          transform={shape.turnDeg === 0 ? undefined : `rotate(${-shape.turnDeg} ${shape.x} ${-shape.y})`}
          style={{ fill: cssColour(shape.colour) }}
        >
          {shape.text}
        </text>
      );
    case "group":
      return (
        <g transform={`translate(${shape.dx} ${-shape.dy})`}>
          <ShapeView shapes={shape.shapes} />
        </g>
      );
    default:
      return shape satisfies never;
  }
}

function painted({ stroke, fill }: { stroke?: Stroke; fill?: Colour }): CSSProperties {
  const inside = { fill: fill === undefined ? "none" : cssColour(fill) };
  if (!stroke) return inside;
  const line = { ...inside, stroke: cssColour(stroke.colour), strokeWidth: stroke.widthMm };
  return stroke.dashMm ? { ...line, strokeDasharray: stroke.dashMm.join(" ") } : line;
}

function arcData({ cx, cy, r, startDeg, endDeg }: Arc): string {
  const at = (deg: number) => {
    const angle = (deg * Math.PI) / 180;
    return `${cx + r * Math.cos(angle)} ${-cy - r * Math.sin(angle)}`;
  };
  return `M${at(startDeg)}A${r} ${r} 0 ${endDeg - startDeg > 180 ? 1 : 0} 0 ${at(endDeg)}`;
}

function stepData(step: PathStep): string {
  switch (step.to) {
    case "move":
      return `M${step.x} ${-step.y}`;
    case "line":
      return `L${step.x} ${-step.y}`;
    case "curve":
      return `C${step.x1} ${-step.y1} ${step.x2} ${-step.y2} ${step.x} ${-step.y}`;
    case "close":
      return "Z";
    default:
      return step satisfies never;
  }
}
