import { commonPractice, type Sourced } from "./source.js";

/** What one gets out and puts away. */
export const toolKeys = [
  "tape",
  "punch",
  "drill with twist bit",
  "drill with step bit",
  "drill with hole saw",
  "deburring tool",
  "drawing line",
  "cutter and stripper",
  "crimper",
  "hot air",
  "soldering iron",
  "screwdriver",
  "spanner",
  "sealant gun",
  "label printer",
  "meter",
  "hose",
] as const;
export type ToolKey = (typeof toolKeys)[number];

/** Changing from one main tool to another: put away, get out, set up [min]; and what being interrupted is worth beyond it [min]. */
export const toolChange = {
  source: commonPractice,
  setupMinutes: 4,
  nuisanceMinutes: 10,
} as const satisfies Sourced;
