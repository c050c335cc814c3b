/** Saving, history, tabs, files. */
export const keeping = {
  kept: "Kept",
  keeping: "Keeping …",
  failed: "Not kept",
  failedWhy: (reason: string) => `The browser refused to keep the last edit: ${reason}. Save to a file now.`,
  unkept: "Not kept in this browser",
  onlyHere: "The only copy is in this browser.",
  onlyHereHint: "A browser can lose what it keeps. Save a copy somewhere else.",
  backUp: (edits: number) =>
    `${edits} edits are kept in this browser and nowhere else. A browser can lose what it keeps: save a copy to a file.`,
  backUpLater: "Later",
  saveCopy: "Save a copy",
  saveTo: (file: string) => `Save to ${file}`,
  saved: (file: string) => `Saved to ${file}.`,
  savedAs: (when: string) => `Last saved to a file ${when}`,
  fileChanged: (file: string) =>
    `${file} was changed by something else since it was opened. It was not overwritten; save under another name, or open it again.`,
  fileFailed: (reason: string) => `The file could not be saved: ${reason}`,
  persisted: "The browser has agreed not to clear it by itself.",
  notPersisted: "The browser may clear it when it runs out of room.",
  fromOtherTab: "Changed in another tab; this one follows.",
  merged: "Your change and one from another tab were both taken in.",
  bothKept:
    "This change and one made in another tab touch the same place. Both are kept: the other is shown, yours is in the log.",
  compareBoth: "Compare the two",
  takeMine: "Take mine",
  leaveIt: "Leave it so",
  notMade:
    "The text was not taken over: the part of the page that reads unusual writing could not be fetched. Try again.",
  undoMoved: "The plan was changed in another tab just now; nothing was undone.",
  updateReady: "A newer version of this page is ready.",
  updateNow: "Take it now",
  updateLater: "Later",
  olderFormat: (from: number) =>
    `This file was written in format ${from} and was brought up to date. The file itself is untouched until you save.`,
  newerDatabase:
    "What is kept in this browser was written by a newer Skiffloom. Reload the page; nothing was changed.",
  brokenHistory: (step: number) =>
    `The kept history is damaged at step ${step}. It is shown up to there, read only; nothing was overwritten. Save a copy.`,
  damaged: "This file can't be read as a plan. It is shown as it is, and nothing is written to it.",
  makeCopy: "Mend a copy",
  makeCopyHint: "Puts the text on the shelf as a new plan, where you can mend it. The file stays as it is.",
  newer: "This file was written by a newer Skiffloom. It is shown as it is, and nothing is written to it.",
  tooLarge: (limit: string) => `The file is larger than a plan may be (${limit}).`,
  fileEmpty: "The file is empty.",
  fileUnread: (reason: string) => `The file could not be read: ${reason}`,
  notRead: "The browser could not read what it keeps of this plan. Nothing was changed.",
  noPlanHere: "There is no such plan in this browser.",
  otherTabTakesOver: "Another tab has taken over with a newer version. Reload this one.",
};
