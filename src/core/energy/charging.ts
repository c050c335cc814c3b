import { restingV } from "../circuit/battery-voltage.js";
import type { Charger, Chemistry } from "../plan/model/supply.js";
import { chargeLimits } from "../reference/batteries.js";
import { chargeAcceptance, solarYield } from "../reference/battery-charging.js";
import type { ChargingFigures } from "./types.js";

/** One charger and the battery it charges, in plain numbers. */
export interface ChargingInput {
  readonly charger: string;
  readonly kind: Charger["kind"];
  readonly battery: string;
  readonly chemistry: Chemistry;
  readonly nominalV: number;
  /** What it holds at this temperature and age: `usableAh` of a trace [Ah]. */
  readonly capacityAh: number;
  /** 0…1. */
  readonly fromCharge: number;
  /** Greatest current it gives [A]; or, for a solar panel, its peak power [W] and the hours of full sun in a day. */
  readonly outputA?: number;
  readonly outputW?: number;
  readonly sunHoursPerDay?: number;
  readonly absorptionV: number;
  /** Of the battery's cells [°C]. */
  readonly temperatureC: number;
  /** The charger stops below this by itself [°C]. */
  readonly stopsBelowC?: number;
}

/**
 * Hours at a charger until full: bulk at its greatest current, then the taper of the ampere-hour law, I = lacking charge / τ,
 * down to the tail current at which a battery counts as full. An approximation from common practice; loads meanwhile are left out.
 * @param lackingAh Charge still to be put in, losses included [Ah].
 * @param currentA Greatest current of the charger [A].
 * @param tau Time of the ampere-hour law [h].
 * @param tailA Current at which the battery counts as full [A].
 * @throws RangeError unless the charge is not negative and the others are above zero.
 */
export function hoursToFull(lackingAh: number, currentA: number, tau: number, tailA: number): number {
  if (!(lackingAh >= 0)) throw new RangeError(`lacking charge must be ≥ 0 Ah, got ${lackingAh}`);
  if (!(currentA > 0)) throw new RangeError(`charging current must be > 0 A, got ${currentA}`);
  if (!(tau > 0)) throw new RangeError(`time of the ampere-hour law must be > 0 h, got ${tau}`);
  if (!(tailA > 0)) throw new RangeError(`tail current must be > 0 A, got ${tailA}`);
  const fullAh = tau * tailA;
  if (lackingAh <= fullAh) return 0;
  const taperFromAh = Math.max(fullAh, Math.min(lackingAh, tau * currentA));
  return (lackingAh - taperFromAh) / currentA + tau * Math.log(taperFromAh / fullAh);
}

/** Current the charger gives into this battery [A]; undefined where the plan does not say. */
function currentOf({ kind, outputA, outputW, absorptionV }: ChargingInput): number | undefined {
  const rated = outputA ?? (outputW === undefined ? undefined : outputW / absorptionV);
  return rated !== undefined && kind === "solar" ? rated * solarYield.share : rated;
}

/**
 * Time to charge one battery from one charger.
 * `too cold`: the charger stops, or cells of this chemistry must not be charged at this temperature.
 * `unchecked`: output or hours of sun are not known, or the absorption voltage is too low ever to fill this chemistry.
 * @throws RangeError if capacity, voltage or output is not above zero, or the charge is outside 0…1.
 */
export function chargingTime(input: ChargingInput): ChargingFigures {
  const { charger, battery, chemistry, capacityAh, fromCharge, temperatureC, nominalV, absorptionV } = input;
  if (!(capacityAh > 0)) throw new RangeError(`capacity must be > 0 Ah, got ${capacityAh}`);
  if (!(fromCharge >= 0 && fromCharge <= 1)) throw new RangeError(`charge must be 0…1, got ${fromCharge}`);
  if (!(absorptionV > 0)) throw new RangeError(`absorption voltage must be > 0 V, got ${absorptionV}`);
  const about = { charger, battery, fromCharge };
  const limits = chargeLimits[chemistry];
  const cellsFromC = "minC" in limits ? limits.minC : -Infinity;
  if (Number.isNaN(temperatureC)) return { ...about, state: "unchecked" };
  if (temperatureC < Math.max(cellsFromC, input.stopsBelowC ?? -Infinity))
    return { ...about, state: "too cold" };
  const currentA = currentOf(input);
  const needsSun = input.kind === "solar" && !((input.sunHoursPerDay ?? 0) > 0);
  if (currentA === undefined || needsSun || absorptionV <= restingV(chemistry, nominalV, 1)) {
    return { ...about, state: "unchecked" };
  }
  const { hours: tau, tailPerAh } = chargeAcceptance[chemistry];
  const lackingAh = ((1 - fromCharge) * capacityAh) / limits.efficiency;
  const hours = hoursToFull(lackingAh, currentA, tau, tailPerAh * capacityAh);
  const { sunHoursPerDay } = input;
  if (input.kind !== "solar" || sunHoursPerDay === undefined) return { ...about, hours, state: "works" };
  return { ...about, hours, days: hours / sunHoursPerDay, state: "works" };
}
