import type { Edit } from "./edit.js";

type Kind = "text" | "scalar" | "flag" | readonly string[];

/** Fields of each edit besides its name; one that is missing does not compile. */
const fieldsOf: { readonly [E in Edit as E["edit"]]: { readonly [F in Exclude<keyof E, "edit">]: Kind } } = {
  "set way fuse": { at: "text", to: "text" },
  "set main fuse": { at: "text", to: "text" },
  "set run fuse": { at: "text", to: "text" },
  "set run size": { at: "text", to: "text" },
  "set return size": { at: "text", to: "text" },
  "set run return": { at: "text", to: ["own", "shared"] },
  "set run joint": { at: "text", end: ["start", "end", "both"], to: "text" },
  "set gear joint": { at: "text", to: "text" },
  "set run colours": { at: "text", out: "text", return: "text" },
  "set way always live": { at: "text", to: "flag" },
  "set field": { at: "text", field: "text", to: "scalar" },
  "remove field": { at: "text", field: "text" },
  add: { kind: "text", name: "text", as: "text" },
  remove: { at: "text" },
  rename: { at: "text", to: "text" },
};

/** Is an unknown value (JSON from outside) an edit, with just the fields its name asks for? */
export function isEdit(value: unknown): value is Edit {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return false;
  const given = new Map<string, unknown>(Object.entries(value));
  const name = given.get("edit");
  const wanted = new Map<string, Readonly<Record<string, Kind>>>(Object.entries(fieldsOf)).get(String(name));
  if (typeof name !== "string" || !wanted) return false;
  const fields = Object.entries(wanted);
  return given.size === fields.length + 1 && fields.every(([field, kind]) => fits(given.get(field), kind));
}

function fits(value: unknown, kind: Kind): boolean {
  if (kind === "flag") return typeof value === "boolean";
  if (kind === "text") return typeof value === "string";
  if (kind === "scalar") return ["string", "number", "boolean"].includes(typeof value);
  return typeof value === "string" && kind.includes(value);
}
