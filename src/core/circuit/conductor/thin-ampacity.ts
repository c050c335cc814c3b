import type { ConductorSize } from "../../plan/model/common.js";
import { tinnedStrandedAwg } from "../../reference/awg-conductors.js";
import type { Source } from "../../reference/source.js";
import type { AmpacityFactor, AmpacityWorking } from "./ampacity-working.js";
import { sizeOfKey } from "./sizes.js";

const areas = tinnedStrandedAwg.rows.map((row) => ({ areaMm2: sizeOfKey(row.key).areaMm2, row }));
const rise = tinnedStrandedAwg.copperC - tinnedStrandedAwg.airC;
const squareRoot: Source = {
  title: "heat balance of a loaded conductor",
  place: "current goes with the square root of the rise; never taken above the printed value",
  status: "computed",
};

/**
 * Allowed current of the thin leads that small-craft tables leave out (24, 22, 20 AWG and metric sizes between), from the aircraft table.
 * Its values hold for a rise of 35 K in large bundles, so they are taken whole wherever the insulation leaves 35 K over the air,
 * and by the square root of what it leaves otherwise; no bundling factor is added.
 * @param airC Air around the conductor [°C].
 */
export function thinAmpacity(size: ConductorSize, insulationC: number, airC: number): AmpacityWorking {
  const { source, copperC } = tinnedStrandedAwg;
  const row = areas.findLast(({ areaMm2 }) => areaMm2 <= size.areaMm2 * (1 + 1e-9))?.row;
  const nothing = { ampacityA: undefined, baseA: 0, columnC: copperC, factors: [], source } as const;
  if (!row) return { ...nothing, missing: "size", rowKey: "" };
  if (!(insulationC > 0)) return { ...nothing, missing: "insulation", rowKey: row.key };
  const factor = Math.sqrt(Math.max(0, Math.min(1, (insulationC - airC) / rise)));
  const factors: AmpacityFactor[] =
    factor < 1 ? [{ kind: "insulation in warm air", factor, source: squareRoot }] : [];
  return {
    ampacityA: row.bundledA * factor,
    baseA: row.bundledA,
    rowKey: row.key,
    columnC: copperC,
    factors,
    source,
  };
}
