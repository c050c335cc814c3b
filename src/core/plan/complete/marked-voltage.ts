import { lithiumCell } from "../../reference/batteries.js";
import type { Chemistry } from "../model/supply.js";

const cellsOfBlock = 4;

/**
 * The 12 V blocks' voltage of a battery by what is marked on it [V]. An LiFePO4 battery is often marked with what its cells give: 12.8 V
 * stands in a 12 V boat, 25.6 V in a 24 V one.
 */
export function blocksVoltageV(chemistry: Chemistry, markedV: number): number {
  if (chemistry !== "lifepo4") return markedV;
  const blocks = Math.round(markedV / (cellsOfBlock * lithiumCell.nominalV));
  const byCells = blocks * cellsOfBlock * lithiumCell.nominalV;
  return blocks > 0 && Math.abs(markedV - byCells) < 0.05 * byCells ? 12 * blocks : markedV;
}
