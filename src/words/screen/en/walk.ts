/** The walk through an example, one short note after the other. */
export const walk = {
  title: "A look around",
  start: "Show me around",
  step: (no: number, of: number) => `${no} of ${of}`,
  next: "Next",
  before: "Back",
  leave: "Leave",
  done: "Done",
  notes: {
    ledger:
      "This line stays in sight: how long the battery lasts, where most voltage is lost, and what was found. Tap a figure to see how it came about.",
    stages:
      "These are the stages of the job, from survey to log. Go to any of them at any time; nothing has to be finished first.",
    boat: "The boat to scale. Tap a piece to open its slip, drag it to another place: every figure follows.",
    slip: "The slip tells what is written about a thing, what was assumed, and what was worked out. Change a value here and watch the line above.",
    findings:
      "What is wrong, with figure, limit and source; what could be better; and what could not be checked, which is never the same as fine.",
    keeping:
      "Every edit is kept in this browser at once, and can be undone, even tomorrow. Under Tools you save a copy to a file. Now change what you like: this boat is yours to try on.",
  },
};
