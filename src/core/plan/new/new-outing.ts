import { gearRoleFacts } from "../../reference/gear-roles.js";
import { keyText } from "../edits/value.js";
import type { NewGear } from "./answers.js";

/** A first outing: an evening with lights on, sockets now and then, and a bilge pump that starts by itself. */
export function newOuting(gear: readonly NewGear[], panel: string): string {
  const on = gear.map(periodText);
  const lines = on.length === 0 ? [`{what: ${panel}}`] : on;
  return `outings:   # what is on when; from it follow the hours the battery lasts
  evening:
    start: "19:00"
    lasts: 4 h
    charge: 100 %
    on:   # an invented evening: put in your own
${lines.map((line) => `      - ${line}`).join("\n")}
`;
}

/** When a piece of gear is on in an outing that knows no more of it than its role. */
export function periodText({ name, role }: Pick<NewGear, "name" | "role">): string {
  const when = gearRoleFacts.rows[role].firstOuting;
  return `{what: ${keyText(name)}${when && `, ${when}`}}`;
}
