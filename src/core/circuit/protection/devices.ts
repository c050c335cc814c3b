import type { Protection } from "../../plan/model/common.js";
import {
  bladeFuseTimes,
  boltedFuseTimes,
  breakerTimes,
  cartridgeFuseTimes,
  type OperatingTimes,
} from "../../reference/fuse-times.js";
import { bladeFuseScope, bladeFuses, boltedFuses, breakers, cartridgeFuses } from "../../reference/fuses.js";
import type { Source } from "../../reference/source.js";

/** What the reference tables say of a kind of device. */
export interface DeviceKind {
  /** Ratings made, rising [A]. */
  readonly ratingsA: readonly number[];
  /** Fault it can break where its own figure is not given [A]; undefined: differs too much within the kind to assume. */
  readonly interruptingA?: number;
  readonly times: OperatingTimes;
  /** Natural logarithms of the rows of `times`, which are asked for hundreds of times for each device; NaN where a row has no greatest time. */
  readonly logs: readonly { readonly share: number; readonly minS: number; readonly maxS: number }[];
  /** A wire that melts: past the table its time falls as 1/I². A mechanism does not. */
  readonly melts: boolean;
  readonly source: Source;
}

function timed(times: OperatingTimes): Pick<DeviceKind, "times" | "logs"> {
  const { log } = Math;
  const logs = times.rows.map(({ share, minS, maxS = Number.NaN }) => ({
    share: log(share),
    minS: log(minS),
    maxS: log(maxS),
  }));
  return { times, logs };
}

const mediumBlades = bladeFuses.bodies.flatMap(({ body, ratingsA }) => (body === "medium" ? ratingsA : []));

export const deviceKinds: Readonly<Record<Protection["device"], DeviceKind>> = {
  "blade fuse": {
    ratingsA: mediumBlades,
    interruptingA: bladeFuseScope.interruptingA,
    ...timed(bladeFuseTimes),
    melts: true,
    source: bladeFuses.source,
  },
  "bolted fuse": {
    ratingsA: boltedFuses.ratingsA,
    interruptingA: boltedFuses.interruptingA,
    ...timed(boltedFuseTimes),
    melts: true,
    source: boltedFuses.source,
  },
  // Glass and ceramic bodies of one size differ a hundredfold in what they break, so nothing is assumed.
  "cartridge fuse": {
    ratingsA: cartridgeFuses.ratingsA,
    ...timed(cartridgeFuseTimes),
    melts: true,
    source: cartridgeFuses.source,
  },
  // From some hundred amperes for a small panel breaker to thousands: its maker's figure or none.
  breaker: {
    ratingsA: breakers.ratingsA,
    ...timed(breakerTimes),
    melts: false,
    source: breakers.source,
  },
};
