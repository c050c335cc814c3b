import { readingLimits } from "../../reference/meters.js";
import type { Bench } from "../bench-network.js";
import { conditionKey, type Probe } from "../probe.js";
import type { Reading } from "../reading-model.js";

/** Battery whose posts a probe is put to with everything off; undefined: it is another probe. */
export function batteryAtRest({ topology }: Bench, probe: Probe): string | undefined {
  if (probe.kind !== "voltage" || conditionKey(probe) !== conditionKey({ ...probe, on: [] }))
    return undefined;
  return topology.sources.find(
    ({ plus, minus }) => topology.nodes[plus] === probe.at && topology.nodes[minus] === probe.against,
  )?.battery;
}

/** Resting voltage of each battery that was read at its posts with everything off; the last reading that can be counts [V]. */
export function restingReadings(bench: Bench, readings: readonly Reading[]): Map<string, number> {
  return new Map(
    readings.flatMap(({ probe, value }): [string, number][] => {
      const battery = batteryAtRest(bench, probe);
      const row = bench.topology.sources.findIndex((source) => source.battery === battery);
      const share = value / (bench.numbers.sources.emfV[row] ?? value);
      const likely = share < readingLimits.mostOverRest && share * readingLimits.mostOverRest > 1;
      return battery === undefined || !likely ? [] : [[battery, value]];
    }),
  );
}
