import { palette } from "../palette.js";
import type { Arc, PathStep, Shape, Sheet, Stroke, Text } from "../shapes.js";

/**
 * A sheet as one SVG document at true scale. Words are escaped; what XML cannot hold and marks that turn text round are
 * replaced by U+FFFD.
 */
export function svgSheet(sheet: Sheet): string {
  const { widthMm, heightMm } = sheet;
  const size = `width="${num(widthMm)}mm" height="${num(heightMm)}mm" viewBox="0 0 ${num(widthMm)} ${num(heightMm)}"`;
  const body = sheet.shapes.map((shape) => svgShape(shape, heightMm)).join("\n");
  return `<svg xmlns="http://www.w3.org/2000/svg" ${size} role="img" font-family="'Source Sans 3', sans-serif" stroke-linejoin="round">
<title>${escapeXml(sheet.title)}</title>
${body}
</svg>
`;
}

/** One shape as SVG on a sheet of the given height [mm]. */
function svgShape(shape: Shape, heightMm: number): string {
  const up = (y: number) => num(heightMm - y);
  switch (shape.kind) {
    case "line":
      return `<line x1="${num(shape.x1)}" y1="${up(shape.y1)}" x2="${num(shape.x2)}" y2="${up(shape.y2)}"${paint(shape)}/>`;
    case "polyline": {
      const corners = shape.points.map(({ x, y }) => `${num(x)},${up(y)}`).join(" ");
      return `<${shape.closed ? "polygon" : "polyline"} points="${corners}"${paint(shape)}/>`;
    }
    case "circle":
      return `<circle cx="${num(shape.cx)}" cy="${up(shape.cy)}" r="${num(shape.r)}"${paint(shape)}/>`;
    case "arc":
      return `<path d="${arcData(shape, heightMm)}"${paint(shape)}/>`;
    case "path":
      return `<path d="${shape.steps.map((step) => stepData(step, heightMm)).join("")}"${paint(shape)}/>`;
    case "text":
      return svgText(shape, heightMm);
    case "group": {
      const label = shape.label === undefined ? "" : `<title>${escapeXml(shape.label)}</title>`;
      const inside = shape.shapes.map((inner) => svgShape(inner, heightMm)).join("");
      return `<g transform="translate(${num(shape.dx)} ${num(-shape.dy)})">${label}${inside}</g>`;
    }
    default:
      return shape satisfies never;
  }
}

function svgText(text: Text, heightMm: number): string {
  const [x, y] = [num(text.x), num(heightMm - text.y)];
  const weight = text.weight === "semibold" ? ' font-weight="600"' : "";
  const anchor = text.anchor === "start" ? "" : ` text-anchor="${text.anchor}"`;
  const turn = text.turnDeg === 0 ? "" : ` transform="rotate(${num(-text.turnDeg)} ${x} ${y})"`;
  const look = `font-size="${num(text.sizeMm)}" fill="${palette[text.colour]}"${weight}${anchor}${turn}`;
  return `<text x="${x}" y="${y}" ${look}>${escapeXml(text.text)}</text>`;
}

function arcData({ cx, cy, r, startDeg, endDeg }: Arc, heightMm: number): string {
  const at = (deg: number) => {
    const angle = (deg * Math.PI) / 180;
    return `${num(cx + r * Math.cos(angle))} ${num(heightMm - cy - r * Math.sin(angle))}`;
  };
  return `M${at(startDeg)}A${num(r)} ${num(r)} 0 ${endDeg - startDeg > 180 ? 1 : 0} 0 ${at(endDeg)}`;
}

function stepData(step: PathStep, heightMm: number): string {
  const at = (x: number, y: number) => `${num(x)} ${num(heightMm - y)}`;
  switch (step.to) {
    case "move":
      return `M${at(step.x, step.y)}`;
    case "line":
      return `L${at(step.x, step.y)}`;
    case "curve":
      return `C${at(step.x1, step.y1)} ${at(step.x2, step.y2)} ${at(step.x, step.y)}`;
    case "close":
      return "Z";
    default:
      return step satisfies never;
  }
}

function paint({ stroke, fill }: { stroke?: Stroke; fill?: keyof typeof palette }): string {
  const inside = ` fill="${fill === undefined ? "none" : palette[fill]}"`;
  if (stroke === undefined) return inside;
  const dash = stroke.dashMm === undefined ? "" : ` stroke-dasharray="${stroke.dashMm.map(num).join(" ")}"`;
  return `${inside} stroke="${palette[stroke.colour]}" stroke-width="${num(stroke.widthMm)}"${dash}`;
}

/** Three decimals of a millimetre, no trailing noughts. */
function num(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`a drawing needs finite numbers, got ${value}`);
  return String(Math.round(value * 1000) / 1000 + 0);
}

const notForXml = /[\p{Cc}\p{Cs}\p{Bidi_Control}\u{fffe}\u{ffff}]/gu;
const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

function escapeXml(words: string): string {
  return words
    .replace(/[\t\r\n]/g, " ")
    .replace(notForXml, "\u{fffd}")
    .replace(/[&<>"']/g, (sign) => entities[sign] ?? sign);
}
