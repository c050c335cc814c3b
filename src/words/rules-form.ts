import type { RuleId } from "../core/findings/rules.js";
import type { RuleWords } from "./rule-words.js";

export const formRules = {
  "form-stations": {
    title: "Stations run from aft forward, and there are enough of them",
    why: "A line is drawn through its stations in order. Out of order, or with one alone, it is no line.",
    mend: "Write the stations from the transom forward, each once, with a figure for each line at two of them at least.",
    says: (say, { terms }) =>
      terms?.kind === "stations out of order"
        ? `On ${say.at} a station at ${say.figure} follows one at ${say.limit}.`
        : `${say.at === "craft" ? "The form" : say.at} has ${say.figure} ${terms?.what ?? "stations"}; ${say.limit} are the least.`,
  },
  "form-table": {
    title: "Every column and number of a table of offsets can be read",
    why: "A column that is not understood is left out, and the form is drawn without it.",
    mend: "Call the first column station and the others NAME half-breadth and NAME height; write numbers as the table says.",
    says: (say, { terms }) =>
      terms?.kind === "unknown column"
        ? `The heading of ${say.at} is not understood: “${terms.found ?? ""}”.`
        : `In ${say.at} of the table stands “${terms?.found ?? ""}”, which is no number of its kind.`,
  },
  "form-lines-cross": {
    title: "Lines lie one above the other",
    why: "Where two lines cross one of them was measured, or written, wrong; faces between them turn inside out.",
    mend: "Measure both again at the place where they cross.",
    says: (say, { terms }) =>
      `${say.at} passes ${say.figure} below or inside ${terms?.by ?? "the line under it"}, at station ${say.step("right")}.`,
  },
  "form-open-surface": {
    title: "The hull is closed",
    why: "With a gap at the centreline or an end, what she displaces is anyone's guess.",
    mend: "Let the keel run as far as every other line, on the centreline, and end lines that stop earlier on it too.",
    says: (say, { terms }) =>
      terms?.where === "centreline"
        ? `${say.at}, the lowest line, lies ${say.figure} off the centreline.`
        : terms?.where === "aft"
          ? `${say.at} begins at ${say.figure}, the hull at ${say.limit}: it is open aft.`
          : `${say.at} leaves the hull open at the fore end.`,
  },
  "form-unfair": {
    title: "Measurements are fair",
    why: "A figure off the line of its neighbours is a slip of the tape or a real bump. Smoothed away, one would never know which.",
    mend: "Measure that one again. If it comes out the same, the boat has a bump there: leave it.",
    says: (say, { terms }) =>
      `The ${terms?.coordinate ?? "figure"} of ${say.at} is ${say.figure} off the line of its neighbours (${say.limit} could be chance); ${say.step("right")} would be fair.`,
  },
  "form-contradiction": {
    title: "Check readings agree with the form",
    why: "A girth or a breadth that disagrees says that one of the figures under it is wrong, though each looks fair.",
    mend: "Measure it again, then the figures it spans.",
    says: (say, { terms }) =>
      `The ${terms?.reading === "along" ? "length along the line" : (terms?.reading ?? "reading")} on ${say.at} is ${say.figure} off what the form gives (${say.limit} could be chance); it should read ${say.step("right")}.`,
  },
  "form-not-judged": {
    title: "There are figures enough to judge fairness",
    why: "Under six figures a line fits through anything, a slip of the tape too.",
    mend: "Take the stations that skiffloom form proposes next.",
    says: (say) => `Whether ${say.all} ${say.many ? "are" : "is"} fair cannot be judged yet.`,
    unchecked: (say) =>
      `Whether ${say.all} ${say.many ? "are" : "is"} fair was not judged: a line needs six figures of a kind.`,
  },
  "not-on-the-form": {
    title: "Faces, points and readings lie on the form",
    why: "What lies where the form has nothing cannot be set out from it.",
    mend: "Let it start and end where its lines do, cut a face in two at a corner, or measure the line farther.",
    says: (say, { terms, figure }) => {
      if (terms?.kind === "corner inside the strip")
        return `${say.at} runs over the corner at ${terms.by ?? "a line"}: make it two faces.`;
      if (figure === undefined) return `${say.at} lies between lines that the form does not have.`;
      if (terms?.what === "outline") return `The outline of ${say.at} encloses nothing.`;
      const line = terms?.by ?? say.at;
      return `${say.at} asks for ${say.figure}, but ${line === say.at ? "it" : line} ends at ${say.limit}.`;
    },
    unchecked: (say) =>
      `${say.all} could not be laid out: the plan gives no form of the craft that can be used.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;

export const markRules = {
  "mark-mirror": {
    title: "Reference points do not all lie in one line",
    why: "From points in one line two tapes meet in two places, a mirror image of each other. One marks the wrong one.",
    mend: "Use a point off that line for the check, or look twice on which side the mark belongs.",
    says: (say, { terms }) =>
      `All points that ${say.at} is set out from lie in one line: ${terms?.by ?? ""}.`,
  },
  "mark-misplaced": {
    title: "Marks stand where they should before they are drilled",
    why: "A hole cannot be moved. A mark can.",
    mend: "Rub it out, move it as told, and measure again.",
    says: (say, { terms, working = [] }) => {
      const moves = [
        ["move along", terms?.along],
        ["move up or down", terms?.up],
      ].flatMap(([symbol = "", way = ""]) => {
        const value = working.find((one) => one.symbol === symbol)?.value;
        // under half a sixteenth of an inch there is nothing to move
        return typeof value === "number" && value > 8e-4 ? [`${say.step(symbol)} ${way}`] : [];
      });
      return `The mark of ${say.at} stands ${say.figure} off its place (${say.limit} may stay): move it ${moves.join(" and ")}. Do not drill it.`;
    },
  },
  "mark-poor-crossing": {
    title: "The two tapes of a mark cross well",
    why: "Where they cross at a flat angle, a millimetre of tape is a centimetre of hull.",
    mend: "Add a reference point off to the side of it, so that the tapes meet nearer to a right angle.",
    says: (say, { terms }) =>
      `The tapes to ${say.all} cross at ${say.figure} at best${terms?.by ? `, from ${terms.by}` : ""}; ${say.limit} is the least.`,
  },
  "mark-reading-doubt": {
    title: "Readings agree with one another",
    why: "Of readings that disagree one is wrong, and as long as one does not know which, none can be used.",
    mend: "Take the readings of that mark again, with another reference point added if there is one.",
    says: (say, { terms, figure }) =>
      terms?.kind === "reading off the face"
        ? `A reading at ${say.at} was taken from ${terms.by ?? "elsewhere"}, which is not on its face.`
        : `One of the ${figure ?? ""} readings at ${say.at} does not fit the others.`,
  },
  "mark-unreachable": {
    title: "Two tapes reach every mark",
    why: "With one tape one knows a circle, not a place.",
    mend: "Add a reference point near it on the face, allow a straight tape to it, or take a longer one.",
    says: (say, { figure }) =>
      `${figure === 1 ? "Only one tape reaches" : "No tape reaches"} ${say.all}; a mark takes ${say.limit}, from two points.`,
  },
  "mark-without-check": {
    title: "Every mark has a check reading",
    why: "Two tapes always meet somewhere, a slip in one of them too. The third tells.",
    mend: "Add a reference point.",
    says: (say) =>
      `${say.all} ${say.many ? "have" : "has"} no third reading to check ${say.many ? "them" : "it"} by.`,
  },
  "marks-not-measured": {
    title: "Marks are measured again before they are drilled",
    why: "The check reading takes a minute; the hole is for good.",
    mend: "Read the check of each mark and write it into the plan, under checked.",
    says: (say) => `${say.all} ${say.many ? "were" : "was"} not measured after marking.`,
    unchecked: (say) =>
      `${say.all} ${say.many ? "have" : "has"} no readings yet: whether the ${say.many ? "marks stand" : "mark stands"} right is not known.`,
  },
  "sides-differ": {
    title: "The two sides are alike",
    why: "Hulls are rarely the same on both sides. The same numbers then give lamps that stand unlike.",
    mend: "Use the numbers of each side's own sheet, or decide to follow the boat rather than the tape.",
    says: (say, { terms }) =>
      terms?.kind === "own numbers"
        ? `With the first side's numbers ${say.others} would land ${say.figure} off (${say.limit} is allowed): on ${say.at} the second side has numbers of its own.`
        : `By the readings on ${terms?.by ?? "the face"}, ${say.at}${terms?.side ?? ""} stands ${say.figure} off where the plan has it.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
