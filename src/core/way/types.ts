/** What a cable passes at a waypoint. */
export interface Waypoint {
  readonly id: string;
  /** In the boat [m], where known; any frame, as long as it is one. */
  readonly at?: readonly [number, number, number];
  /** A hole the cable goes through, and its edge. */
  readonly opening?: {
    readonly diameterM?: number;
    readonly edge: "grommet" | "gland" | "rounded" | "bare";
  };
  /** Radius the corner allows at this point [m]. */
  readonly bendRadiusM?: number;
}

/** A stretch between two waypoints or places, passable both ways. */
export interface Leg {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  /** Along hull, panel or conduit [m]; left out, the straight distance where both ends have a position. */
  readonly lengthM?: number;
  /** In conduit, trunking or tray all along: it needs no supports of its own. */
  readonly enclosed?: boolean;
  /** Nearest approach to what harms it, or what it harms [m]. */
  readonly nearestM?: Readonly<Partial<Record<Hazard, number>>>;
}

export const hazards = ["wet exhaust", "dry exhaust", "hot surface", "fuel part"] as const;
export type Hazard = (typeof hazards)[number];

export interface RouteGraph {
  readonly waypoints: readonly Waypoint[];
  readonly legs: readonly Leg[];
}

export interface Route {
  /** Places and waypoints in order, both ends with them. */
  readonly points: readonly string[];
  readonly legs: readonly string[];
  readonly lengthM: number;
  /** Legs walked more than once: a prescribed way that doubles back. */
  readonly twice: readonly string[];
}

export type RouteProblem =
  | { readonly problem: "unknown-waypoint"; readonly waypoint: string; readonly nearest?: string }
  | {
      readonly problem: "no-way";
      readonly from: string;
      readonly to: string;
      readonly reaches: readonly string[];
    }
  | { readonly problem: "leg-without-length"; readonly leg: string; readonly without: readonly string[] };

export type RouteAnswer =
  | { readonly ok: true; readonly route: Route }
  | { readonly ok: false; readonly problem: RouteProblem };
