import type { CompleteConverter, CompletePlan } from "../../plan/completed.js";
import type { Topology, TopologyConverter } from "../topology/types.js";

/** What gear hangs on: a battery, or the output of a converter. */
export interface Supply {
  readonly name: string;
  readonly plus: number;
  readonly minus: number;
  readonly converter?: TopologyConverter & { readonly facts: CompleteConverter };
  /** Index of what feeds the converter; −1: nothing does, or it is a battery. */
  readonly from: number;
}

/** Every supply, a converter before the one that feeds it, the batteries last. */
export function supplyOrder(plan: CompletePlan, topology: Topology): Supply[] {
  const facts = new Map(plan.converters.map((converter) => [converter.name, converter]));
  const converters = new Map(topology.converters.map((converter) => [converter.id, converter]));
  const feederOf = (name: string) => plan.circuits.get(plan.circuitOf.get(name) ?? "")?.supply;
  const chains: string[][] = [];
  const seen = new Set<string>();
  for (const start of converters.keys()) {
    const chain: string[] = [];
    let at: string | undefined = start;
    while (at !== undefined && converters.has(at) && !seen.has(at)) {
      seen.add(at);
      chain.push(at);
      at = feederOf(at);
    }
    chains.push(chain);
  }
  // each chain ends at a battery or feeds on one found before it, so later chains go first
  const names = chains.reverse().flat();
  const indexOf = new Map(
    [...names, ...topology.sources.map(({ battery }) => battery)].map((name, index) => [name, index]),
  );
  return [
    ...names.flatMap((name): Supply[] => {
      const converter = converters.get(name);
      const fact = facts.get(name);
      if (!converter || !fact) return [];
      const { outPlus: plus, outMinus: minus } = converter;
      const from = indexOf.get(feederOf(name) ?? "") ?? -1;
      return [{ name, plus, minus, from, converter: { ...converter, facts: fact } }];
    }),
    ...topology.sources.map(({ battery, plus, minus }) => ({ name: battery, plus, minus, from: -1 })),
  ];
}
