/** `tonight`: the next evening or day one is free. `project`: all that is left of the project in hand. */
export const shortScopes = ["tonight", "project"] as const;
export type ShortScope = (typeof shortScopes)[number];
