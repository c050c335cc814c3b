import { located } from "./field.js";
import type { Locator } from "./locate.js";
import type { Steps } from "./step.js";

/** A thing goes, with all its fields. Where others still speak of it, the result is unsound and the edit refused. */
export function removeSteps(locator: Locator, at: string): Steps {
  const location = located(locator, at);
  if ("code" in location) return location;
  return location.path.length === 0
    ? { code: "wrong kind of thing" }
    : [{ do: "remove", path: location.path }];
}
