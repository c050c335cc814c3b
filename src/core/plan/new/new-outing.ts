import { keyText } from "../edits/value.js";
import type { NewGear } from "./answers.js";

/** A first outing: an evening with lights on, sockets now and then, and a bilge pump that starts by itself. */
export function newOuting(gear: readonly NewGear[], panel: string): string {
  const on = gear.flatMap(({ name, role }): string[] => {
    const what = `what: ${keyText(name)}`;
    if (role === "bilge pump") return [`{${what}, runs: 2 min each hour}`];
    if (role === "navigation light") return [`{${what}, from: 2 h}`];
    if (role === "lighting") return [`{${what}, from: 2 h, to: 3 h}`];
    if (role === "socket" || role === "heating") return [`{${what}, from: 0 h, to: 1 h}`];
    if (role === "sound signal" || role === "blower") return [`{${what}, runs: 1 min each hour}`];
    if (role === "propulsion") return [`{${what}, to: 2 h, level: 50 %}`];
    if (role === "pump") return [`{${what}, runs: 10 min each hour}`];
    return [`{${what}}`];
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
