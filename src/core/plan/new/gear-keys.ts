import { gearRoleFacts } from "../../reference/gear-roles.js";
import { valueText } from "../edits/value.js";
import type { NewGear } from "./answers.js";

/** What a new piece of gear says of itself, key by key; what goes with its role is said too. Whatever it holds stays one value. */
export function flowGear({ count = 1, role, draws }: NewGear): string[] {
  return [
    ...(count === 1 ? [] : [`count: ${count}`]),
    `role: ${role}`,
    `draws: ${valueText(draws) ?? JSON.stringify(draws)}`,
    ...(gearRoleFacts.rows[role].motor ? ["behaves as: motor"] : []),
    ...(role === "bilge pump" ? ["float switch: true", "surroundings: bilge"] : []),
  ];
}
