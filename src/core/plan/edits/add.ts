import { nearestOf } from "../../quantity/nearest.js";
import { isName } from "../schema/combine.js";
import { setStep } from "./field.js";
import type { Locator } from "./locate.js";
import type { Steps } from "./step.js";
import { valueText } from "./value.js";

const sections: ReadonlyMap<string, string> = new Map([
  ["battery", "batteries"],
  ["charger", "chargers"],
  ["converter", "converters"],
  ["panel", "panels"],
  ["box", "boxes"],
  ["gear", "gear"],
  ["run", "runs"],
  ["waypoint", "waypoints"],
  ["leg", "legs"],
  ["catalogue box", "box catalogue"],
  ["reference", "references"],
  ["face", "faces"],
  ["outing", "outings"],
  ["corner", "corners"],
  ["project", "projects"],
]);

/** Kinds that stand in lists and have no name of their own. */
const lists: ReadonlyMap<string, readonly string[]> = new Map([
  ["stock wire", ["stock", "wire"]],
  ["wire price", ["prices", "wire"]],
  ["part price", ["prices", "parts"]],
  ["step done", ["work done"]],
  ["work note", ["work notes"]],
  ["reading", ["readings"]],
  ["mend", ["mends"]],
  ["built length", ["as built", "lengths"]],
  ["built hole", ["as built", "holes"]],
  ["built entry", ["as built", "entries"]],
  ["built joint", ["as built", "joints"]],
  ["built rating", ["as built", "ratings"]],
]);

/** A new thing of a kind, written in full: `add battery`, `{chemistry: agm, capacity: 30 Ah}`. A way is named `panel / way`. */
export function addSteps(locator: Locator, kind: string, name: string, as: string): Steps {
  const value = valueText(as.trim() === "" ? "{}" : as);
  if (value === undefined) return { code: "bad value" };
  const list = lists.get(kind);
  if (list !== undefined) return listSteps(locator, list, value);
  // these may be called as a place is
  const own = ["face", "reference", "outing", "corner"].includes(kind)
    ? `${sections.get(kind)} / ${name}`
    : name;
  if (locator.find(own)?.path.at(-1) === name.split(" / ").at(-1)) return { code: "name taken" };
  if (kind === "way") {
    const [panel = "", way = ""] = name.split(" / ", 2);
    if (locator.registry.places.get(panel)?.kind !== "panel") return { code: "nothing so called" };
    return isName(way) ? setStep(locator, ["panels", panel, "ways", way], value) : { code: "bad value" };
  }
  const section = sections.get(kind);
  if (section === undefined) {
    const nearest = nearestOf(kind, [...sections.keys(), ...lists.keys(), "way"]);
    return { code: "unknown kind", ...(nearest === undefined ? {} : { nearest }) };
  }
  return isName(name) ? setStep(locator, [section, name], value) : { code: "bad value" };
}

/** A new line at the end of a list, which is made where there is none. */
function listSteps(locator: Locator, path: readonly string[], value: string): Steps {
  const node = locator.node(path);
  return node?.kind === "list"
    ? [{ do: "set", path: [...path, node.items.length], to: value }]
    : setStep(locator, path, `[${value}]`);
}
