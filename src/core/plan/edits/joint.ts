import { fieldSteps, located } from "./field.js";
import type { Locator } from "./locate.js";
import type { Steps } from "./step.js";
import { keyText } from "./value.js";

/** A joint at one end of a run or at both; the other end keeps what it has. */
export function jointSteps(locator: Locator, at: string, end: "start" | "end" | "both", to: string): Steps {
  const location = located(locator, at, ["run"]);
  if ("code" in location) return location;
  const path = [...location.path, "joint"];
  const value = keyText(to);
  if (end === "both") return [{ do: "set", path, to: value }];
  const now = locator.node(path);
  if (now?.kind === "section") return [{ do: "set", path: [...path, end], to: value }];
  if (now?.kind !== "scalar" || now.text === "work out")
    return [{ do: "set", path, to: `{${end}: ${value}}` }];
  const kept = keyText(now.text);
  return [
    {
      do: "set",
      path,
      to: end === "start" ? `{start: ${value}, end: ${kept}}` : `{start: ${kept}, end: ${value}}`,
    },
  ];
}

export function gearJointSteps(locator: Locator, at: string, to: string): Steps {
  return fieldSteps(locator, at, "joint", to, ["gear"]);
}

export function coloursSteps(locator: Locator, at: string, out: string, back: string): Steps {
  const location = located(locator, at, ["run"]);
  if ("code" in location) return location;
  const path = [...location.path, "colours"];
  if (locator.node(path)?.kind !== "section")
    return [{ do: "set", path, to: `{out: ${keyText(out)}, return: ${keyText(back)}}` }];
  return [
    { do: "set", path: [...path, "out"], to: keyText(out) },
    { do: "set", path: [...path, "return"], to: keyText(back) },
  ];
}
