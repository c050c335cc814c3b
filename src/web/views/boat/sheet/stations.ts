import type { CraftForm } from "../../../../core/plan/model/form.js";
import type { Shows } from "../../../../core/plan/model/plan.js";
import type { Paper } from "../model/paper.js";

export interface StationTick {
  readonly atM: number;
  /** Empty: a tick without a figure. */
  readonly text: string;
}

const footM = 0.3048;

/** Where the stations are: those that were measured, or an even scale along the boat. */
export function stationsOf(form: CraftForm | undefined, { reach }: Paper): readonly number[] {
  if (form?.kind === "survey")
    return form.stationsM.filter((x) => x >= reach.fromM - 1e-6 && x <= reach.toM + 1e-6);
  return Array.from({ length: 11 }, (_, i) => reach.fromM + ((reach.toM - reach.fromM) * i) / 10);
}

/** A scale under the profile: metres with halves, or feet. */
export function scaleTicks({ reach }: Paper, shows: Shows): StationTick[] {
  const inches = shows.lengths === "inches";
  const step = inches ? footM : 0.5;
  const first = Math.ceil((reach.fromM - 1e-9) / step);
  const last = Math.floor((reach.toM + 1e-9) / step);
  const many = last - first > 14;
  return Array.from({ length: last - first + 1 }, (_, i): StationTick => {
    const n = first + i;
    const every = many ? 4 : 2;
    const said = n % every === 0;
    return { atM: n * step, text: said ? (inches ? `${n} ft` : `${n / 2} m`) : "" };
  });
}
