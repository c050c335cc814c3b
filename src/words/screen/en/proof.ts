import { beyondWords } from "../../beyond-words.js";

/** Readings, faults, and the card for the water. */
export const proof = {
  parts: { sheet: "Readings to take", faults: "What may be wrong", water: "On the water" },
  sheetHint:
    "In this order, battery off first. Type what the meter shows beside each; a bare number is in the unit shown. Local rules, makers' instructions and licensed practice come first.",
  meterShows: (how: string) => `The meter shows: ${how}`,
  meterShowsNow: "The meter shows",
  markedNow: "Marked with",
  notRead: "not read yet",
  notAReading: (unit: string) => `a reading is wanted, such as 12.3 ${unit}`,
  otherKind: (unit: string) => `a reading in ${unit} is wanted here`,
  noReadings:
    "No reading is on record yet. Take some from the sheet; what may be wrong is then worked out here.",
  suspects: "Likeliest first",
  others: (count: number) => `Less likely: ${count} more`,
  unexplained:
    "None of these explains the readings well: read again what looks odd, or look for more than one fault.",
  notApart: (count: number) =>
    `The readings so far can't tell the first ${count} apart, and nothing you did wrong makes it so: one more reading may, or look at them in this order.`,
  next: "Measure next",
  orElse: "Or:",
  nothingMore:
    "No further reading would tell more than a look would: look at the suspects in this order, mend what you find, and measure again.",
  again: "Measure again, to prove the mend",
  againHint: "At the far end of the way a second fault would show too: until then the mend is not proven.",
  mendedNow: "I have mended this",
  mends: "Mended",
  takeBack: "Take back",
  mendNote: "Note",
  mendNoteHint: "what was wrong, what you put in",
  beforeMend: (reading: string) => `${reading} before the mend`,
  aged: "Changed since the project was finished",
  judged: "Readings on record",
  howLong: "How long will it last?",
  battery: "Battery",
  voltmeter: "The voltmeter shows",
  whatWasOn: "With so much on",
  fromNowOn: "To be used from now on",
  typeVolts: "Type what the voltmeter shows.",
  left: (charge: string, range: string, hours: string | undefined) =>
    hours === undefined
      ? `About ${charge} charged (${range}); nothing drawn.`
      : `About ${charge} charged (${range}); ${hours} to the reserve.`,
  beyond: beyondWords,
  hoursOf: (battery: string, reserve: string) => `Hours left in ${battery}, to its reserve of ${reserve}`,
  turnOff: "Turn off first",
  switches: "Which switch, which fuse",
  spares: "Spares to carry",
};
