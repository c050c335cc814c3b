/** A JSON Schema (draft 2020-12) as plain data. */
export type JsonSchema = { readonly [keyword: string]: JsonValue };
export type JsonValue =
  | string
  | number
  | boolean
  | null
  | readonly JsonValue[]
  | { readonly [key: string]: JsonValue };

/** Parts used in many places, written once under `$defs`. */
export class Definitions {
  private readonly made = new Map<string, JsonSchema>();

  use(name: string, make: () => JsonSchema): JsonSchema {
    if (!this.made.has(name)) {
      this.made.set(name, {}); // holds the place while the part is being made
      this.made.set(name, make());
    }
    return { $ref: `#/$defs/${encodeURIComponent(name)}` };
  }

  all(): JsonSchema {
    return Object.fromEntries([...this.made].sort(([a], [b]) => (a < b ? -1 : 1)));
  }
}
