/** Where the meter is put and what the boat is doing meanwhile. Names are those of the circuit's points, branches and gear. */
export type Probe =
  | {
      readonly kind: "voltage";
      readonly at: string;
      readonly against: string;
      readonly on: readonly string[];
    }
  | { readonly kind: "current"; readonly at: string; readonly on: readonly string[] }
  /** Batteries apart; only the switches to this gear closed; these wires (branches) taken off at their end towards the supply. */
  | {
      readonly kind: "ohm";
      readonly at: string;
      readonly against: string;
      readonly on: readonly string[];
      readonly lifted?: readonly string[];
    }
  /** No meter: what is printed on a fuse or breaker (a branch), read by eye [A]. */
  | { readonly kind: "marking"; readonly at: string; readonly on: readonly string[] };

export type ProbeKind = Probe["kind"];
/** Readings of which a circuit says what they are. */
export type Metered = Exclude<Probe, { readonly kind: "marking" }>;

/** Key of the condition a probe is taken in: readings of one key come from one state of the boat. */
export function conditionKey(probe: Probe): string {
  if (probe.kind === "marking") return "seen";
  const on = [...probe.on].sort().join(" | ");
  if (probe.kind !== "ohm") return `live: ${on}`;
  const lifted = [...(probe.lifted ?? [])].sort().join(" | ");
  return lifted === "" ? `dead: ${on}` : `dead: ${on} without ${lifted}`;
}

/** Key of a probe: two readings with one key are of the same thing. */
export function probeKey(probe: Probe): string {
  const against = "against" in probe ? probe.against : "";
  return `${probe.kind} ${probe.at} ~ ${against} ${conditionKey(probe)}`;
}
