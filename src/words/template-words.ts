import type { FaceName } from "../core/box/face.js";

/** Faces as one says them at the bench, seen from outside. */
export const faceWords: Readonly<Record<FaceName, string>> = {
  down: "underside",
  left: "left side",
  right: "right side",
  up: "top side",
  near: "near side",
  far: "far side",
};

/** A hole as it stands beside it, in any language. */
export const holeSize = (holeMm: number): string => `Ø ${holeMm} mm`;

export const templateWords = {
  title: (box: string, face: FaceName): string => `${box}: ${faceWords[face]}, seen from outside`,
  tile: (row: number, column: number, rows: number, columns: number): string =>
    `part ${row}.${column} of ${rows} × ${columns}`,
  lid: "lid",
  base: "base",
  bar: (lengthMm: number): string => `${lengthMm} mm: measure before drilling`,
  square: (sideMm: number): string => `${sideMm} mm square`,
  more: (count: number): string => `and ${count} more, on the sheet of the box`,
  scale:
    "Print at 100 %, no fitting to the page. If bar or square measure wrong, do not drill by this sheet.",
};
