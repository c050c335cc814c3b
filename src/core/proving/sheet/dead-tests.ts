import { readingLimits } from "../../reference/meters.js";
import type { Bench } from "../bench-network.js";
import type { ProvingInput } from "../input.js";
import { chargerRuns, farthest, polesOf, postsOf, supplyPoles } from "./places.js";
import type { SheetSection, SheetTest } from "./types.js";

/** What is proven with the batteries apart, before anything is live. Bands are filled in later. */
export function deadSections(bench: Bench, { plan, paths }: ProvingInput): SheetSection[] {
  const metal = plan.source.craft.hullMaterial === "aluminium" || plan.source.craft.hullMaterial === "steel";
  const { leastInsulationOhm: leastOhm } = readingLimits;
  const insulation = plan.batteries.flatMap(({ name }): SheetTest[] => {
    const [at, against] = postsOf(bench, name);
    const about = { at: name, leastOhm, setting: "2 MΩ", stop: "never below the limit" } as const;
    const poles: SheetTest = {
      ...about,
      id: `insulation / ${name}`,
      test: "insulation",
      probe: { kind: "ohm", at, against, on: [] },
    };
    return metal
      ? [poles, { ...about, id: `insulation to hull / ${name}`, test: "insulation to hull" }]
      : [poles];
  });
  const fed = plan.gear.filter(({ name }) => plan.circuitOf.has(name) && bench.gearOf.has(name));
  const ends = farthest(bench, fed, paths);
  const continuity = ends.flatMap(({ name }): SheetTest[] => {
    const [plus, minus] = polesOf(bench, name);
    const circuit = plan.circuits.get(plan.circuitOf.get(name) ?? "");
    const [supplyPlus, supplyMinus] = supplyPoles(bench, circuit?.supply ?? "");
    const about = { at: name, setting: "200 Ω", stop: "no way through" } as const;
    return [
      {
        ...about,
        id: `continuity out / ${name}`,
        test: "continuity out",
        probe: { kind: "ohm", at: plus, against: supplyPlus, on: [] },
      },
      {
        ...about,
        id: `continuity back / ${name}`,
        test: "continuity back",
        probe: { kind: "ohm", at: minus, against: supplyMinus, on: [] },
      },
    ];
  });
  const chargers = plan.chargers.filter(({ name }) => chargerRuns(plan, name).length > 0);
  const colours = ({ name }: { readonly name: string }): SheetTest => ({
    id: `colours / ${name}`,
    test: "colours",
    at: name,
    stop: "wrong way round",
  });
  const about = { at: "", gear: [] };
  return [
    { ...about, id: "insulation", kind: "insulation", tests: insulation },
    { ...about, id: "continuity", kind: "continuity", tests: continuity },
    { ...about, id: "polarity", kind: "polarity", tests: ends.map(colours) },
    ...chargers.map((charger) => ({
      ...about,
      id: `polarity / ${charger.name}`,
      kind: "polarity" as const,
      at: charger.name,
      tests: [colours(charger)],
    })),
  ];
}
