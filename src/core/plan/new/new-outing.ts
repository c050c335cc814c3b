import { gearRoleFacts } from "../../reference/gear-roles.js";
import { keyText } from "../edits/value.js";
import type { NewGear } from "./answers.js";

/** A first outing: an evening with lights on, sockets now and then, and a bilge pump that starts by itself. */
export function newOuting(gear: readonly NewGear[], panel: string): string {
  const on = gear.map(({ name, role }) => {
    const when = gearRoleFacts.rows[role].firstOuting;
    return `{what: ${keyText(name)}${when && `, ${when}`}}`;
  });
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
