/** Where the meter is put and what the boat is doing meanwhile. Names are those of the circuit's points, branches and gear. */
export type Probe =
  | {
      readonly kind: "voltage";
      readonly at: string;
      readonly against: string;
      readonly on: readonly string[];
    }
  | { readonly kind: "current"; readonly at: string; readonly on: readonly string[] }
  /** Batteries apart; only the switches to this gear closed. */
  | { readonly kind: "ohm"; readonly at: string; readonly against: string; readonly on: readonly string[] };

/** Key of the condition a probe is taken in: readings of one key come from one state of the boat. */
export function conditionKey(probe: Probe): string {
  return `${probe.kind === "ohm" ? "dead" : "live"}: ${[...probe.on].sort().join(" | ")}`;
}

/** Key of a probe: two readings with one key are of the same thing. */
export function probeKey(probe: Probe): string {
  const against = probe.kind === "current" ? "" : probe.against;
  return `${probe.kind} ${probe.at} ~ ${against} ${conditionKey(probe)}`;
}
