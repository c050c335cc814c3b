import type { CornerFigures } from "../../circuit/results.js";
import type { OutingFigures } from "../../energy/types.js";
import type { CompleteBattery, CompleteGear, CompletePlan } from "../../plan/completed.js";
import type { Protection } from "../../plan/model/common.js";
import { gearRoleFacts } from "../../reference/gear-roles.js";
import { chargeRows, spares } from "../../reference/spares.js";
import type { ProvingInput } from "../input.js";
import { guardsOf } from "../sheet/places.js";
import { type BatteryLeft, batteryLeft, modelOf } from "./battery-left.js";

export interface CardInput extends ProvingInput {
  readonly corners: readonly CornerFigures[];
  readonly outings: readonly OutingFigures[];
}

/** A switch and what hangs on it. */
export interface CardWay {
  readonly circuit: string;
  readonly switched: boolean;
  /** Worked without a hand: it stays live with the master off. */
  readonly alwaysLive: boolean;
  readonly fuses: readonly {
    readonly id: string;
    readonly ratingA: number;
    readonly device: Protection["device"];
  }[];
  /** Gear as written, with its number. */
  readonly feeds: readonly { readonly group: string; readonly count: number }[];
}

/** A use of a battery that goes on from here: as on the average of an outing, or navigation lights alone. */
export interface CardUse {
  readonly kind: "outing" | "navigation lights";
  readonly outing?: string;
  readonly useA: number;
}

/** Hours by voltage at rest. */
export interface CardRow {
  readonly restingV: number;
  readonly left: readonly BatteryLeft[];
}

export interface CardBattery {
  readonly battery: string;
  readonly reserveShare: number;
  readonly uses: readonly CardUse[];
  readonly rows: readonly CardRow[];
  /** What to turn off first: heaviest first, safety left on. Hours gained at half charge above the reserve, everything else on. */
  readonly turnOff: readonly {
    readonly group: string;
    readonly circuit: string;
    readonly currentA: number;
    readonly gainedH: number;
  }[];
}

/** What mends a lead afloat. */
export type SpareThing = (typeof spares.always)[number];

export interface WaterCard {
  readonly ways: readonly CardWay[];
  readonly batteries: readonly CardBattery[];
  readonly spareFuses: readonly {
    readonly device: Protection["device"];
    readonly ratingA: number;
    readonly inUse: number;
    readonly carry: number;
  }[];
  readonly spareThings: readonly SpareThing[];
}

/** The card that goes on the water: which switch, how long, what to turn off, which fuse, what to carry. */
export function waterCard(input: CardInput): WaterCard {
  const { plan, protection } = input;
  const ratings = new Map<string, { device: Protection["device"]; ratingA: number; inUse: number }>();
  for (const { device, ratingA, spare } of protection) {
    if (device === "breaker" || spare) continue;
    const key = `${device} ${ratingA}`;
    const known = ratings.get(key);
    ratings.set(key, { device, ratingA, inUse: (known?.inUse ?? 0) + 1 });
  }
  return {
    ways: cardWays(input),
    batteries: plan.batteries.flatMap((battery) => cardBattery(input, battery)),
    spareFuses: [...ratings.values()]
      .sort((a, b) => a.device.localeCompare(b.device, "en") || a.ratingA - b.ratingA)
      .map((one) => ({ ...one, carry: spares.fusesOfEachRating })),
    spareThings: spares.always,
  };
}

function cardWays(input: CardInput): CardWay[] {
  const { plan } = input;
  const circuits = [
    ...plan.panels.flatMap(({ name, ways }) =>
      ways.map((way) => ({ circuit: `${name} / ${way.name}`, way })),
    ),
    ...[...plan.circuits.keys()]
      .filter((id) => id.endsWith(" / feed"))
      .map((circuit) => ({ circuit, way: undefined })),
  ];
  return circuits.flatMap(({ circuit, way }): CardWay[] => {
    const gear = plan.gear.filter(({ name }) => plan.circuitOf.get(name) === circuit);
    if (gear.length === 0) return [];
    return [
      {
        circuit,
        switched: way !== undefined && way.switch !== "none",
        alwaysLive: way?.alwaysLive ?? false,
        fuses: [
          ...new Map(gear.flatMap(({ name }) => guardsOf(input, name)).map((one) => [one.id, one])).values(),
        ].map(({ id, ratingA, device }) => ({ id, ratingA, device })),
        feeds: grouped(gear).map(({ group, pieces }) => ({ group, count: pieces.length })),
      },
    ];
  });
}

function cardBattery({ plan, corners, outings }: CardInput, battery: CompleteBattery): CardBattery[] {
  const own = plan.gear.filter(({ name }) => batteryOf(plan, name) === battery.name);
  if (own.length === 0) return [];
  const nominal = corners.find(({ name }) => name === "nominal");
  const drawA = new Map(
    nominal?.gear.map(({ id, on, currentA, inTurn }) => [
      id,
      on || inTurn ? currentA * atBattery(plan, battery, id) : 0,
    ]),
  );
  const sumA = (gear: readonly CompleteGear[]) =>
    gear.reduce((sum, { name }) => sum + (drawA.get(name) ?? 0), 0);
  const lightsA = sumA(own.filter(({ role }) => role === "navigation light"));
  const uses: CardUse[] = [
    ...outings.flatMap((outing): CardUse[] => {
      const trace = outing.batteries.find((one) => one.battery === battery.name);
      return trace && outing.lastsH > 0
        ? [{ kind: "outing", outing: outing.name, useA: trace.usedAh / outing.lastsH }]
        : [];
    }),
    ...(lightsA > 0 ? [{ kind: "navigation lights", useA: lightsA } as const] : []),
  ];
  const model = modelOf(battery, plan);
  const shares = [
    ...chargeRows.shares.filter((charge) => charge > battery.reserveShare),
    battery.reserveShare,
  ];
  const rows = shares.map((charge): CardRow => {
    const restingV = model.emfV(charge);
    return {
      restingV,
      left: uses.map(({ useA }) => batteryLeft(plan, battery, { voltageV: restingV, currentA: 0, useA })),
    };
  });
  const others = own.filter(({ role }) => !gearRoleFacts.rows[role].takesHome);
  const allA = sumA(own);
  const halfV = model.emfV((1 + battery.reserveShare) / 2);
  const hoursAt = (useA: number) =>
    batteryLeft(plan, battery, { voltageV: halfV, currentA: 0, useA }).hoursToReserve;
  const turnOff = grouped(others)
    .map(({ group, pieces }) => {
      const currentA = sumA(pieces);
      const circuit = plan.circuitOf.get(pieces[0]?.name ?? "") ?? "";
      return { group, circuit, currentA, gainedH: hoursAt(Math.max(0, allA - currentA)) - hoursAt(allA) };
    })
    // what gains less than a minute is not worth the hand
    .filter(({ currentA, gainedH }) => currentA > 0 && gainedH * 60 >= 1)
    .sort((a, b) => b.currentA - a.currentA);
  return [{ battery: battery.name, reserveShare: battery.reserveShare, uses, rows, turnOff }];
}

/** Current at the battery for one ampere of this gear, which may live behind a converter of another voltage. */
function atBattery(plan: CompletePlan, battery: CompleteBattery, gear: string): number {
  const circuit = plan.circuits.get(plan.circuitOf.get(gear) ?? "");
  const converter = plan.converters.find(({ name }) => name === circuit?.supply);
  return converter ? converter.outputV / battery.nominalV / converter.efficiency : 1;
}

const batteryOf = (plan: CompletePlan, gear: string) =>
  plan.circuits.get(plan.circuitOf.get(gear) ?? "")?.battery;

/** Gear as it was written, its single pieces together. */
function grouped(
  gear: readonly CompleteGear[],
): { readonly group: string; readonly pieces: readonly CompleteGear[] }[] {
  const groups = new Map<string, CompleteGear[]>();
  for (const piece of gear) groups.set(piece.group, [...(groups.get(piece.group) ?? []), piece]);
  return [...groups].map(([group, pieces]) => ({ group, pieces }));
}
