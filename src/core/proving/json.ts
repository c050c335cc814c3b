import type { Diagnosis } from "./diagnose.js";
import type { FaultReport } from "./faults.js";
import type { SheetSection } from "./sheet/types.js";

/** Version of the shapes below; raised whenever a field changes its meaning or goes. */
const provingJsonVersion = 1;

/** A diagnosis as plain JSON values, documented in docs/json.md. */
export function provingJson({
  judged,
  again,
  idleMends,
  meterShare,
  faults,
  next,
  changes,
  agedFaults,
}: Diagnosis): Record<string, unknown> {
  return {
    skiffloom: "prove",
    version: provingJsonVersion,
    readings: judged.map(
      ({ taken, verdict, band, reading, unplaced, mended, flipped, wouldFitTimes, differsFrom }, row) => ({
        number: row + 1,
        ...taken,
        verdict,
        ...(reading === undefined ? {} : { probe: reading.probe }),
        ...(band === undefined ? {} : { band }),
        ...(unplaced === undefined ? {} : { unplaced }),
        ...(flipped === undefined ? {} : { flipped }),
        ...(mended === undefined ? {} : { mended }),
        ...(wouldFitTimes === undefined ? {} : { wouldFitTimes }),
        ...(differsFrom.length === 0 ? {} : { differsFrom: differsFrom.map((at) => at + 1) }),
      }),
    ),
    ...(faults === undefined ? {} : { faults: faultsJson(faults) }),
    again,
    ...(idleMends.length === 0 ? {} : { idleMends }),
    ...(meterShare === undefined ? {} : { meterShare }),
    next: next.map(({ probe, bits, opens }) => ({ probe, bits, ...(opens === undefined ? {} : { opens }) })),
    changes: changes.map(({ reading, ...change }) => ({ probe: reading.probe, ...change })),
    ...(agedFaults === undefined ? {} : { agedFaults: faultsJson(agedFaults) }),
  };
}

function faultsJson({ suspects, notApart, fitted, explained }: FaultReport): Record<string, unknown> {
  return { suspects, notApart: notApart.map((at) => at + 1), fitted, explained };
}

export function sheetJson(sections: readonly SheetSection[]): Record<string, unknown> {
  return { skiffloom: "test sheet", version: provingJsonVersion, sections };
}
