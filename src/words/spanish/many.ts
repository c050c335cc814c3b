/** A count with its noun; nouns tell both their forms. */
export const many = (count: number, one: string, all: string): string =>
  `${count}\u00a0${count === 1 ? one : all}`;
