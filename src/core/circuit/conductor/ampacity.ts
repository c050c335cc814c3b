import type { ConductorSize } from "../../plan/model/common.js";
import type { AmpacityTable } from "../../reference/ampacity-table.js";
import type { RuleSet } from "../../reference/rule-set-type.js";
import type { AmpacityFactor, AmpacityWorking } from "./ampacity-working.js";
import { sizeOfKey } from "./sizes.js";
import { thinAmpacity } from "./thin-ampacity.js";

export interface AmpacityConditions {
  /** Temperature rating of the insulation [°C]. */
  readonly insulationC: number;
  readonly engineSpace: boolean;
  /** All loaded conductors that lie together, this one counted. */
  readonly bundledConductors: number;
  readonly nominalV: number;
  readonly ruleSet: RuleSet;
}

/**
 * Continuous current one insulated conductor may carry where it lies: table value × engine-space factor × bundling factor.
 * A size or rating between rows or columns takes the lower one. Conductors under the table's least size: see thin-ampacity.ts.
 * @throws RangeError if the area is not above zero, or the number of conductors not a whole number from 1.
 */
export function ampacityA(size: ConductorSize, conditions: AmpacityConditions): AmpacityWorking {
  if (!(size.areaMm2 > 0)) throw new RangeError(`area must be > 0 mm², got ${size.areaMm2}`);
  const { bundledConductors, insulationC, engineSpace, ruleSet } = conditions;
  if (!(Number.isInteger(bundledConductors) && bundledConductors >= 1))
    throw new RangeError(`a whole number of conductors from 1 required, got ${bundledConductors}`);
  const table = ruleSet.ampacity;
  const row = rowFor(table, size);
  if (!row) return thinAmpacity(size, insulationC, engineSpace ? ruleSet.engineSpace.airC : table.airC);
  const column = table.ratingsC.findLastIndex((ratingC) => ratingC <= insulationC);
  const columnC = table.ratingsC[column];
  const baseA = row.amps[column];
  if (columnC === undefined || baseA === undefined) {
    const nothing = { ampacityA: undefined, baseA: 0, columnC: 0, factors: [] } as const;
    return { ...nothing, missing: "insulation", rowKey: row.key, source: table.source };
  }
  const factors = factorsFor(columnC, conditions);
  const product = factors.reduce((soFar, { factor }) => soFar * factor, baseA);
  return { ampacityA: product, baseA, rowKey: row.key, columnC, factors, source: table.source };
}

/** Both factors of the rule-set that apply here; an engine space hotter than any listed insulation leaves nothing. */
function factorsFor(columnC: number, conditions: AmpacityConditions): AmpacityFactor[] {
  const { ruleSet, engineSpace, bundledConductors, nominalV } = conditions;
  const factors: AmpacityFactor[] = [];
  if (engineSpace) {
    const { rows, source } = ruleSet.engineSpace;
    const row = rows.findLast(({ ratingC }) => ratingC <= columnC);
    const status = row?.status ?? source.status;
    factors.push({ kind: "engine space", factor: row?.factor ?? 0, source: { ...source, status } });
  }
  const { rows, source, fromNominalV } = ruleSet.bundling;
  if (nominalV >= fromNominalV) {
    const row = rows.findLast(({ conductorsFrom }) => conductorsFrom <= bundledConductors);
    if (row) factors.push({ kind: "bundle", factor: row.factor, source });
  }
  return factors;
}

type Row = AmpacityTable["rows"][number];
const areasOf = new WeakMap<AmpacityTable, readonly { readonly areaMm2: number; readonly row: Row }[]>();

function rowFor(table: AmpacityTable, size: ConductorSize): Row | undefined {
  let areas = areasOf.get(table);
  if (!areas) {
    areas = table.rows.map((row) => ({ areaMm2: sizeOfKey(row.key).areaMm2, row }));
    areasOf.set(table, areas);
  }
  return areas.findLast(({ areaMm2 }) => areaMm2 <= size.areaMm2 * (1 + 1e-9))?.row;
}
