import type { RuleId } from "../core/findings/rules.js";
import { conditionWords } from "./labels.js";
import { noFigure } from "./numbers.js";
import type { RuleWords, Say } from "./rule-words.js";

const device = (say: Say) => `the ${say.term("rating")} ${say.term("device")} of ${say.at}`;
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
const behind = (say: Say) => (say.term("binds") === noFigure ? "" : ` (${say.term("binds")})`);
const condition = (name: string) => Object.entries(conditionWords).find(([key]) => key === name)?.[1] ?? name;

const unknown = (say: Say) =>
  say.term("binds") === noFigure ? "" : `: size or insulation of ${say.term("binds")} is not known`;
const opens = (say: Say) => (say.figure === noFigure ? "may never open" : `may take ${say.figure} to open`);

export const protectionRules = {
  "protection-carries-load": {
    title: "A fuse or breaker carries its load with margin",
    why: "One that works near its rating ages and opens on a warm evening with nothing wrong.",
    mend: "The next larger rating, if the conductors behind it allow it; else thicker conductors.",
    says: (say) => `${capital(device(say))} carries ${say.figure}; ${say.limit} is what it bears for hours.`,
    unchecked: (say) => `Whether ${device(say)} carries its load could not be worked out.`,
  },
  "main-overloaded": {
    title: "The main carries all that may be on together",
    why: "When the main opens, the whole boat is dark, navigation lights and bilge pump included.",
    mend: "A larger main, if the feed allows it; or put gear into `one at a time` groups.",
    says: (say) =>
      `All that may be on together takes ${say.figure} through ${device(say)}; ${say.limit} is what it bears for hours.`,
    unchecked: (say) =>
      `Whether the main of ${say.at} carries all that may be on together could not be worked out.`,
  },
  "protection-rides-start": {
    title: "A fuse or breaker rides through the start",
    why: "A motor takes several times its running current for a moment; a fuse too quick for that is always blown.",
    mend: "The next larger rating, if the conductors allow it, or a slower device.",
    says: (say) =>
      `${capital(device(say))} may open within ${say.limit} of the starting current; the start lasts ${say.figure}.`,
    unchecked: (say) =>
      `Whether ${device(say)} rides through the start could not be judged: the starting current is not known.`,
  },
  "protection-protects-weakest": {
    title: "A fuse or breaker protects the weakest conductor behind it",
    why: "A short in the thinnest wire behind a fuse must blow the fuse before the wire glows. Thin leads of lamps count.",
    mend: "A smaller rating, a thicker conductor, or a fuse of its own where the thin one begins.",
    says: (say) =>
      `${capital(device(say))} is too large for the weakest conductor behind it${behind(say)}: ${say.limit} is the most.`,
    unchecked: (say) =>
      `Whether ${device(say)} protects every conductor behind it could not be judged${unknown(say)}.`,
  },
  "protection-gear-limit": {
    title: "No fuse is larger than the gear's maker allows",
    why: "The maker's limit protects the windings and wires inside: a jammed pump burns behind a fuse that is too large.",
    mend: "The maker's rating, or a fuse of its own for that gear.",
    says: (say) =>
      `${capital(device(say))} is larger than the maker of ${say.term("binds")} allows: ${say.limit} is the most.`,
    unchecked: (say) =>
      `The largest fuse that the maker of ${say.term("binds")} allows is not in the plan (${say.at}).`,
  },
  "protection-clears-far-short": {
    title: "A short at the far end opens the fuse",
    why: "A long thin run lets little current into a short: the fuse may sit there and think while the conductor cooks.",
    mend: "A smaller rating or a thicker conductor.",
    says: (say) =>
      `In a short at the far end ${device(say)} ${opens(say)}; the conductor${behind(say)} bears it for ${say.limit}.`,
    unchecked: (say) =>
      `Whether ${device(say)} clears a short at the far end could not be worked out${unknown(say)}.`,
  },
  "protection-withstands-short": {
    title: "The conductor withstands what the fuse lets through",
    why: "A short close to the battery is so strong that a thin conductor melts before the fuse has opened.",
    mend: "A thicker conductor right behind the device, a quicker device, or a smaller rating.",
    says: (say) =>
      `In a short ${device(say)} lets through ${say.figure}; the conductor behind it${behind(say)} bears ${say.limit}.`,
    unchecked: (say) =>
      `Whether the conductor behind ${device(say)} withstands a short could not be worked out${unknown(say)}.`,
  },
  "protection-interrupts": {
    title: "A fuse or breaker can break the battery's short-circuit current",
    why: "One that cannot goes on burning as an arc, or bursts. Lithium batteries give thousands of amperes.",
    mend: "A fuse of a kind with a greater interrupting capacity at the battery.",
    says: (say) =>
      `The source can drive ${say.figure} into a short at ${device(say)}, which breaks no more than ${say.limit}.`,
    unchecked: (say) =>
      say.limit === noFigure
        ? `The interrupting capacity of ${device(say)} is not known; a short there may reach ${say.figure}.`
        : `Whether ${device(say)} breaks a short could not be judged: the battery's own resistance was only assumed (${say.figure} reckoned, it breaks ${say.limit}).`,
  },
  "protection-near-source": {
    title: "A fuse or breaker sits close to the source",
    why: "Whatever conductor lies between the battery and its fuse has no protection at all.",
    mend: "Move it closer, or keep the conductor before it in a sheath or conduit where the rules allow more.",
    says: (say) => `${capital(device(say))} sits ${say.figure} from the source; ${say.limit} is the most.`,
    unchecked: (say) =>
      `How far ${device(say)} sits from the source is not in the plan; ${say.limit} is the most.`,
  },
  "protection-before-main": {
    title: "A way's fuse opens before the main",
    why: "A fault in one lamp should cost one lamp, not the whole boat.",
    mend: "A smaller rating on the way, or a larger main if its conductors allow it.",
    says: (say) =>
      `In a fault behind ${device(say)} it ${opens(say)}, and ${say.term("binds")} may have opened after ${say.limit}.`,
    unchecked: (say) => `Whether ${device(say)} opens before the main could not be judged.`,
  },
  "protection-conflict": {
    title: "Some standard rating satisfies every condition",
    why: "Where the load asks for more than the thinnest wire allows, no fuse can be right.",
    mend: "Thicker conductors, a fuse of its own for the thin part, or the load split over two ways.",
    says: (say) =>
      `No standard rating is right for ${say.at}: "${condition(say.term("first"))}" stands against "${condition(say.term("second"))}".`,
  },
  "protection-missing-at-battery": {
    title: "What leaves a battery is protected",
    why: "Any chafed wire then sees all the battery can give. This is how boats burn at the mooring.",
    mend: "A main fuse or breaker at the positive post, before anything else.",
    says: (say) =>
      `${say.at} has no main protection, and nothing else protects ${say.others}: a short may drive ${say.figure}.`,
  },
  "protection-missing-on-run": {
    title: "A run that bypasses the main has a fuse of its own",
    why: "Taken before the main it is protected by nothing; taken straight to gear it has only a main meant for the whole boat.",
    mend: "An in-line fuse close to the battery.",
    says: (say) =>
      `${say.at} leaves ${say.others} ${say.term("where")} without a fuse of its own; a short may drive ${say.figure}.`,
  },
  "protection-missing-on-way": {
    title: "Every way has a fuse or breaker",
    why: "Without one, a fault on this way has to blow the main and darken the boat.",
    mend: "A fuse of the rating worked out for the way.",
    says: (say) => `${say.at} has no fuse or breaker; it feeds ${say.others}.`,
  },
  "switch-overloaded": {
    title: "A switch is rated for what passes it",
    why: "Contacts that are too small pit, warm up and weld shut: then the switch no longer switches.",
    mend: "A switch of a higher d.c. rating, or a relay.",
    says: (say) => `${say.figure} pass the switch of ${say.at}; it is rated for ${say.limit}.`,
    unchecked: (say) =>
      `The plan does not say what the ${say.many ? "switches" : "switch"} of ${say.all} ${say.many ? "are" : "is"} rated for.`,
  },
  "device-in-wet": {
    title: "Fuses and switches live where it is dry",
    why: "Salt bridges their contacts, and corrosion takes the fuse's hold away until it warms and melts its holder.",
    mend: "Move it to a dry place, or use one made for the wet with its own seal.",
    says: (say) =>
      `The ${say.term("kind")} of ${say.at} sits in a place that is ${say.term("surroundings")}.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
