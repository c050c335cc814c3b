import type { NetworkNumbers } from "../../src/core/circuit/solve/types.js";
import { NetworkBuilder } from "./network-builder.js";

/** Reproducible numbers from 0 up to 1 (mulberry32). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

export interface GeneratedShape {
  /** Pieces of gear. */
  readonly gear: number;
  /** Cross connections, returns in common and a second battery in parallel. */
  readonly meshed: boolean;
  /** Converters, with a network of their own behind each. */
  readonly converters: number;
  /** Watts (or as many at other laws) all gear together; default 60. */
  readonly totalW?: number;
}

/** A made-up boat network: battery, main leads, panel, runs that branch, gear of all laws, and meshes and converters if asked. */
export function generatedNetwork(seed: number, shape: GeneratedShape): NetworkNumbers {
  const random = seeded(seed);
  const between = (low: number, high: number): number => low + (high - low) * random();
  const builder = new NetworkBuilder();
  const nominalV = random() < 0.5 ? 12 : 24;
  const minus = builder.node();
  const plus = builder.node();
  builder.source(plus, minus, nominalV * between(1, 1.15), between(0.005, 0.02));
  if (shape.meshed) {
    const secondPlus = builder.along(plus, between(0.001, 0.01));
    const secondMinus = builder.along(minus, between(0.001, 0.01));
    builder.source(secondPlus, secondMinus, nominalV * between(1.05, 1.15), between(0.005, 0.02));
  }
  const eachW = (shape.totalW ?? 60) / shape.gear;
  const perConverter = shape.converters > 0 ? Math.floor(shape.gear / (2 * shape.converters)) : 0;
  const main = growPairs(
    builder,
    random,
    plus,
    minus,
    nominalV,
    shape.gear - perConverter * shape.converters,
    eachW,
    shape.meshed,
  );
  for (let k = 0; k < shape.converters; k++) {
    const [inPlus, inMinus] = main[Math.floor(random() * main.length)] ?? [plus, minus];
    const outPlus = builder.node();
    const outMinus = random() < 0.5 ? inMinus : builder.node();
    const outputV = random() < 0.5 ? 5 : 12;
    const efficiency = between(0.8, 0.95);
    builder.converter({ inPlus, inMinus, outPlus, outMinus, outputV, efficiency, standbyW: between(0, 0.3) });
    growPairs(builder, random, outPlus, outMinus, outputV, perConverter, eachW / 4, shape.meshed);
  }
  return builder.build();
}

/** Pairs of legs that branch out from a pair of posts, with gear across them. Long chains get short legs, so that the far end still works. */
function growPairs(
  builder: NetworkBuilder,
  random: () => number,
  plus: number,
  minus: number,
  nominalV: number,
  gear: number,
  eachW: number,
  meshed: boolean,
): [number, number][] {
  const between = (low: number, high: number): number => low + (high - low) * random();
  const fused = builder.along(plus, between(0.0005, 0.003));
  const pairs: [number, number][] = [[fused, builder.along(minus, between(0.0005, 0.003))]];
  const parentOf = [0];
  const chainy = random();
  const legOhm = (): number => between(0.1, 1) * (chainy > 0.5 ? 1 / (gear + 20) : 0.03);
  for (let i = 0; i < gear; i++) {
    const reach = random() < chainy ? 1 + Math.floor(random() * 3) : pairs.length;
    const parent = Math.max(0, pairs.length - reach) + Math.floor(random() * Math.min(reach, pairs.length));
    const [nearPlus, nearMinus] = pairs[parent] ?? [plus, minus];
    const farPlus = builder.along(nearPlus, legOhm());
    const commonReturn = meshed && random() < 0.2;
    const farMinus = commonReturn ? nearMinus : builder.along(nearMinus, legOhm());
    pairs.push([farPlus, farMinus]);
    parentOf.push(parent);
    addGear(builder, random, farPlus, farMinus, nominalV, eachW * between(0.2, 1.8));
    if (!meshed || random() > 0.15) continue;
    // Cross connections stay near, as they do on a boat: some steps up, to where this one comes from.
    let other = parent;
    for (let up = Math.floor(random() * 5); up >= 0; up--) other = parentOf[other] ?? 0;
    const [otherPlus, otherMinus] = pairs[other] ?? [plus, minus];
    builder.branch(farPlus, otherPlus, legOhm());
    if (random() < 0.5 && otherMinus !== farMinus) builder.branch(farMinus, otherMinus, legOhm());
  }
  return pairs;
}

/** Gear of any law, now and then switched off, half of it with a least voltage. */
function addGear(
  builder: NetworkBuilder,
  random: () => number,
  plus: number,
  minus: number,
  nominalV: number,
  watts: number,
): void {
  const minV = random() < 0.5 ? nominalV * (0.7 + 0.2 * random()) : 0;
  const lot = random();
  if (lot < 0.5) builder.load(plus, minus, "power", watts, minV);
  else if (lot < 0.65) builder.load(plus, minus, "current", watts / nominalV, minV);
  else if (lot < 0.9) builder.load(plus, minus, "resistance", (nominalV * nominalV) / watts, minV);
  else if (lot < 0.95) builder.load(plus, minus, "power", 0);
  else builder.load(plus, minus, "resistance", Infinity);
}
