import { expect, test } from "vitest";
import { solveNetwork } from "../../src/core/circuit/solve/solve.js";
import type { NetworkNumbers } from "../../src/core/circuit/solve/types.js";
import { type GeneratedShape, generatedNetwork, seeded } from "../laws/generated-network.js";
import { spiceDeck } from "./ngspice-deck.js";
import { runNgspice } from "./ngspice-run.js";

// Source: ngspice, a general circuit simulator (University of California, Berkeley, and the ngspice team; Debian package
// `ngspice`), run here and now. Status: computed by it.
// Tolerance: 1e-6 of the greatest EMF, as the project promises; ngspice itself is told to stop at 1e-9.
const tolerance = 1e-6;
const perRun = 24;

/** 216 networks, from 3 to 2,000 nodes; sizes evenly spread on a logarithmic scale, a few of the largest. */
const cases = Array.from({ length: 216 }, (_, seed): { seed: number; shape: GeneratedShape } => {
  const random = seeded(seed + 1000);
  const gear = seed % 54 === 53 ? 1080 : Math.max(1, Math.round(1.5 ** (12 * random())));
  // The four largest go without converters: ngspice itself would need up to 25 s for each of those with.
  const withConverters = seed % 3 === 2 && gear > 6 && seed % 54 !== 53;
  const converters = withConverters ? 1 + Math.floor(random() * 3) : 0;
  return { seed, shape: { gear, meshed: seed % 2 === 1, converters, totalW: 20 + 60 * random() } };
});

const batches = Array.from({ length: Math.ceil(cases.length / perRun) }, (_, i) =>
  cases.slice(i * perRun, (i + 1) * perRun),
);

test("the networks are of every kind and size", () => {
  const networks = cases.map(({ seed, shape }) => generatedNetwork(seed, shape));
  const sizes = networks.map(({ nodeCount }) => nodeCount);
  expect(networks.length).toBeGreaterThanOrEqual(200);
  expect(Math.min(...sizes)).toBeLessThanOrEqual(6);
  expect(Math.max(...sizes)).toBeGreaterThan(1800);
  expect(Math.max(...sizes)).toBeLessThan(2100);
  expect(networks.filter(({ converters }) => converters.outputV.length > 0).length).toBeGreaterThan(40);
  const methods = networks.map((network) => solveNetwork(network).method);
  expect(methods.filter((method) => method === "radial").length).toBeGreaterThan(60);
  expect(methods.filter((method) => method === "sparse").length).toBeGreaterThan(60);
});

test.each(batches.map((batch) => ({ from: batch[0]?.seed, batch })))(
  "same voltages at every node, networks from $from on",
  ({ batch }) => {
    const networks = batch.map(({ seed, shape }) => generatedNetwork(seed, shape));
    const witnesses = runNgspice(networks.map((network) => spiceDeck(network, referencesOf(network))));
    networks.forEach((network, i) => {
      const references = referencesOf(network);
      const witness = witnesses[i];
      const { status, nodeV } = solveNetwork(network);
      expect(status).toBe("solved");
      const supplyV = Math.max(...network.sources.emfV);
      let worst = 0;
      for (let node = 0; node < network.nodeCount; node++) {
        const witnessV = references.has(node) ? 0 : witness?.get(`n${node}`);
        if (witnessV === undefined) throw new Error(`ngspice names no node n${node}`);
        worst = Math.max(worst, Math.abs(Number(nodeV[node]) - witnessV) / supplyV);
      }
      expect(worst, `seed ${batch[i]?.seed}`).toBeLessThan(tolerance);
    });
  },
);

/** The first source's minus, and the output minus of every converter that is apart from its input. */
function referencesOf({ sources, converters }: NetworkNumbers): Set<number> {
  const references = new Set([Number(sources.minus[0])]);
  converters.outMinus.forEach((outMinus, i) => {
    if (outMinus !== converters.inMinus[i]) references.add(outMinus);
  });
  return references;
}
