import type { FormatStep } from "./format-step.js";

/** Steps from older formats, one file each, oldest first. Format 1 is the first, so there is none yet. */
export const formatSteps: readonly FormatStep[] = [];
