import type { Joining } from "../listed.js";

export const joinedInSpanish: Joining = {
  // the word changes before the sound of an i
  and: (last) => (/^h?i(?![aeo])/i.test(last) ? "e" : "y"),
  more: (count) => `${count} más`,
};
