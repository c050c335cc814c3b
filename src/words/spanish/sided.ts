import { sideIn } from "./trade.js";

/** A name with the side that the hull's figures put behind it: `end port`. */
export const sided = (name: string): string =>
  name.replace(/ (port|starboard)$/, (_, side: string) => ` ${sideIn(side)}`);
