import type { seenFrom } from "../reference/seen-from.js";

export type LightKind = Exclude<keyof typeof seenFrom, "source">;

const kinds: readonly (readonly [RegExp, readonly LightKind[]])[] = [
  [/all[- ]?round|anchor|pole|todo (el )?horizonte|fondeo/, ["all-round"]],
  [/tri[- ]?colou?r|tricolor/, ["sidelight", "stern"]],
  [/side ?lights?|bi[- ]?colou?r|bicolor|costado|\bbanda\b/, ["sidelight"]],
  [/masthead|steaming|\btope\b/, ["masthead"]],
  [/stern|alcance|\bpopa\b/, ["stern"]],
];

/** Which navigation lights a lantern is, as far as the name the owner gave it tells, in English or Spanish; empty: it does not. */
export function lightKindsOf(name: string): readonly LightKind[] {
  const words = name.toLowerCase();
  return kinds.find(([pattern]) => pattern.test(words))?.[1] ?? [];
}
