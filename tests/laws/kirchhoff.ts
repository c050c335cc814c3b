import { loadLaw, type NetworkNumbers, type Solution } from "../../src/core/circuit/solve/types.js";

/** A law and where, and by how much, a solution breaks it. */
export interface BrokenLaw {
  readonly law: "current" | "ohm" | "source" | "load" | "converter" | "energy";
  readonly at: number;
  readonly error: number;
}

/**
 * Every law that any solution must obey, whatever the network: Kirchhoff's current law at each node, Ohm's law on each branch,
 * the law of each source, load and converter, and energy. Kirchhoff's voltage law holds by itself, since all voltages are
 * taken from node voltages. Currents are held against the greatest current that flows (at least 10 mA), voltages
 * against the greatest EMF, powers against the product of both.
 * @returns what is broken by more than `tolerance`; nothing where all is well.
 */
export function brokenLaws(network: NetworkNumbers, solution: Solution, tolerance = 1e-9): BrokenLaw[] {
  const { branches, sources, loads, converters } = network;
  const { nodeV } = solution;
  const broken: BrokenLaw[] = [];
  const hold = (law: BrokenLaw["law"], at: number, error: number): void => {
    if (!(Math.abs(error) <= tolerance)) broken.push({ law, at, error });
  };
  const across = (plus: Int32Array, minus: Int32Array, i: number): number =>
    Number(nodeV[Number(plus[i])]) - Number(nodeV[Number(minus[i])]);
  const supplyV = Math.max(1e-3, ...sources.emfV, ...converters.outputV);
  const mostA = [solution.branchA, solution.sourceA, solution.loadA, solution.converterOutA]
    .flatMap((column) => [column.reduce((most, x) => Math.max(most, Math.abs(x)), 0)])
    .reduce((most, x) => Math.max(most, x), 1e-2);

  const leftA = new Float64Array(network.nodeCount);
  const flow = (from: number | undefined, to: number | undefined, currentA: number): void => {
    leftA[Number(from)] = Number(leftA[Number(from)]) - currentA;
    leftA[Number(to)] = Number(leftA[Number(to)]) + currentA;
  };
  let madeW = 0;
  let spentW = 0;

  branches.ohm.forEach((ohm, i) => {
    const currentA = Number(solution.branchA[i]);
    hold("ohm", i, (across(branches.from, branches.to, i) - currentA * ohm) / supplyV);
    flow(branches.from[i], branches.to[i], currentA);
    spentW += currentA * currentA * ohm;
  });
  sources.emfV.forEach((emfV, i) => {
    const currentA = Number(solution.sourceA[i]);
    const ohm = Number(sources.ohm[i]);
    hold("source", i, (across(sources.plus, sources.minus, i) - (emfV - currentA * ohm)) / supplyV);
    flow(sources.minus[i], sources.plus[i], currentA);
    madeW += currentA * emfV;
    spentW += currentA * currentA * ohm;
  });
  const cut = new Set(solution.cutOut);
  loads.value.forEach((value, i) => {
    const currentA = Number(solution.loadA[i]);
    const loadV = across(loads.plus, loads.minus, i);
    hold("load", i, (loadV - Number(solution.loadV[i])) / supplyV);
    hold(
      "load",
      i,
      (currentA - lawfulA(Number(loads.law[i]), value, loadV, cut.has(i), currentA, solution.status)) / mostA,
    );
    flow(loads.plus[i], loads.minus[i], currentA);
    spentW += currentA * loadV;
  });
  const off = new Set(solution.convertersOff);
  converters.outputV.forEach((outputV, i) => {
    const inA = Number(solution.converterInA[i]);
    const outA = Number(solution.converterOutA[i]);
    const inV = across(converters.inPlus, converters.inMinus, i);
    const outV = across(converters.outPlus, converters.outMinus, i);
    if (off.has(i)) {
      hold("converter", i, inA);
      hold("converter", i, outA);
    } else if (solution.status === "solved") {
      const askedW = (outputV * outA) / Number(converters.efficiency[i]) + Number(converters.standbyW[i]);
      hold("converter", i, (inA * inV - askedW) / (supplyV * mostA));
      if (Math.abs(outA) > tolerance * mostA) hold("converter", i, (outV - outputV) / supplyV);
      hold("converter", i, Math.min(0, outA / mostA));
      hold("converter", i, Math.max(0, (outputV - outV) / supplyV));
    }
    flow(converters.inPlus[i], converters.inMinus[i], inA);
    flow(converters.outMinus[i], converters.outPlus[i], outA);
    spentW += inA * inV - outA * outV;
  });
  leftA.forEach((currentA, node) => {
    hold("current", node, currentA / mostA);
  });
  hold("energy", -1, (madeW - spentW) / (supplyV * mostA));
  return broken;
}

/** Current that the law of a load asks for. One that is fed no voltage takes nothing; a collapsed network gives less. */
function lawfulA(
  law: number,
  value: number,
  loadV: number,
  isCut: boolean,
  currentA: number,
  status: Solution["status"],
): number {
  if (isCut) return 0;
  if (law === loadLaw.resistance) return loadV / value;
  const fullA = law === loadLaw.power ? (value === 0 ? 0 : value / loadV) : value;
  if (currentA === 0 && !(loadV > 1e-6)) return 0;
  return status === "collapsed" ? Math.min(Math.max(currentA, 0), fullA) : fullA;
}
