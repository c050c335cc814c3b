import type { Locator } from "./locate.js";
import type { Step } from "./step.js";
import { keyText } from "./value.js";

/**
 * Steps that carry a new name into boxes and casings of panels: their holes and entries are called as the runs that go through them, and
 * a box may be one of the catalogue. `kind`: of the thing that gets the name.
 */
export function boxRenameSteps(locator: Locator, kind: string, renamed: (text: string) => string): Step[] {
  if (kind !== "run" && kind !== "catalogue box") return [];
  const steps: Step[] = [];
  for (const section of ["boxes", "panels"]) {
    const things = locator.node([section]);
    if (things?.kind !== "section") continue;
    for (const { key: name, value } of things.entries)
      for (const { key, value: inner } of value.kind === "section" ? value.entries : []) {
        const path = [section, name, key];
        if (kind === "catalogue box") {
          if (key === "catalogue box" && inner.kind === "scalar" && renamed(inner.text) !== inner.text)
            steps.push({ do: "set", path, to: keyText(renamed(inner.text)) });
        } else if ((key === "entries" || key === "holes") && inner.kind === "section")
          for (const { key: entry } of inner.entries)
            if (renamed(entry) !== entry)
              steps.push({ do: "rename", path: [...path, entry], to: renamed(entry) });
      }
  }
  return steps;
}
