import type {
  DoneStep,
  FinishedProject,
  FreeWindow,
  Mend,
  PhotoReference,
  StepNote,
  TakenReading,
} from "../model/work.js";
import { byForm, listOf, map, named, refine, shared } from "./combine.js";
import { names } from "./common.js";
import { fields, optional, otherwise, required } from "./fields.js";
import { hoursOfDay, moment, quantity, share, shown } from "./quantities.js";
import { text } from "./scalars.js";
import type { Shape } from "./shape.js";

export const photoKeys = fields("a photo", {
  file: required("file", text, "Name of the file, beside the plan or in the page's own store."),
  shows: optional("shows", text, "What it shows."),
});

/** `photos: [hole-1.jpg]`, or with what each shows. */
export const photos = otherwise(
  "photos",
  listOf(byForm({ scalar: map(text, (file): PhotoReference => ({ file })), section: photoKeys })),
  [],
  "Photos by file name.",
);
export const when = optional("when", moment, "Day, or day and time.");
export const note = optional("note", text, "In your own words.");
const step = required("step", text, "The step, as the order of work calls it: `draw / lamp trunk`.");

export const doneKeys = fields("a step that was done", {
  step,
  covers: optional("for", names, "Pieces it was done for. Left out: all there were."),
  when,
  hours: optional("took", quantity("time", { min: 0, max: 1000 }), "How long it took."),
  note,
  photos,
});
const workDone: Shape<readonly DoneStep[]> = shared(
  "steps done",
  listOf(
    map(
      doneKeys,
      ({ hours, ...rest }): DoneStep => (hours === undefined ? rest : { ...rest, minutes: hours * 60 }),
    ),
  ),
);

export const noteKeys = fields("a note on a step", { step, when, note, photos });
const notes: Shape<readonly StepNote[]> = shared("notes on steps", listOf(noteKeys));

export const meterKeys = fields("how a meter errs", {
  share: otherwise("share", share, 0, "Share of what it shows."),
  fixed: optional("fixed", shown, "Besides that, in the unit of the reading: `0.02 V`."),
});

export const readingKeys = fields("a reading", {
  at: required("at", text, "Point at the plus probe, `helm / lamps +`; of a current the branch it flows in."),
  against: optional("against", text, "Point at the other probe."),
  withOn: otherwise("on", names, [], "Gear that was on."),
  lifted: optional(
    "lifted",
    names,
    "Wires taken off at their end towards the supply, by their stretch of the circuit.",
  ),
  shown: required(
    "shows",
    shown,
    "What the meter showed: volts, amperes or ohms; `open` for no end of ohms. What is printed on a fuse: `marked 10 A`.",
  ),
  meter: optional("meter", meterKeys, "How far the meter may be off, by its leaflet."),
  step: optional("step", text, "Step it was taken for."),
  when,
  note,
});
const reading: Shape<TakenReading> = refine(readingKeys, ({ shown: read, meter, ...rest }, say) => {
  const fixed = meter?.fixed;
  const bad = fixed !== undefined && !(fixed.kind === read.kind && fixed.value >= 0 && fixed.value < 1e9);
  if (bad)
    say(
      {
        code: "other unit",
        expected: { kind: "quantity", of: unitOf[read.kind], example: exampleOfError[read.kind] },
      },
      "meter",
      "fixed",
    );
  return {
    ...rest,
    ...read,
    ...(meter === undefined ? {} : { meter: { share: meter.share, fixed: bad ? 0 : (fixed?.value ?? 0) } }),
  };
});
const unitOf = { voltage: "voltage", current: "current", ohm: "resistance", marking: "current" } as const;
const exampleOfError = { voltage: "0.02 V", current: "0.05 A", ohm: "0.3 Ω", marking: "0 A" } as const;
const readings: Shape<readonly TakenReading[]> = shared("readings", listOf(reading));

const mendKeys = fields("something that was put right", {
  at: required(
    "at",
    text,
    "What was mended: a stretch of the circuit as `prove` names it, a cable, a fuse, a battery or gear.",
  ),
  when,
  note,
});
const mends: Shape<readonly Mend[]> = shared("mends", listOf(mendKeys));

const days = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"] as const;
const stretches = byForm({
  scalar: map(hoursOfDay, (one) => [one]),
  list: listOf(hoursOfDay),
});
const day = (name: (typeof days)[number]) => otherwise(name, stretches, [], "`19:00 to 21:30`, or a list.");

export const freeKeys = fields("free hours of a week", {
  monday: day("monday"),
  tuesday: day("tuesday"),
  wednesday: day("wednesday"),
  thursday: day("thursday"),
  friday: day("friday"),
  saturday: day("saturday"),
  sunday: day("sunday"),
});
const freeHours: Shape<readonly FreeWindow[]> = map(freeKeys, (given) =>
  days.flatMap((name, at) => given[name].map((one): FreeWindow => ({ day: at, ...one }))),
);

export const projectKeys = fields("a finished project", {
  finished: optional("finished", moment, "Day it was finished."),
  note,
  workDone: otherwise("work done", workDone, [], "Steps that were done."),
  notes: otherwise("work notes", notes, [], "Notes and photos of its steps."),
  readings: otherwise("readings", readings, [], "Readings taken: what later ones are compared with."),
});
const projects: Shape<readonly FinishedProject[]> = named(projectKeys);

/** The sections of the plan about work, `as built` apart. */
export const workSections = {
  freeHours: otherwise(
    "free hours",
    freeHours,
    [],
    "Hours of a week in which you work. Left out: evenings and the weekend are assumed.",
  ),
  workDone: otherwise("work done", workDone, [], "Steps of the order of work that were ticked."),
  notes: otherwise("work notes", notes, [], "Notes and photos of steps."),
  readings: otherwise("readings", readings, [], "Readings taken with a meter."),
  mends: otherwise(
    "mends",
    mends,
    [],
    "What was put right: readings taken through it before are no longer held against the boat.",
  ),
  projects: otherwise("projects", projects, [], "Finished projects by name."),
} as const;
