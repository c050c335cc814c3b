import type { Figures } from "./figures-types.js";

/** Version of the shape below; raised whenever a field changes its meaning or goes. */
export const figuresJsonVersion = 1;

/** Figures as plain JSON values, documented in docs/json.md. Infinite and missing numbers are left out. */
export function figuresJson(figures: Figures): Record<string, unknown> {
  const { plan, assumptions, sizes, protection, corners, outings, charging, findings } = figures;
  return {
    skiffloom: "figures",
    version: figuresJsonVersion,
    plan: { name: plan.source.name, rules: plan.source.rules },
    circuits: [...plan.circuits.values()],
    looseEnds: plan.looseEnds,
    assumptions,
    sizes,
    protection,
    corners,
    outings,
    charging,
    findings: findingsJson(findings),
  };
}

/** Findings with the numbers `apply` takes them by. */
export function findingsJson(findings: Figures["findings"]): readonly Record<string, unknown>[] {
  return findings.map((finding, index) => ({ number: index + 1, ...finding }));
}
