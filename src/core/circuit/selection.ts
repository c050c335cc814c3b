import type { CompletePlan } from "../plan/completed.js";

/** Single pieces of gear meant by a name in an outing or a corner: a piece, an entry with a count, a way, a panel or a battery. */
export function gearNamed(plan: CompletePlan, name: string): string[] {
  const matches = plan.gear.filter((piece) => {
    if (piece.name === name || piece.group === name) return true;
    const circuit = plan.circuitOf.get(piece.name);
    if (circuit === undefined) return false;
    return (
      circuit === name || circuit.startsWith(`${name} / `) || plan.circuits.get(circuit)?.supply === name
    );
  });
  return matches.map((piece) => piece.name);
}
