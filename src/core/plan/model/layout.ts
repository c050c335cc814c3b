import type { Money } from "../../quantity/money.js";
import type { WallMaterial } from "../../reference/boxes.js";
import type { Hazard } from "../../way/types.js";
import type { ConductorSize } from "./common.js";
import type { PlanPoint } from "./form.js";

/**
 * Layout, stock and prices as the owner writes them. Lengths in m, money in minor units with its currency. Nothing worked
 * out is stored.
 */

export const faceNames = ["down", "left", "right", "up", "near", "far"] as const;
export type FaceName = (typeof faceNames)[number];

/** Three measures of a thing [m]. */
export type SizeM = readonly [number, number, number];

/** A box as it is made: `inside: [170 mm, 120 mm, 75 mm]` across, up, from base to lid. */
export interface BoxForm {
  readonly insideM?: SizeM;
  readonly wallM?: number;
  readonly material?: WallMaterial;
  readonly mounted?: "wall" | "floor";
  /** Corner posts inside, along each side from the corner. */
  readonly bossM?: number;
  /** From the lid's seat down, where no hole may come. */
  readonly lidLipM?: number;
  /** Faces not to be drilled. */
  readonly closedFaces?: readonly FaceName[];
  readonly water?: WaterCode;
}

/** What an IP code says of water: its second numeral, and of a code for both (`IP66/IP67`) the one of jets besides that of immersion. */
export interface WaterCode {
  readonly numeral: number;
  readonly jetNumeral?: number;
}

/** A hole that is there already: `{on: down, at: [40 mm, 35 mm], hole: 12.5 mm}`. */
export interface BoxHole {
  readonly name: string;
  readonly on: FaceName;
  readonly atM: readonly [alongM: number, fromBaseM: number];
  readonly holeM: number;
}

/** Where an entry shall lie: `{on: down, at: [40 mm, 35 mm]}`; its hole follows from what goes through. */
export interface EntryPlace {
  readonly name: string;
  readonly on: FaceName;
  readonly atM: readonly [alongM: number, fromBaseM: number];
}

/** Something screwed to the base: `{size: [85 mm, 40 mm, 35 mm], room: 10 mm}`. */
export interface BoxContent {
  readonly name: string;
  readonly sizeM: SizeM;
  readonly roomM?: number;
  readonly upright: boolean;
  readonly count: number;
}

/** An entry that is no gland: a vent, a drain, a switch, a plug. */
export interface BoxFitting {
  readonly name: string;
  readonly holeM: number;
  readonly acrossM?: number;
  readonly on?: FaceName;
  readonly spanner: boolean;
}

/** What a box or panel says of its casing. Left out its inside: a box is chosen from the catalogue. */
export interface Enclosure extends BoxForm {
  /** Given: the box is drilled already, and its cables take these holes. */
  readonly holes?: readonly BoxHole[];
  /** Entries whose place the owner has chosen; the others find theirs. */
  readonly entries?: readonly EntryPlace[];
  /** Which box of the catalogue it is. Left out, with no inside given: the cheapest that does. */
  readonly catalogueBox?: string;
  readonly contents?: readonly BoxContent[];
  readonly fittings?: readonly BoxFitting[];
  readonly glands?: "metric" | "pg";
  readonly spareEntries?: number;
  /** From its seat to where it can be worked on. */
  readonly drawnOutM?: number;
  /** Opening it must pass, by the name of a waypoint. */
  readonly through?: string;
  /** Studs of its buses. */
  readonly studM?: number;
  /** Where its middle stands in the boat. */
  readonly standsAtM?: PlanPoint;
}

/** `box catalogue:` what the owner is willing to buy. */
export interface CatalogueBox extends BoxForm {
  readonly name: string;
  readonly insideM: SizeM;
  readonly price?: Money;
}

/** Where cables pass: `knee: {bend: 20 mm}`, `bulkhead 2: {opening: 20 mm, edge: grommet}`. */
export interface PlanWaypoint {
  readonly name: string;
  readonly atM?: SizeM;
  readonly opening?: PlanOpening;
  readonly edge?: "grommet" | "gland" | "rounded" | "bare";
  /** Radius the corner allows; `none`: cables run straight through. */
  readonly bendM?: number | "none";
}

/** `opening: 20 mm`, `{across: 130 mm, up: 85 mm}`, or with `ends: round` a slot. */
export type PlanOpening =
  | { readonly shape: "circle"; readonly diameterM: number }
  | { readonly shape: "rectangle"; readonly widthM: number; readonly heightM: number }
  | { readonly shape: "obround"; readonly lengthM: number; readonly widthM: number };

/** A stretch that cables lie along: `{from: helm, to: knee, length: 4 ft 2 in, near: {dry exhaust: 12 in}}`. */
export interface PlanLeg {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  /** Left out: straight between two ends whose places are known. */
  readonly lengthM?: number;
  /** In conduit, trunking or tray all along. */
  readonly enclosed: boolean;
  /** Supports as they are, or as the owner means to set them. */
  readonly supportsM?: number;
  readonly nearM: Readonly<Partial<Record<Hazard | "compass", number>>>;
}

/** Further keys of a run. */
export interface RunWay {
  /** Points it passes, in order; empty: the shortest way. Left out: it has no way, only a length. */
  readonly along?: readonly string[];
  readonly slackM?: { readonly start?: number; readonly end?: number };
  /** Over the cable, measured; and its thinner measure where it is flat. */
  readonly outsideM?: number;
  readonly flatM?: number;
  readonly twisted?: boolean;
}

/** A length of wire on hand: `{size: 16 AWG, cores: 2, length: 11 ft, kind: offcut, count: 2}`. */
export interface StockWire {
  readonly size: ConductorSize;
  readonly cores: number;
  readonly colour?: string;
  readonly lengthM: number;
  readonly kind: "offcut" | "spool";
  /** May be below zero as written: a finding says so. */
  readonly count: number;
  /** Just bought: its end is bright, and nothing is cut off it first. */
  readonly fresh?: boolean;
}

/** `parts: {M12 gland: 4}`. */
export interface StockPart {
  readonly item: string;
  readonly count: number;
}

/** Wire that was bought for the plan and is not among the stock yet: `{size: 16 AWG, cores: 2, length: 100 ft}`. */
export type BoughtWire = Pick<StockWire, "size" | "cores" | "colour" | "lengthM" | "count">;

/** Wire as it is sold: by the spool, or cut off by the step. */
export type WireOffer = {
  readonly size: ConductorSize;
  readonly cores: number;
  readonly colour?: string;
} & (
  | { readonly sold: "spool"; readonly lengthM: number; readonly price?: Money }
  | {
      readonly sold: "by length";
      readonly stepM: number;
      readonly price: Money;
      /** Longest unbroken length. */
      readonly maxM?: number;
    }
);

/** `{item: M12 gland, pack: bag of 5, count: 5, price: 6.40 EUR}`. */
export interface PartOffer {
  readonly item: string;
  readonly pack: string;
  readonly count: number;
  readonly price?: Money;
}

/** The sections about layout, stock and prices. */
export interface LayoutSections {
  readonly catalogue: readonly CatalogueBox[];
  readonly waypoints: readonly PlanWaypoint[];
  readonly legs: readonly PlanLeg[];
  readonly currency?: string;
  readonly stockWire: readonly StockWire[];
  readonly stockParts: readonly StockPart[];
  readonly boughtWire: readonly BoughtWire[];
  readonly boughtParts: readonly StockPart[];
  readonly wireOffers: readonly WireOffer[];
  readonly partOffers: readonly PartOffer[];
}
