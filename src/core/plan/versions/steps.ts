import type { FormatStep } from "./version.js";

/** Steps from older formats, one file each, oldest first. Format 1 is the first, so there is none yet. */
export const formatSteps: readonly FormatStep[] = [];
