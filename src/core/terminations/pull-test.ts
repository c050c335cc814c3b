import type { ConductorSize } from "../plan/model/common.js";
import { awgAreaMm2 } from "../quantity/conductor-size.js";
import { inProcessPull, pullTests } from "../reference/terminations.js";
import { gaugeNumber } from "./gauge.js";

export interface PullTestValue {
  /** Row of the table: of this size, or the next thinner one. */
  readonly gauge: string;
  readonly ofThisSize: boolean;
  readonly lbf: number;
  /** From the pounds: one row of the print does not agree with itself. */
  readonly minN: number;
  /** What a crimp that stays in use is pulled with. */
  readonly inUseN: number;
}

/**
 * Least pull of a crimp on one conductor [N]. Metric sizes take the row of the next thinner gauge.
 * @returns undefined below the thinnest and above the thickest gauge of the table: not known.
 */
export function pullTest(size: ConductorSize): PullTestValue | undefined {
  if (!(size.areaMm2 > 0)) throw new RangeError(`area must be > 0 mm², got ${size.areaMm2}`);
  const own = pullTests.rows.find((row) => row.gauge === size.key);
  const last = pullTests.rows.at(-1);
  const areaOf = (gauge: string): number => awgAreaMm2(gaugeNumber(gauge));
  if (own === undefined && last !== undefined && size.areaMm2 > areaOf(last.gauge) * 1.1) return undefined;
  const row = own ?? pullTests.rows.findLast((one) => areaOf(one.gauge) <= size.areaMm2);
  if (row === undefined) return undefined;
  const minN = row.lbf * pullTests.newtonsPerLbf;
  return {
    gauge: row.gauge,
    ofThisSize: own !== undefined,
    lbf: row.lbf,
    minN,
    inUseN: minN * inProcessPull.share,
  };
}
