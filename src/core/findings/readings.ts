import type { TakenReading } from "../plan/model/work.js";

export const unitOf = { voltage: "V", current: "A", ohm: "Ω", marking: "A" } as const;

/** Points a reading was taken between. */
export const shownAt = ({ at, against }: TakenReading): { at: string; with?: readonly string[] } =>
  against === undefined ? { at } : { at, with: [against] };
