import { loadLaw, type NetworkNumbers } from "../../src/core/circuit/solve/types.js";

const tightest = ".options reltol=1e-9 abstol=1e-13 vntol=1e-10 gmin=1e-18 itl1=1000";

/**
 * The network as a SPICE deck. Constant power is a behavioural
 * current P/V, a converter a voltage source whose current sets the current of its input. The starting guess is the plain one:
 * every plus of a load at the EMF, nothing of our answer.
 * @param references Nodes to be 0 V, one an island.
 * @param ending Options and what is to be done; without, the tightest options, and the caller asks.
 */
export function spiceDeck(
  network: NetworkNumbers,
  references: ReadonlySet<number>,
  ending: readonly string[] = [tightest],
): string {
  const { branches, sources, loads, converters } = network;
  const name = (node: number | undefined): string => (references.has(Number(node)) ? "0" : `n${node}`);
  const lines = ["* generated network"];
  branches.ohm.forEach((ohm, i) => {
    lines.push(`R${i} ${name(branches.from[i])} ${name(branches.to[i])} ${ohm}`);
  });
  sources.emfV.forEach((emfV, i) => {
    lines.push(
      `VS${i} e${i} ${name(sources.minus[i])} DC ${emfV}`,
      `RS${i} e${i} ${name(sources.plus[i])} ${sources.ohm[i]}`,
    );
  });
  loads.value.forEach((value, i) => {
    const a = name(loads.plus[i]);
    const b = name(loads.minus[i]);
    if (loads.law[i] === loadLaw.resistance) {
      if (value < Infinity) lines.push(`RL${i} ${a} ${b} ${value}`);
    } else if (value > 0) {
      lines.push(
        loads.law[i] === loadLaw.current
          ? `IL${i} ${a} ${b} DC ${value}`
          : `BL${i} ${a} ${b} I=${value}/V(${a},${b})`,
      );
    }
  });
  converters.outputV.forEach((outputV, i) => {
    const a = name(converters.inPlus[i]);
    const b = name(converters.inMinus[i]);
    lines.push(`VC${i} ${name(converters.outPlus[i])} ${name(converters.outMinus[i])} DC ${outputV}`);
    const watts = `${converters.standbyW[i]}-${outputV}*I(VC${i})/${converters.efficiency[i]}`;
    lines.push(`BC${i} ${a} ${b} I=(${watts})/V(${a},${b})`);
  });
  for (const [node, startV] of plusGuesses(network))
    if (!references.has(node)) lines.push(`.nodeset V(n${node})=${startV}`);
  lines.push(...ending, ".end");
  return `${lines.join("\n")}\n`;
}

/** EMF of the source, or output of the converter, on every node of the plus leg: what a person would start from. */
function plusGuesses(network: NetworkNumbers): Map<number, number> {
  const guess = new Map<number, number>();
  const { branches, sources, converters } = network;
  sources.plus.forEach((node, i) => {
    guess.set(node, Number(sources.emfV[i]));
  });
  converters.outPlus.forEach((node, i) => {
    guess.set(node, Number(converters.outputV[i]));
  });
  const neighbours = Array.from({ length: network.nodeCount }, (): number[] => []);
  branches.from.forEach((from, i) => {
    neighbours[from]?.push(Number(branches.to[i]));
    neighbours[Number(branches.to[i])]?.push(from);
  });
  const waiting = [...guess.keys()];
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop())
    for (const next of neighbours[node] ?? []) {
      if (guess.has(next)) continue;
      guess.set(next, Number(guess.get(node)));
      waiting.push(next);
    }
  return guess;
}
