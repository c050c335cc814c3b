import type { Bench } from "../bench-network.js";
import type { ProvingInput } from "../input.js";
import { type Probe, probeKey } from "../probe.js";
import { farthest, polesOf } from "../sheet/places.js";
import type { JudgedReading } from "./judge.js";

/**
 * Readings that prove a mend: for each that was outside its band before, the voltage at the far end of its way in that state, where a second
 * fault would show too; with the power off, or of a marking, that reading itself. None that was taken since.
 */
export function toReadAgain(
  bench: Bench,
  { plan, paths }: Pick<ProvingInput, "plan" | "paths">,
  judged: readonly JudgedReading[],
): Probe[] {
  const since = new Set(
    judged.flatMap(({ reading, verdict, mended }) =>
      reading && !mended && verdict !== "impossible" ? [probeKey(reading.probe)] : [],
    ),
  );
  const wanted = judged.flatMap(({ reading, mended }): Probe[] => {
    if (!reading || !mended?.wasOutside) return [];
    const { probe } = reading;
    if (probe.kind === "ohm" || probe.kind === "marking" || probe.on.length === 0) return [probe];
    const on = plan.gear.filter(({ name }) => probe.on.includes(name) && bench.gearOf.has(name));
    if (probe.kind === "voltage" && on.some(({ name }) => isAt(bench, name, probe))) return [probe];
    return farthest(bench, on, paths).map(({ name }): Probe => {
      const [at, against] = polesOf(bench, name);
      return { kind: "voltage", at, against, on: probe.on };
    });
  });
  return [...new Map(wanted.map((probe) => [probeKey(probe), probe])).values()].filter(
    (probe) => !since.has(probeKey(probe)),
  );
}

/** Is the voltage that of this gear, at its joint or its terminals? */
function isAt(
  bench: Bench,
  gear: string,
  { at, against }: Extract<Probe, { readonly kind: "voltage" }>,
): boolean {
  const { topology, gearOf } = bench;
  const own = topology.gear[gearOf.get(gear) ?? -1];
  const [plus, minus] = polesOf(bench, gear);
  const terminal = (node: number | undefined) => topology.nodes[node ?? -1];
  return (
    (at === plus || at === terminal(own?.plus)) && (against === minus || against === terminal(own?.minus))
  );
}
