import type { ConductorSize, Surroundings } from "./common.js";

/**
 * Layout, stock and prices as the owner writes them: proposed sections of the plan, not yet part of `Plan`. Lengths in m,
 * money in minor units with its currency, as everywhere in the model. Nothing worked out is stored.
 */

/** `inside: [170 mm, 120 mm, 75 mm]` across, up, from base to lid; `wall: 3 mm`, `of: abs`, `on: wall`. */
export interface BoxForm {
  readonly insideM?: readonly [acrossM: number, upM: number, deepM: number];
  readonly wallM?: number;
  readonly material?: string;
  readonly mounted?: "wall" | "floor";
  readonly bossM?: number;
  readonly lidLipM?: number;
  /** Faces not to be drilled, by name. */
  readonly closedFaces: readonly string[];
  /** From its seat to where it is out of the boat and can be worked on. */
  readonly drawnOutM?: number;
  /** Opening it must pass, by the name of a waypoint. */
  readonly through?: string;
  /** Water numeral of its IP code. */
  readonly waterNumeral?: number;
}

/** A hole that is there already: `{on: down, at: [40 mm, 35 mm], hole: 12.5 mm}`. */
export interface BoxHole {
  readonly name: string;
  readonly on: string;
  readonly atM: readonly [alongM: number, fromBaseM: number];
  readonly holeM: number;
}

/** Something screwed to the base: `{name: fuse block, size: [85 mm, 40 mm, 35 mm], room: 10 mm}`. */
export interface BoxContent {
  readonly name: string;
  readonly sizeM: readonly [acrossM: number, upM: number, tallM: number];
  readonly roomM?: number;
  readonly upright: boolean;
}

/** Further keys of a box (and of a panel) in the plan. `form` left out: chosen from the catalogue. */
export interface BoxLayoutWish {
  readonly form?: BoxForm;
  readonly holes: readonly BoxHole[];
  readonly contents: readonly BoxContent[];
  readonly glands?: "metric" | "pg";
}

/** `box catalogue:` what the owner is willing to buy; names are the owner's own. */
export interface CatalogueEntry {
  readonly name: string;
  readonly form: BoxForm;
  readonly price?: Price;
}

/** Where cables pass: `waypoints: {knee: {bend: 20 mm}, bulkhead 2: {opening: 20 mm, edge: grommet}}`. */
export interface PlanWaypoint {
  readonly name: string;
  readonly atM?: readonly [number, number, number];
  readonly opening?: PlanOpening;
  readonly edge?: "grommet" | "gland" | "rounded" | "bare";
  readonly bendM?: number;
}

/** `opening: 20 mm`, or `{across: 130 mm, up: 85 mm}`, or `{length: 200 mm, width: 90 mm, ends: round}`. */
export type PlanOpening =
  | { readonly shape: "circle"; readonly diameterM: number }
  | { readonly shape: "rectangle"; readonly widthM: number; readonly heightM: number }
  | { readonly shape: "obround"; readonly lengthM: number; readonly widthM: number };

/** `legs: [{from: helm, to: knee, length: 4 ft 2 in, near: {dry exhaust: 12 in}}]`. */
export interface PlanLeg {
  readonly from: string;
  readonly to: string;
  readonly lengthM?: number;
  readonly enclosed: boolean;
  readonly surroundings?: Surroundings;
  readonly nearM: Readonly<Record<string, number>>;
}

/** Further keys of a run: `along: [gunwale, knee]`, `slack: {start: 6 in, end: 12 in}`. The way's length replaces `length`. */
export interface RunWay {
  readonly along: readonly string[];
  readonly slackM: { readonly start?: number; readonly end?: number };
}

/** `12.50 EUR`, kept in minor units. */
export interface Price {
  readonly currency: string;
  readonly minor: number;
}

/** Spools and offcuts on hand: `stock: {wire: [{size: 16 AWG, cores: 2, length: 11 ft, kind: offcut, count: 2}]}`. */
export interface StockWireLength {
  readonly size: ConductorSize;
  readonly cores: number;
  readonly lengthM: number;
  readonly kind: "offcut" | "spool";
  readonly count: number;
}

/** `stock: {parts: [{M12 gland: 4}]}`. */
export interface StockPart {
  readonly item: string;
  readonly count: number;
}

/** `prices: {wire: [{size: 16 AWG, cores: 2, spool: 30 m, price: 42 EUR}, {size: 14 AWG, cores: 2, per: 1 m, price: 1.90 EUR}]}`. */
export type WireOffer =
  | {
      readonly sold: "spool";
      readonly size: ConductorSize;
      readonly cores: number;
      readonly lengthM: number;
      readonly price?: Price;
    }
  | {
      readonly sold: "by length";
      readonly size: ConductorSize;
      readonly cores: number;
      readonly stepM: number;
      readonly price: Price;
      readonly maxM?: number;
    };

/** `prices: {parts: [{item: M12 gland, pack: bag of 5, count: 5, price: 6.40 EUR}]}`. */
export interface PartOffer {
  readonly item: string;
  readonly pack: string;
  readonly count: number;
  readonly price?: Price;
}

/** The proposed sections together. */
export interface LayoutPlan {
  readonly boxes: ReadonlyMap<string, BoxLayoutWish>;
  readonly catalogue: readonly CatalogueEntry[];
  readonly waypoints: readonly PlanWaypoint[];
  readonly legs: readonly PlanLeg[];
  readonly ways: ReadonlyMap<string, RunWay>;
  readonly currency?: string;
  readonly stockWire: readonly StockWireLength[];
  readonly stockParts: readonly StockPart[];
  readonly wireOffers: readonly WireOffer[];
  readonly partOffers: readonly PartOffer[];
}
