import type { Path } from "../source/problem.js";
import type { Location, Locator } from "./locate.js";
import type { Steps } from "./step.js";
import { keyText, valueText } from "./value.js";

/** The thing at that name, if it is of a kind the edit is for. */
export function located(
  locator: Locator,
  at: string,
  kinds?: readonly string[],
): Location | Exclude<Steps, unknown[]> {
  const location = locator.find(at);
  if (location === undefined) {
    const nearest = locator.nearest(at);
    return { code: "nothing so called", ...(nearest === undefined ? {} : { nearest }) };
  }
  return kinds === undefined || kinds.includes(location.kind) ? location : { code: "wrong kind of thing" };
}

/** Any field of a named thing; `leads / size` reaches into a section, which is made where there is none. */
export function fieldSteps(
  locator: Locator,
  at: string,
  field: string,
  to: string | number | boolean,
  kinds?: readonly string[],
): Steps {
  const location = located(locator, at, kinds);
  if ("code" in location) return location;
  const value = valueText(to);
  if (value === undefined) return { code: "bad value" };
  return setStep(locator, fieldPath(locator, location.path, field), value);
}

/** Sets a value; sections on the way that are not there yet are made. */
export function setStep(locator: Locator, path: Path, value: string): Steps {
  let known = path.length - 1;
  while (known > 0 && locator.node(path.slice(0, known)) === undefined) known -= 1;
  const inside = path
    .slice(known + 1)
    .reduceRight<string>((inner, key) => `{${keyText(String(key))}: ${inner}}`, value);
  return [{ do: "set", path: path.slice(0, known + 1), to: inside }];
}

/** `wire / 2 / count` reaches into the second item of a list: items count from 1, as people count. */
function fieldPath(locator: Locator, from: Path, field: string): Path {
  let path = from;
  for (const step of field.split(" / ")) {
    const item = locator.node(path)?.kind === "list" && /^[1-9]\d*$/.test(step);
    path = [...path, item ? Number(step) - 1 : step];
  }
  return path;
}

export function removeFieldSteps(locator: Locator, at: string, field: string): Steps {
  const location = located(locator, at);
  if ("code" in location) return location;
  const path = fieldPath(locator, location.path, field);
  return locator.node(path) === undefined ? { code: "no such field" } : [{ do: "remove", path }];
}
