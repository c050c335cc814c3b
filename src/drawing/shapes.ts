import type { Colour } from "./palette.js";

/** Plain shapes, all in millimetres, y upwards from the sheet's lower left corner. Angles in degrees, counter-clockwise from the x axis. */

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Stroke {
  readonly colour: Colour;
  readonly widthMm: number;
  /** Lengths of dash and gap in turn [mm]; left out: unbroken. */
  readonly dashMm?: readonly number[];
}

interface Painted {
  readonly stroke?: Stroke;
  readonly fill?: Colour;
}

export interface Line {
  readonly kind: "line";
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  readonly stroke: Stroke;
}

export interface Polyline extends Painted {
  readonly kind: "polyline";
  readonly points: readonly Point[];
  readonly closed: boolean;
}

export interface Circle extends Painted {
  readonly kind: "circle";
  readonly cx: number;
  readonly cy: number;
  readonly r: number;
}

/** Part of a circle, counter-clockwise from `startDeg` to `endDeg`. */
export interface Arc {
  readonly kind: "arc";
  readonly cx: number;
  readonly cy: number;
  readonly r: number;
  readonly startDeg: number;
  readonly endDeg: number;
  readonly stroke: Stroke;
}

export type PathStep =
  | { readonly to: "move"; readonly x: number; readonly y: number }
  | { readonly to: "line"; readonly x: number; readonly y: number }
  | {
      readonly to: "curve";
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly x: number;
      readonly y: number;
    }
  | { readonly to: "close" };

/** Straight stretches and cubic Bézier curves. Starts with a `move`. */
export interface Path extends Painted {
  readonly kind: "path";
  readonly steps: readonly PathStep[];
}

export type Weight = "regular" | "semibold";
export type Anchor = "start" | "middle" | "end";

/** What a line of text is to those who hear a page: the title of a part, a heading in it, or what stands at the foot of every page. */
export type Role = "title" | "heading" | "foot";

/** A table, by which its cells know each other from page to page. */
export interface TableMark {
  readonly columns: number;
}

/** Of which part of a page a line of text is, to those who hear it. Marks are told apart as objects: lines of one mark are one part. */
export type Part =
  | { readonly is: "paragraph"; readonly mark: object }
  | { readonly is: "item"; readonly list: object; readonly mark: object }
  | {
      readonly is: "cell";
      readonly table: TableMark;
      readonly row: object;
      readonly column: number;
      /** How many columns it spans; 1 where left out. */
      readonly across?: number;
      /** Heads its column, or its row. */
      readonly heads?: "Column" | "Row";
    }
  /** Was said before: the name of a group that goes on, the other half of a flag. */
  | { readonly is: "repeat" };

/** One line of text. The words are data: each writer makes them safe for its format. */
export interface Text {
  readonly kind: "text";
  /** Where the baseline starts, is halved, or ends, by `anchor`. */
  readonly x: number;
  readonly y: number;
  readonly text: string;
  /** Size of the type, em square [mm]; 1 pt = 0.3528 mm. */
  readonly sizeMm: number;
  readonly weight: Weight;
  readonly anchor: Anchor;
  readonly turnDeg: number;
  readonly colour: Colour;
  readonly role?: Role;
  readonly part?: Part;
}

/** Shapes moved together by (`dx`, `dy`). `label` says what they are to those who do not see them. */
export interface Group {
  readonly kind: "group";
  readonly dx: number;
  readonly dy: number;
  readonly label?: string;
  readonly shapes: readonly Shape[];
}

export type Shape = Line | Polyline | Circle | Arc | Path | Text | Group;

export interface Sheet {
  readonly title: string;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly shapes: readonly Shape[];
  /** What begins on it, for the outline of a document; left out: the sheet itself, by its title. */
  readonly begins?: readonly string[];
}
