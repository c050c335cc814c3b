import type { RuleId } from "../core/findings/rules.js";
import { noFigure } from "./numbers.js";
import type { RuleWords } from "./rule-words.js";

const alike = (others: string) => (others ? ` (also ${others})` : "");

export const voltageRules = {
  "voltage-drop": {
    title: "Little voltage is lost on the way",
    why: "What is lost in conductors and joints makes lamps dim, pumps slow and electronics restart, and it warms the wire.",
    mend: "A thicker conductor, a shorter way, fewer joints, or less on the same run.",
    says: (say) =>
      `${say.at} loses ${say.figure} of its voltage on the way there and back ${say.when}; ${say.limit} is the most it should${alike(say.others)}.`,
    unchecked: (say) =>
      `The drop at ${say.all} is known in no corner (never on there, or no solution); it should be no more than ${say.limit}.`,
  },
  "under-voltage": {
    title: "Gear gets the voltage it needs",
    why: "Under its least voltage gear dims, stalls or switches off, just when the battery is low and one needs it.",
    mend: "A thicker conductor or a shorter way, or gear that works from a lower voltage.",
    says: (say) =>
      `${say.at} gets ${say.figure} ${say.when}; it needs ${say.limit} to work${alike(say.others)}.`,
  },
  "over-voltage": {
    title: "Gear bears the voltage of charging",
    why: "A charger lifts the whole boat to its own voltage; gear made for less ages fast or dies.",
    mend: "Gear with a wider range, a converter before it, or keep it off while charging.",
    says: (say) =>
      `${say.at} sees ${say.figure} ${say.when}; it bears no more than ${say.limit}${alike(say.others)}.`,
  },
  collapse: {
    title: "The wiring can carry all that is asked of it",
    why: "Drivers take more current as the voltage falls. Past a point no voltage satisfies them all, and the supply drops out.",
    mend: "Thicker conductors or a stronger battery for the gear named, or fewer things on at once.",
    says: (say, { at }) => {
      const where = at === "plan" ? "" : `; it gives way first at ${at}`;
      return say.figure === noFigure
        ? `There is no steady voltage at which all gear gets its power ${say.when}${where}.`
        : `Only ${say.figure} of the power asked for can be carried ${say.when}${where}.`;
    },
  },
  "nominal-voltage": {
    title: "Gear and supply have the same voltage",
    why: "12 V gear on 24 V burns out at once; 24 V gear on 12 V does not start.",
    mend: "Put a converter between them, or hang the gear on the other battery.",
    says: (say, { figure, limit }) =>
      `${say.at} hangs on a supply of ${say.figure} (${say.others}); it ${(figure ?? 0) > (limit ?? 0) ? "bears no more than" : "needs at least"} ${say.limit}.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
