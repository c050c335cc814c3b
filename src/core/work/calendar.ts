import type { FreeWindow } from "../plan/model/work.js";

const weekMin = 7 * 24 * 60;

/** Free hours of one person, minutes from Monday 00:00 of the first week. Without windows every minute is free. */
export class Calendar {
  /** Windows of one week, rising, not touching [min]. */
  private readonly windows: readonly (readonly [from: number, to: number])[];
  readonly longestMin: number;

  /** @throws RangeError on a window that is none, or lies outside the week. */
  constructor(windows: readonly FreeWindow[]) {
    const list = windows
      .map(({ day, fromH, toH }): [number, number] => {
        if (!(Number.isInteger(day) && day >= 0 && day <= 6))
          throw new RangeError(`day must be 0 (Monday) to 6, got ${day}`);
        if (!(fromH >= 0 && fromH < toH && toH <= 24))
          throw new RangeError(`free hours must rise within a day, got ${fromH} to ${toH}`);
        return [(day * 24 + fromH) * 60, (day * 24 + toH) * 60];
      })
      .sort((a, b) => a[0] - b[0]);
    const joined: [number, number][] = [];
    for (const [from, to] of list) {
      const last = joined.at(-1);
      if (last && from <= last[1]) last[1] = Math.max(last[1], to);
      else joined.push([from, to]);
    }
    // a week that is free from end to end has no windows to keep to
    const always =
      joined.length === 0 ||
      (joined.length === 1 && (joined[0]?.[1] ?? 0) - (joined[0]?.[0] ?? 0) >= weekMin);
    this.windows = always ? [] : joined;
    this.longestMin = always
      ? Number.POSITIVE_INFINITY
      : joined.reduce((most, [from, to]) => Math.max(most, to - from), 0);
  }

  /** First free minute at or after a time. */
  nextFree(at: number): number {
    if (this.windows.length === 0) return at;
    const week = Math.floor(at / weekMin);
    const inWeek = at - week * weekMin;
    for (const [from, to] of this.windows) if (inWeek < to) return week * weekMin + Math.max(from, inWeek);
    return (week + 1) * weekMin + (this.windows[0]?.[0] ?? 0);
  }

  /** End of the free stretch that holds a free minute. */
  private endOf(at: number): number {
    const week = Math.floor(at / weekMin);
    const inWeek = at - week * weekMin;
    for (const [from, to] of this.windows) if (inWeek >= from && inWeek < to) return week * weekMin + to;
    return Number.POSITIVE_INFINITY;
  }

  /**
   * When work of so many minutes is begun at the earliest and done, from a time on. In one go: wholly within a free stretch, the first
   * that is long enough; what is longer than every stretch is spread like other work. Later starts never give an earlier end.
   */
  work(from: number, minutes: number, inOneGo: boolean): { readonly start: number; readonly end: number } {
    let start = this.nextFree(from);
    if (this.windows.length === 0) return { start, end: start + minutes };
    if (inOneGo && minutes <= this.longestMin) {
      while (this.endOf(start) - start < minutes) start = this.nextFree(this.endOf(start));
      return { start, end: start + minutes };
    }
    let left = minutes;
    let at = start;
    for (;;) {
      const room = this.endOf(at) - at;
      if (left <= room) return { start, end: at + left };
      left -= room;
      at = this.nextFree(this.endOf(at));
    }
  }
}
