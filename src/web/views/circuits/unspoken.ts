/** Lines and words of the drawing that the names of its things say already. */
export const unspoken = { "aria-hidden": true } as const;
