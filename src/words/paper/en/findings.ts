import { counted } from "../../numbers.js";

/** Findings, what was assumed, and cautions. */
export const findings = {
  title: "Findings",
  count: (count: number): string => counted(count, "finding"),
  heading: (level: string, count: number, means: string): string => `${level}: ${count}. ${means}`,
  none: "No rule of this rule-set found anything. What was assumed is listed on the next pages.",
  helps: (mend: string): string => `What helps: ${mend}`,
  supplyIt: "Give the plan what is missing, or check it by hand before you rely on it.",
  rule: (id: string, sources: string): string => `Rule ${id}. Source: ${sources}.`,
  also: (names: string): string => `Also concerned: ${names}.`,
  against: (figure: string, limit: string): string => `${figure} against ${limit}`,
  moreSteps: (count: number): string => ` and ${count} further steps`,
  working: "Working",
  anyMends: "Any one of these mends it",
  mends: "This mends it",
  assumptions: {
    title: "Assumptions",
    count: (count: number): string =>
      counted(count, "value that the plan leaves out", "values that the plan leaves out"),
    heads: { field: "What was left out", taken: "Taken instead", at: "For", why: "Why" },
    write: "Write any of these in the plan and your value is used and checked in its place.",
    always: (figures: {
      readonly charged: string;
      readonly riseK: number;
      readonly ring: string;
      readonly butt: string;
      readonly blade: string;
      readonly bolted: string;
      readonly switched: string;
    }): string =>
      [
        "In every plan, common practice without a source:",
        `the usual case has batteries ${figures.charged} charged, the worst has them at their reserve and copper ${figures.riseK} K over the hottest air;`,
        `a crimped ring has ${figures.ring} mΩ and a butt ${figures.butt} mΩ on 1 mm², less on more copper;`,
        `a blade fuse with its holder loses ${figures.blade} at its rating, a bolted one ${figures.bolted}, a switch ${figures.switched};`,
        "a conductor has the greatest resistance its size may have.",
      ].join(" "),
  },
  cautions: {
    title: "Cautions",
    subtitle: "Read this page before the first tool is picked up",
    decides: "Who decides",
    never: "Not checked, in any plan",
    here: "Not checked, in this plan",
    more: (count: number): string => `and ${count} more, listed under Findings`,
  },
};
