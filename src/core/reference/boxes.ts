import { commonPractice, type Source } from "./source.js";

export const wallMaterials = [
  "abs",
  "polycarbonate",
  "acrylic",
  "glass-filled polyester",
  "polyethylene",
  "cast aluminium",
  "sheet aluminium",
  "stainless steel",
  "plywood",
] as const;
export type WallMaterial = (typeof wallMaterials)[number];

export interface WallRule {
  readonly material: WallMaterial;
  /** Least web between two holes, as a share of the larger one. */
  readonly webPerHole: number;
  /** Least web in wall thicknesses; the larger of the two counts. */
  readonly webPerWall: number;
  /** Cracks from a hole outwards rather than yields. */
  readonly brittle: boolean;
}

/** Webs between clearance holes in box walls, where nothing but the wall carries them. */
export const wallRules = {
  source: {
    title: "common practice, no source",
    place:
      "polyethylene: one hole diameter; rivet rules in aluminium (3 d between centres) are stricter than holes need",
    status: "practice",
  },
  rows: [
    { material: "abs", webPerHole: 0.4, webPerWall: 2, brittle: false },
    { material: "polycarbonate", webPerHole: 0.4, webPerWall: 2, brittle: false },
    { material: "acrylic", webPerHole: 0.75, webPerWall: 3, brittle: true },
    { material: "glass-filled polyester", webPerHole: 0.5, webPerWall: 2, brittle: true },
    { material: "polyethylene", webPerHole: 1, webPerWall: 2, brittle: false },
    { material: "cast aluminium", webPerHole: 0.35, webPerWall: 2, brittle: true },
    { material: "sheet aluminium", webPerHole: 0.35, webPerWall: 2, brittle: false },
    { material: "stainless steel", webPerHole: 0.3, webPerWall: 2, brittle: false },
    { material: "plywood", webPerHole: 0.75, webPerWall: 2, brittle: true },
  ],
} as const satisfies { source: Source; rows: readonly WallRule[] };

/** Room around an entry. The centre distance of two glands is the larger across-corners and this much more. */
export const entryRoom = {
  source: commonPractice,
  minSpannerRoomMm: 3,
  usualSpannerRoomMm: 4,
  maxSpannerRoomMm: 5,
  /** From a lid's seal or lip to the hole's edge. */
  sealMm: 5,
} as const;

/** Smallest inner radius of a bend over the cable's diameter. */
export const bendRadius = {
  source: {
    title: "NFPA 70, 336.24",
    place: "multi-core tray cable up to 25 mm; recalled",
    status: "memory",
  },
  smallCableMm: 25,
  perSmallCable: 4,
  perLargeCable: 5,
} as const;

/** Working room inside a box. */
export const insideRoom = {
  source: commonPractice,
  /** Around each thing on its floor, so that a screwdriver or a finger gets in. */
  workingMm: 10,
  /** Between the highest thing and the lid. */
  underLidMm: 10,
} as const;

/** Sizes of drill and what makes them: a twist drill, then steps, then a saw. */
export const drillSizes = {
  source: commonPractice,
  pilotMm: 3.5,
  maxTwistMm: 10,
  maxStepMm: 30,
} as const;

/** Flange of a vent, plug or switch where the plan does not tell it. */
export const usualFitting = { source: commonPractice, acrossPerHole: 1.3 } as const;
