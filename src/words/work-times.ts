import { dateFromMonday } from "../core/quantity/moments.js";
import { hours } from "./numbers.js";
import { english } from "./steps/english.js";
import type { StepWords } from "./steps/step-words.js";

const day = 24 * 60;
/** How long from beginning to end: hours, or days where it is two or more. */
export const spanWords = (minutes: number, words: StepWords = english): string =>
  minutes < 2 * day ? hours(minutes / 60) : words.days(Math.round(minutes / day));

/** `19:05`, of minutes since Monday 0:00. */
export function clockText(startMin: number): string {
  return `${Math.floor((startMin % day) / 60)}:${String(Math.floor(startMin % 60)).padStart(2, "0")}`;
}

/** `Saturday 2026-04-11`, or `Saturday, week 2` where no date is known; empty where it is the day of what came before. */
export function dayText(
  startMin: number,
  beforeMin: number | undefined,
  nowMin: number | undefined,
  words: StepWords = english,
): string {
  const date = Math.floor(startMin / day);
  if (beforeMin !== undefined && Math.floor(beforeMin / day) === date) return "";
  const weekday = words.weekdays[date % 7] ?? "";
  if (nowMin === undefined) return words.week(weekday, Math.floor(date / 7) + 1);
  return `${weekday} ${dateFromMonday(startMin, nowMin)}`;
}

/** `Saturday, week 1, from 9:00`. */
export function sessionWords(
  startMin: number,
  beforeMin: number | undefined,
  nowMin: number | undefined,
  words: StepWords = english,
): string {
  const day = dayText(startMin, beforeMin, nowMin, words);
  return day === "" ? "" : words.session(day, clockText(startMin));
}
