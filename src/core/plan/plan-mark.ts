import type { Plan } from "./model/plan.js";

/** Digits that are not taken for one another when read off paper. */
const digits = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/**
 * A short mark of all a plan says, six signs: the same plan always has the same, a changed one another (but for one chance in a thousand million).
 * It goes on paper, so that a page can be held against the plan it came from. FNV-1a over the plan as JSON, folded to 30 bits. What is empty is left out: a section
 * that a later format has and the plan does not changes no mark.
 */
export function planMark(plan: Plan): string {
  const text = JSON.stringify(plan, (_, value) =>
    Array.isArray(value) && value.length === 0 ? undefined : value,
  );
  let hash = 0x811c9dc5;
  for (let index = 0; index < text.length; index += 1)
    hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193);
  const folded = (hash ^ (hash >>> 30)) & 0x3fffffff;
  return Array.from({ length: 6 }, (_, index) => digits[(folded >>> (25 - 5 * index)) & 31]).join("");
}
