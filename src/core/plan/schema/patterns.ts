import type { QuantityKind } from "../../quantity/fault.js";
import { type Dimension, dimensions, unitsOf } from "../../quantity/units.js";

/**
 * Regular expressions for the JSON Schema. They let through everything the reader takes in its usual writing
 * and stop the common slips (no unit, a unit of another kind); the reader has the last word.
 */
export function patternOf(kind: QuantityKind, signed: boolean): string {
  const dimension = dimensions.find((each) => each === kind);
  return `^${dimension === undefined ? forms(kind) : plain(dimension, signed)}$`;
}

const amount = "(\\d+[ -]+\\d+/\\d+|\\d+/\\d+|\\d+ ?[½¼¾⅓⅔⅛⅜⅝⅞]|[½¼¾⅓⅔⅛⅜⅝⅞]|\\d+\\.?\\d*|\\.\\d+)";

function plain(dimension: Dimension, signed = false): string {
  const one = `${amount} ?(${signs(dimension)})`;
  const minus = signed ? "[-−]?" : "";
  return dimension === "length" || dimension === "time" ? `${minus}${one}( ?${one})*` : `${minus}${one}`;
}

function signs(dimension: Dimension): string {
  const all = unitsOf(dimension).flatMap((unit) => [unit.sign, ...unit.also]);
  const pasted =
    dimension === "length" ? ["″", "′", "”", "’"] : dimension === "resistance" ? ["Ω", "mΩ"] : [];
  return [...all, ...pasted].map((sign) => sign.replace(/[.^$*+?()[\]{}|\\]/g, "\\$&")).join("|");
}

function forms(kind: QuantityKind): string {
  switch (kind) {
    case "conductor size":
      return "(([1-9]\\d?|[1-4]/0|0{1,4}) ?AWG|AWG ?([1-9]\\d?|[1-4]/0|0{1,4})|(\\d+\\.?\\d*|\\.\\d+) ?(mm2|mm²|mm\\^2|sq mm))";
    case "draw":
      return `((${plain("power")}|${plain("current")})( (at|@) ${plain("voltage")})?|${plain("resistance")})`;
    case "voltage range":
      return `${amount}( ?(${signs("voltage")}))?( to | ?[–…] ?)${plain("voltage")}`;
    case "clock time":
      return "([01]?\\d|2[0-3]):[0-5]\\d";
    case "duty":
      return `${plain("time")} (each|every|per|in each) (${plain("time")}|${signs("time")})`;
    case "date":
      return "\\d{4}-[01]\\d-[0-3]\\d([ T][0-2]\\d:[0-5]\\d)?";
    case "hours of a day":
      return "\\d{1,2}:[0-5]\\d( to | ?[–-] ?)\\d{1,2}:[0-5]\\d";
    case "reading":
      return `([-−]?(${plain("voltage")}|${plain("current")})|${plain("resistance")}|open|marked ${plain("current")})`;
    case "age":
      return plain("time");
    default:
      return plain(kind);
  }
}
