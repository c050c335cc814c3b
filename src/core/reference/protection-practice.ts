import { commonPractice, type Sourced } from "./source.js";

/** Share of its rating a fuse or breaker carries for hours without ageing or opening on a hot day. */
export const continuousLoad = { source: commonPractice, maxShare: 0.8 } as const satisfies Sourced;

/** An internal resistance that was only assumed may be this many times too high for lithium cells; less capacity to interrupt is not trusted. */
export const assumedLithiumShort = { source: commonPractice, marginFactor: 2 } as const satisfies Sourced;
