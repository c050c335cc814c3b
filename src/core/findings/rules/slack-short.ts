import type { SlackPart } from "../../way/slack.js";
import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** A box can be drawn out and worked on: its cables have the slack for it. */
export const slackShort = rule({
  id: "slack-short",
  theme: "ways",
  level: "mend",
  sources: both(practice),
  check: ({ layout, runs }) => {
    const seen = new Set<string>();
    return (layout?.routes.runs ?? []).flatMap(({ run, group, needed }) =>
      (["start", "end"] as const).flatMap((end): Finding[] => {
        const made = runs.get(run);
        const ownM = made?.slackM?.[end];
        const drawn = needed[end].some(({ why }) => why === "draw out");
        const limit = sum(needed[end].filter(({ why }) => why !== "make again"));
        const key = `${group}\n${end}`;
        if (made === undefined || ownM === undefined || !drawn || ownM >= limit || seen.has(key)) return [];
        seen.add(key);
        return [
          {
            rule: "slack-short",
            level: "mend",
            at: group,
            with: [(end === "start" ? made.from : made.to).place],
            figure: ownM,
            limit,
            unit: "m",
            remedies: [{ edit: "remove field", at: group, field: `slack / ${end}` }],
          },
        ];
      }),
    );
  },
});

const sum = (parts: readonly SlackPart[]): number => parts.reduce((total, { lengthM }) => total + lengthM, 0);
