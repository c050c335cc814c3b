import { good, type QuantityResult } from "./fault.js";
import { bad } from "./kinds.js";
import { readQuantity } from "./read.js";
import { plainSigns } from "./signs.js";

/** A day on the owner's own calendar, and where it matters the time on the owner's own clock. */
export interface Moment {
  /** As written: `2026-04-11` or `2026-04-11 19:20`. */
  readonly text: string;
  /** Minutes since 1970-01-01 00:00 on that clock; of a day alone, its beginning. */
  readonly atMin: number;
  readonly hasTime: boolean;
}

/** Reads a day with or without a time: `2026-04-11`, `2026-04-11 19:20`. No time zone: both are the owner's own. */
export function readMoment(text: string): QuantityResult<Moment> {
  const kind = "date";
  const match = /^(\d{4})-(\d{2})-(\d{2})(?:[ T](\d{2}):(\d{2}))?$/.exec(text.trim().slice(0, 32));
  if (match === null) return bad("no number", text, kind);
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0] = match
    .slice(1)
    .map((part) => Number(part ?? 0));
  const date = new Date(Date.UTC(year, month - 1, day));
  const real = date.getUTCMonth() === month - 1 && date.getUTCDate() === day && year >= 1970;
  if (!real || hour > 23 || minute > 59) return bad("absurd", text, kind);
  return good({
    text: text.trim(),
    atMin: date.getTime() / 60_000 + hour * 60 + minute,
    hasTime: match[4] !== undefined,
  });
}

/** Writes minutes since 1970 as `readMoment` reads them. @throws RangeError unless whole and from 1970 to 9999. */
export function writeMoment(atMin: number): string {
  const date = new Date(atMin * 60_000);
  if (!(Number.isInteger(atMin) && atMin >= 0 && date.getUTCFullYear() <= 9999))
    throw new RangeError(`a moment must be whole minutes from 1970 to 9999, got ${atMin}`);
  return date.toISOString().slice(0, 16).replace("T", " ");
}

/** Minutes since Monday 00:00 of the week a moment lies in. 1970-01-01 was a Thursday. */
export function minuteOfWeek(atMin: number): number {
  const week = 7 * 24 * 60;
  return (((atMin + 3 * 24 * 60) % week) + week) % week;
}

/** The date of minutes counted from Monday 0:00 of the week that `nowMin` lies in: `2026-04-11`. */
export function dateFromMonday(sinceMondayMin: number, nowMin: number): string {
  const dayMin = 24 * 60;
  const mondayMin = nowMin - minuteOfWeek(nowMin);
  return writeMoment(Math.floor(mondayMin + Math.floor(sinceMondayMin / dayMin) * dayMin)).slice(0, 10);
}

/** Reads a stretch of a day: `19:00 to 21:30`, `9:00 to 24:00`. @returns hours of the day. */
export function readHours(text: string): QuantityResult<{ readonly fromH: number; readonly toH: number }> {
  const kind = "hours of a day";
  const match = /^(\d{1,2}):(\d{2})(?:\s+to\s+|\s*[–-]\s*)(\d{1,2}):(\d{2})$/i.exec(
    plainSigns(text.slice(0, 60)),
  );
  if (match === null) return bad("no number", text, kind);
  const [fromHour = 0, fromMinute = 0, toHour = 0, toMinute = 0] = match.slice(1).map(Number);
  const [fromH, toH] = [fromHour + fromMinute / 60, toHour + toMinute / 60];
  if (fromMinute > 59 || toMinute > 59 || toH > 24 || fromH > 24) return bad("absurd", text, kind);
  return fromH < toH ? good({ fromH, toH }) : bad("order", text, kind);
}

/** What a meter shows: volts, amperes or ohms; or what is printed on a fuse. */
export interface Shown {
  readonly kind: "voltage" | "current" | "ohm" | "marking";
  /** V, A or Ω. An ohmmeter that shows nothing (`open`): Infinity. */
  readonly value: number;
}

/** Reads what a meter shows, as its unit says: `12.31 V`, `-0.02 V`, `0.4 A`, `0.3 Ω`, or `open` for an ohmmeter that shows no end; `marked 10 A` is read off a fuse. */
export function readShown(text: string): QuantityResult<Shown> {
  const marking = /^\s*marked\s+(.*)$/s.exec(text)?.[1];
  if (marking !== undefined) {
    const read = readQuantity(marking, "current");
    return read.ok ? good({ kind: "marking", value: read.value.value }) : read;
  }
  if (text.trim() === "open") return good({ kind: "ohm", value: Number.POSITIVE_INFINITY });
  const tries = [
    ["voltage", "voltage"],
    ["current", "current"],
    ["ohm", "resistance"],
  ] as const;
  const reads = tries.map(([kind, dimension]) => ({ kind, read: readQuantity(text, dimension) }));
  for (const { kind, read } of reads) if (read.ok) return good({ kind, value: read.value.value });
  const [first] = reads;
  const fault = first === undefined || first.read.ok ? undefined : first.read.fault;
  return bad(fault?.code ?? "no number", text, "reading", {
    ...(fault?.foundKind && { foundKind: fault.foundKind }),
    ...(fault?.nearest && { nearest: fault.nearest }),
  });
}
