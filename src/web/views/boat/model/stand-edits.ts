import { edgeLengthM, edgeOf } from "../../../../core/hull/faces/edge.js";
import type { LaidFace } from "../../../../core/hull/figures.js";
import type { Edit } from "../../../../core/plan/edits/edit.js";
import { keyText } from "../../../../core/plan/edits/value.js";
import type { Gear } from "../../../../core/plan/model/gear.js";
import { type Lengths, lengthText } from "./length-text.js";

/** Share of the edge from its ends to the first and the last of a row, and how far off the edge all stand to begin with. */
const marginShare = 0.15;
const offM = { millimetres: 0.08, inches: 3 * 0.0254 } as const;

/**
 * The edits that put gear on a face: one piece at the middle of its upper edge, several in a row along it, on both sides where
 * the face is a pair and they are even in number. From there they are moved.
 */
export function standOn(entry: Gear, face: LaidFace, shows: Lengths): Edit[] {
  const [side] = face.sides;
  if (!side) return [];
  const { shape, pair } = face.plan;
  const upper = shape.kind === "strip" ? ({ off: "below", line: shape.upper } as const) : undefined;
  const lengthM = edgeLengthM(side.face, edgeOf(side.face, upper ? "upper" : "edge 1"), 0, 1);
  const at = (share: number) => lengthText(lengthM * share, shows);
  const off = `${upper ? `below: ${keyText(upper.line)}, ` : ""}off: ${lengthText(offM[shows.lengths], shows)}`;
  const set = (field: string, to: string | boolean): Edit => ({
    edit: "set field",
    at: entry.name,
    field,
    to,
  });
  const both = pair && entry.count % 2 === 0;
  return [
    ...(entry.standsAtM === undefined
      ? []
      : [{ edit: "remove field", at: entry.name, field: "stands at" } as const]),
    set("on", face.name),
    entry.count === 1
      ? set("at", `{along: ${at(0.5)}, ${off}}`)
      : set("row", `{from: ${at(marginShare)}, to: ${at(1 - marginShare)}, ${off}}`),
    ...(both ? [set("pair", true)] : []),
  ];
}

/** The edits that take gear off its face; it is without a place then, and is given one in the boat. */
export function standFree(entry: Gear): Edit[] {
  const { placing } = entry;
  if (!placing) return [];
  const fields = [...(placing.pair ? ["pair"] : []), placing.row ? "row" : "at", "on"];
  return fields.map((field) => ({ edit: "remove field", at: entry.name, field }));
}
