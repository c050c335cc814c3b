import type { Edit } from "../plan/edits/edit.js";
import { keyText } from "../plan/edits/value.js";
import type { Plan } from "../plan/model/plan.js";
import type { DoneStep, PhotoReference, TakenReading, WorkRecord } from "../plan/model/work.js";
import { writeMoment } from "../quantity/moments.js";
import { writeQuantity } from "../quantity/write.js";
import { builtBy } from "./built-by.js";
import { entryMin, finishMin } from "./dated.js";
import type { Step } from "./step.js";
import type { WorkFacts, WorkInput } from "./work-input.js";

/** What one may say with a tick, a note or a reading. */
export interface Said {
  /** Minutes since 1970 on the owner's clock. */
  readonly nowMin: number;
  readonly minutes?: number;
  readonly note?: string;
  readonly photos?: readonly PhotoReference[];
}

/**
 * Edits that tick a step: the tick itself, and what it made as built, as the step said. What was really measured is written over it with
 * `measuredEdits`. All take effect together through `editSound`.
 */
export function tickEdits(input: WorkInput, facts: WorkFacts, step: Step, said: Said): Edit[] {
  const when = writeMoment(entryMin(input.plan.source.work, said.nowMin));
  const tick: DoneStep = {
    step: step.id,
    when,
    photos: said.photos ?? [],
    ...(step.pieces.length === 0 ? {} : { covers: step.pieces }),
    ...(said.minutes === undefined ? {} : { minutes: said.minutes }),
    ...(said.note === undefined || said.note === "" ? {} : { note: said.note }),
  };
  return [
    { edit: "add", kind: "step done", name: "", as: tickText(tick) },
    ...builtBy(input, facts, step, when),
  ];
}

/**
 * Edits that take back the last tick of a step, and what that very tick wrote as built. What was measured stays, and a note or a photo
 * that hung on the tick stays with the step. Empty: it is not ticked.
 */
export function undoEdits(plan: Plan, step: string): Edit[] {
  const { workDone, asBuilt } = plan.work;
  const at = workDone.findLastIndex((tick) => tick.step === step);
  const tick = workDone[at];
  if (tick === undefined) return [];
  const { covers: _covers, minutes: _minutes, ...said } = tick;
  const kept: Edit[] =
    tick.note === undefined && tick.photos.length === 0
      ? []
      : [{ edit: "add", kind: "work note", name: "", as: tickText(said) }];
  const made = (["lengths", "holes", "entries", "joints", "ratings"] as const).flatMap((list) =>
    asBuilt[list]
      .flatMap((built, index): Edit[] =>
        tick.when !== undefined && !built.measured && built.when === tick.when && isOf(tick, list, built)
          ? [{ edit: "remove field", at: "as built", field: `${list} / ${index + 1}` }]
          : [],
      )
      .reverse(),
  );
  return [...kept, { edit: "remove field", at: "work done", field: String(at + 1) }, ...made];
}

/** Did the tick of that step write the record? Two steps may have been ticked within one minute. */
function isOf(tick: DoneStep, list: string, built: object): boolean {
  const told = new Map<string, unknown>(Object.entries(built));
  const [kind = "", thing = "", end] = tick.step.split(" / ");
  const covers = (name: unknown) =>
    name === thing || tick.covers?.includes(String(name)) === true || tick.covers === undefined;
  switch (list) {
    case "lengths":
      return kind === "draw" && told.get("run") === thing;
    case "holes":
      return kind === "drill" && covers(told.get("hole"));
    case "entries":
      return kind === "drill box" && told.get("box") === thing;
    case "joints":
      return kind === "join" && told.get("at") === thing && told.get("end") === end;
    default:
      return (
        kind === "battery on" ||
        kind === "prove" ||
        (kind === "connect" && told.get("device") === `${thing} / fuse`)
      );
  }
}

/** A note or photos for a step, done or not. Empty: nothing was said. */
export function noteEdits(record: WorkRecord, step: string, { nowMin, note, photos = [] }: Said): Edit[] {
  if ((note === undefined || note.trim() === "") && photos.length === 0) return [];
  const when = writeMoment(entryMin(record, nowMin));
  const as = tickText({ step, when, photos, ...(note === undefined ? {} : { note }) });
  return [{ edit: "add", kind: "work note", name: "", as }];
}

/** A reading taken now. @throws RangeError if its value is not a number. */
export function readingEdits(record: WorkRecord, reading: TakenReading, nowMin: number): Edit[] {
  const { kind, value, at, against, withOn, lifted = [], meter, step, note } = reading;
  if (Number.isNaN(value)) throw new RangeError("a reading must have a value, got NaN");
  const unit = unitOf[kind];
  const written = value === Number.POSITIVE_INFINITY ? "open" : writeQuantity(value, unit);
  const shows = kind === "marking" ? `marked ${written}` : written;
  const fields = [
    `at: ${keyText(at)}`,
    ...(against === undefined ? [] : [`against: ${keyText(against)}`]),
    ...(withOn.length === 0 ? [] : [`on: ${listText(withOn)}`]),
    ...(lifted.length === 0 ? [] : [`lifted: ${listText(lifted)}`]),
    `shows: ${shows}`,
    ...(meter === undefined
      ? []
      : [`meter: {share: ${writeQuantity(meter.share, "%")}, fixed: ${writeQuantity(meter.fixed, unit)}}`]),
    ...(step === undefined ? [] : [`step: ${keyText(step)}`]),
    `when: ${writeMoment(entryMin(record, nowMin))}`,
    ...(note === undefined || note === "" ? [] : [`note: ${keyText(note)}`]),
  ];
  return [{ edit: "add", kind: "reading", name: "", as: `{${fields.join(", ")}}` }];
}

/** Something was put right now; what was read through it before is no longer held against the boat. */
export function mendEdits(places: readonly string[], nowMin: number, note?: string): Edit[] {
  const said = note === undefined || note.trim() === "" ? "" : `, note: ${keyText(note.trim())}`;
  return places.map((at) => ({
    edit: "add",
    kind: "mend",
    name: "",
    as: `{at: ${keyText(at)}, when: ${writeMoment(nowMin)}${said}}`,
  }));
}

const unitOf = { voltage: "V", current: "A", ohm: "Ω", marking: "A" } as const;

/** Ends the project in hand: all that is dated up to now becomes its own, and the next starts from what was built. */
export function finishEdits(record: WorkRecord, name: string, nowMin: number, note?: string): Edit[] {
  const said = note === undefined || note === "" ? "" : `, note: ${keyText(note)}`;
  return [
    {
      edit: "add",
      kind: "project",
      name,
      as: `{finished: ${writeMoment(finishMin(record, nowMin))}${said}}`,
    },
  ];
}

function tickText(tick: DoneStep): string {
  const { step, covers, when, minutes, note, photos } = tick;
  const fields = [
    `step: ${keyText(step)}`,
    ...(covers === undefined ? [] : [`for: ${listText(covers)}`]),
    ...(when === undefined ? [] : [`when: ${when}`]),
    ...(minutes === undefined ? [] : [`took: ${writeQuantity(minutes / 60, "min")}`]),
    ...(note === undefined ? [] : [`note: ${keyText(note)}`]),
    ...(photos.length === 0 ? [] : [`photos: [${photos.map(photoText).join(", ")}]`]),
  ];
  return `{${fields.join(", ")}}`;
}

const listText = (names: readonly string[]): string => `[${names.map(keyText).join(", ")}]`;

const photoText = ({ file, shows }: PhotoReference): string =>
  shows === undefined ? keyText(file) : `{file: ${keyText(file)}, shows: ${keyText(shows)}}`;
