/**
 * Do two values of plain data (lists, maps, objects, words, numbers) say the same, in the same order? What is not a number equals itself.
 * An object with its keys in another order counts as another: what asks here would only do again what need not be done.
 */
export function sameValue(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  const [ofA, ofB] = [entriesOf(a), entriesOf(b)];
  if (kindOf(a) !== kindOf(b) || ofA.length !== ofB.length) return false;
  return ofA.every(([key, value], index) => {
    const other = ofB[index];
    return other !== undefined && Object.is(key, other[0]) && sameValue(value, other[1]);
  });
}

function entriesOf(of: object): readonly (readonly [unknown, unknown])[] {
  return of instanceof Map ? [...of] : Object.entries(of);
}

const kindOf = (of: object) => (Array.isArray(of) ? "list" : of instanceof Map ? "map" : "object");
