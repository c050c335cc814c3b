import { located } from "./field.js";
import type { Locator } from "./locate.js";
import type { Steps } from "./step.js";
import { valueText } from "./value.js";

/**
 * A fuse or breaker: a rating changes the rating and leaves the rest of what is known of the device;
 * `none`, or a device in full (`{device: breaker, rating: 10 A}`), takes the place of all.
 */
export function fuseSteps(
  locator: Locator,
  at: string,
  kinds: readonly string[],
  key: "fuse" | "main",
  to: string,
): Steps {
  const location = located(locator, at, kinds);
  if ("code" in location) return location;
  const value = valueText(to);
  if (value === undefined) return { code: "bad value" };
  const path = [...location.path, key];
  const now = locator.node(path);
  const keepsDevice = now?.kind === "section" && value !== "none" && !value.startsWith("{");
  return [{ do: "set", path: keepsDevice ? [...path, "rating"] : path, to: value }];
}
