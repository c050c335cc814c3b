import { readConductorSize } from "./conductor-size.js";
import type { QuantityFault, QuantityKind, QuantityResult } from "./fault.js";
import { readAge, readClockTime, readDraw, readDuty, readVoltageRange } from "./forms.js";
import { readHours, readMoment, readShown } from "./moments.js";
import { readQuantity } from "./read.js";

/** What is wrong with a text as a quantity of that kind, or undefined where it can be read. For fields one types into. */
export function faultOf(text: string, kind: QuantityKind): QuantityFault | undefined {
  const result = read(text, kind);
  return result.ok ? undefined : result.fault;
}

function read(text: string, kind: QuantityKind): QuantityResult<unknown> {
  switch (kind) {
    case "conductor size":
      return readConductorSize(text);
    case "draw":
      return readDraw(text);
    case "voltage range":
      return readVoltageRange(text);
    case "clock time":
      return readClockTime(text);
    case "duty":
      return readDuty(text);
    case "age":
      return readAge(text);
    case "date":
      return readMoment(text);
    case "hours of a day":
      return readHours(text);
    case "reading":
      return readShown(text);
    default:
      return readQuantity(text, kind);
  }
}
