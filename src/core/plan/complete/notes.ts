import { writeFeetInches } from "../../quantity/write.js";
import type { Assumption } from "../completed.js";
import type { Shows } from "../model/plan.js";
import type { AssumedField } from "./assumed-fields.js";
import type { AssumptionReason } from "./reasons.js";

/** Collects assumptions while a plan is completed. `take` returns the owner's value, or the assumed one after noting it. */
export class Notes {
  readonly list: Assumption[] = [];

  /** Takes defaults without noting them: for the second and later pieces of one entry. */
  get silent(): Notes {
    return new Notes();
  }

  take<T>(
    written: T | undefined,
    assumed: T,
    at: string,
    field: AssumedField,
    reason: AssumptionReason,
    shown: (value: T) => string = String,
  ): T {
    if (written !== undefined) return written;
    this.list.push({ at, field, value: shown(assumed), reason });
    return assumed;
  }
}

export const volts = (value: number) => `${round(value)} V`;
export const celsius = (value: number) => `${round(value)} °C`;
export const percent = (share: number) => `${round(share * 100)} %`;
export const milliohms = (ohm: number) => `${round(ohm * 1000)} mΩ`;
export const amps = (value: number) => `${round(value)} A`;

/** Writes lengths as the plan's owner does: feet and inches, or metres; what is under an inch to 1/64 in, or in millimetres. */
export const lengthsIn = ({ lengths }: Shows) =>
  lengths === "inches"
    ? (valueM: number) => writeFeetInches(valueM, Math.abs(valueM) < 0.0254 ? 64 : 16)
    : (valueM: number) => (Math.abs(valueM) < 0.0254 ? `${round(valueM * 1000)} mm` : `${round(valueM)} m`);

function round(value: number): number {
  return Number(value.toPrecision(4));
}
