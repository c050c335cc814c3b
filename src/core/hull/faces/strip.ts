import type { Form } from "../form/form.js";
import { lineAt, reaches } from "../form/line.js";
import { drawSection } from "../form/section.js";
import type { Point } from "../vector.js";
import type { CurvedFace } from "./face.js";
import { patchThrough } from "./patch.js";

/** A strip of the port side of the hull, from one line of the form up to another, between two stations [m]. */
export interface Strip {
  readonly lower: string;
  readonly upper: string;
  readonly fromM: number;
  readonly toM: number;
}

/**
 * The face of a strip: ruled where the hull is flat between two neighbouring lines, else through the round sections.
 * u is the station, v the share of the way up.
 * @throws RangeError if a line is not in the form or does not reach both stations, if the lines are in the wrong order,
 *   if the stations are, or if a knuckle lies inside the strip: then it is two faces.
 */
export function stripFace(form: Form, strip: Strip, stations = 25): CurvedFace {
  const names = form.lines.map((line) => line.name);
  const [low, high] = [names.indexOf(strip.lower), names.indexOf(strip.upper)];
  if (low < 0 || high < 0)
    throw new RangeError(`lines must be among ${names.join(", ")}, got ${strip.lower} and ${strip.upper}`);
  if (!(low < high)) throw new RangeError(`${strip.lower} must lie below ${strip.upper}`);
  if (!(strip.toM > strip.fromM))
    throw new RangeError(`a strip must run forward, got ${strip.fromM} to ${strip.toM} m`);
  const within = form.lines.slice(low, high + 1);
  for (const line of within)
    for (const x of [strip.fromM, strip.toM])
      if (!reaches(line, x))
        throw new RangeError(
          `${line.name} runs from ${line.fromM} to ${line.toM} m, it does not reach ${x} m`,
        );
  const corner = within.slice(1, -1).find((line, i) => line.knuckle || form.spans[low + i] === "flat");
  if (corner) throw new RangeError(`${corner.name} is a corner inside the strip: make it two faces`);
  const us = Array.from(
    { length: stations },
    (_, i) => strip.fromM + ((strip.toM - strip.fromM) * i) / (stations - 1),
  );
  if (high === low + 1 && form.spans[low] === "flat") {
    const rows = within.map((line) => us.map((x) => lineAt(line, x)));
    return { kind: "curved", patch: patchThrough(us, [0, 1], rows) };
  }
  const pieces = Math.ceil(8 / (high - low));
  const columns = us.map((x) => roundColumn(form, low, high, x, pieces));
  const count = columns[0]?.length ?? 0;
  const vs = Array.from({ length: count }, (_, j) => j / (count - 1));
  return {
    kind: "curved",
    patch: patchThrough(
      us,
      vs,
      vs.map((_, j) => columns.map((column) => column[j] ?? [0, 0, 0])),
    ),
  };
}

/** Points up the section between two lines, cut from the whole round run they belong to, so that neighbours meet smoothly. */
function roundColumn(form: Form, low: number, high: number, xM: number, pieces: number): Point[] {
  let [first, last] = [low, high];
  while (
    first > 0 &&
    form.spans[first - 1] === "round" &&
    !form.lines[first]?.knuckle &&
    reachesAt(form, first - 1, xM)
  )
    first--;
  while (
    last + 1 < form.lines.length &&
    form.spans[last] === "round" &&
    !form.lines[last]?.knuckle &&
    reachesAt(form, last + 1, xM)
  )
    last++;
  const corners = form.lines.slice(first, last + 1).map((line, k) => {
    const [, y, z] = lineAt(line, xM);
    return { y, z, knuckle: k > 0 && first + k === last ? true : line.knuckle, round: first + k < last };
  });
  const drawn = drawSection(corners, pieces);
  return drawn.slice((low - first) * pieces, (high - first) * pieces + 1).map(([y, z]): Point => [xM, y, z]);
}

function reachesAt(form: Form, index: number, xM: number): boolean {
  const line = form.lines[index];
  return line !== undefined && reaches(line, xM);
}
