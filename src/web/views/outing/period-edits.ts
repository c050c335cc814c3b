import type { Edit } from "../../../core/plan/edits/edit.js";
import { keyText } from "../../../core/plan/edits/value.js";
import type { OnPeriod, Outing } from "../../../core/plan/model/outing.js";
import { writtenTime } from "./times.js";

/** The outing where edits look for it: gear may have the same name. */
export const placeOf = ({ name }: Pick<Outing, "name">): string => `outings / ${name}`;

/** What is written of a period as it is in the file. */
export interface WrittenPeriod {
  readonly from: boolean;
  readonly to: boolean;
  readonly runs: boolean;
  readonly level: boolean;
}

/** Edits that make a period say what it shall; what is as it would be anyway is left out or not touched. */
export function periodEdits(outing: Outing, index: number, to: OnPeriod, written: WrittenPeriod): Edit[] {
  const was = outing.on[index];
  if (!was) return [];
  const key = (field: string) => `on / ${index + 1} / ${field}`;
  const set = (field: string, value: string): Edit => ({
    edit: "set field",
    at: placeOf(outing),
    field: key(field),
    to: value,
  });
  const drop = (field: string): Edit => ({ edit: "remove field", at: placeOf(outing), field: key(field) });
  const edits: Edit[] = [];
  if (to.fromH !== was.fromH) edits.push(set("from", writtenTime(to.fromH)));
  if (to.toH !== was.toH) edits.push(set("to", writtenTime(to.toH)));
  if (to.duty !== was.duty)
    edits.push(...(to.duty < 1 ? [set("runs", dutyText(to.duty))] : written.runs ? [drop("runs")] : []));
  if (to.level !== was.level)
    edits.push(
      ...(to.level < 1 ? [set("level", levelText(to.level))] : written.level ? [drop("level")] : []),
    );
  return edits;
}

/** `5 min each hour`, to the minute where it is one, else to the second. */
export function dutyText(duty: number): string {
  const minutes = duty * 60;
  return Math.abs(minutes - Math.round(minutes)) < 1e-6
    ? `${Math.round(minutes)} min each hour`
    : `${Math.round(duty * 3600)} s each hour`;
}

export const levelText = (level: number): string => `${Number((level * 100).toFixed(2))} %`;

/** A new line of what is on, from the start to the end. */
export function addPeriodEdit(outing: Outing, what: string, hasList: boolean): Edit {
  const item = `{what: ${keyText(what)}}`;
  return hasList
    ? { edit: "set field", at: placeOf(outing), field: `on / ${outing.on.length + 1}`, to: item }
    : { edit: "set field", at: placeOf(outing), field: "on", to: `[${item}]` };
}

/** Another length of the outing; what would end after it ends with it. */
export function lastsEdits(
  outing: Outing,
  lastsH: number,
  typed: string,
  written: readonly WrittenPeriod[],
): Edit[] {
  const shortened = outing.on.flatMap((period, index): Edit[] => {
    const field = (name: string) => `on / ${index + 1} / ${name}`;
    const at = { edit: "set field", at: placeOf(outing) } as const;
    return [
      ...(period.fromH > lastsH ? [{ ...at, field: field("from"), to: writtenTime(lastsH) }] : []),
      ...(period.toH > lastsH && written[index]?.to === true
        ? [{ ...at, field: field("to"), to: writtenTime(lastsH) }]
        : []),
    ];
  });
  return [{ edit: "set field", at: placeOf(outing), field: "lasts", to: typed }, ...shortened];
}
