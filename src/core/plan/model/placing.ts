/** Where things stand on faces, and the holes they need, as read. Lengths in m. */

export const sides = ["port", "starboard"] as const;
export type Side = (typeof sides)[number];

/** So far along an edge of the face, so far square off it. */
export interface Place {
  readonly alongM: number;
  /** Reference point that `along` counts from. Undefined: the aft end of the edge, or the lower left corner of a flat face. */
  readonly from?: string;
  /** Line of the form that is the lower (`above`) or upper (`below`) edge of a strip. Undefined: the upper edge; on a flat face its lower left corner. */
  readonly edge?: { readonly off: "above" | "below"; readonly line: string };
  readonly offM: number;
}

/** Several alike, evenly between two ends. Written from a larger to a smaller length it counts backwards. */
export interface RowPlace {
  readonly fromM: number;
  readonly toM: number;
  readonly countedFrom?: string;
  readonly endMarginM: number;
  readonly edge?: NonNullable<Place["edge"]>;
  readonly offM: number;
  readonly leastApartM?: number;
}

/** Of one entry: each of its pieces has a place of its own, or they stand in a row. `pair`: half of them on each side. */
export interface Placing {
  readonly on: string;
  readonly side: Side;
  readonly pair: boolean;
  readonly places: readonly Place[];
  readonly row?: RowPlace;
}

export const holeTools = ["twist drill", "step drill", "hole saw"] as const;

/** What is cut for it, and what water finds there. */
export interface HolePlan {
  /** By the catalogue. Undefined: not known, so it can't be judged. */
  readonly sizeM?: number;
  /** Its body by the catalogue, and by the caliper. */
  readonly bodyM?: number;
  readonly measuredM: readonly number[];
  /** Diameter of what lies on the face. */
  readonly flangeM?: number;
  /** Depth it takes behind, thread, nut and bend of the cable included. */
  readonly behindM?: number;
  /** Largest thing that must go through it. */
  readonly passesM?: number;
  readonly water?: "open" | "sealed" | "drain";
  readonly seal?: "sealant" | "gasket";
  readonly tool?: (typeof holeTools)[number];
  readonly backed?: boolean;
}
