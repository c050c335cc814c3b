import { listOf } from "./combine.js";
import { type Shape, tell } from "./shape.js";

/** A list of just so many: measures of a box, a place in the boat. */
function exactly<T>(count: number, shape: Shape<T>): Shape<readonly T[]> {
  const list = listOf(shape);
  return {
    label: `list of ${count}: ${shape.label}`,
    json: (definitions) => ({ ...list.json(definitions), minItems: count, maxItems: count }),
    read: (spot) => {
      const { node } = spot;
      if (node.kind !== "list" || node.items.length === count) {
        const items = list.read(spot);
        // A part that could not be read is told already.
        return items?.length === count ? items : undefined;
      }
      const found = String(node.items.length);
      return tell(spot, { code: "wrong count", found, expected: { kind: "count", of: [count] } });
    },
  };
}

export function two<T>(shape: Shape<T>): Shape<readonly [T, T]> {
  const list = exactly(2, shape);
  return {
    ...list,
    read: (spot) => {
      const [a, b] = list.read(spot) ?? [];
      return a === undefined || b === undefined ? undefined : [a, b];
    },
  };
}

export function three<T>(shape: Shape<T>): Shape<readonly [T, T, T]> {
  const list = exactly(3, shape);
  return {
    ...list,
    read: (spot) => {
      const [a, b, c] = list.read(spot) ?? [];
      return a === undefined || b === undefined || c === undefined ? undefined : [a, b, c];
    },
  };
}
