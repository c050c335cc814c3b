/** Parts of an id that are no names: `helm / lamps / fuse`, `pump feed / return`. */
const pathParts = ["feed", "out", "return", "lead", "fuse", "main", "switch", "master"] as const;

export type PathWords = Readonly<Record<(typeof pathParts)[number], string>>;

export const pathInEnglish: PathWords = {
  feed: "feed",
  out: "out",
  return: "return",
  lead: "lead",
  fuse: "fuse",
  main: "main",
  switch: "switch",
  master: "master",
};

/** An id as one reads it: names of the plan stay, what the figures added to them is in the reader's language. */
export function pathWords(id: string, words: PathWords): string {
  const said = (part: string) => {
    const known = pathParts.find((one) => one === part);
    return known === undefined ? part : words[known];
  };
  const [name = "", ...parts] = id.split(" / ");
  return [name, ...parts.map(said)].join(" / ");
}
