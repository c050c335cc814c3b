/** Files that others start: what they give is not taken by name. */
const starts = new Set(["src/web/vite.config.ts"]);

const timesIn = (name, text) => text.match(new RegExp(`(?<![\\w$])${name}(?![\\w$])`, "g"))?.length ?? 0;

/**
 * What is given and not taken: a value that no other file takes, and one that tests alone take and its own file does not use.
 * A type may go with what it belongs to.
 */
export function unwanted(modules) {
  const takers = takersOf(modules);
  return [...modules].flatMap(([path, { text, gives }]) => {
    if (!path.startsWith("src/") || starts.has(path)) return [];
    return gives.flatMap(({ name, isType }) => {
      const users = (takers.get(path) ?? []).filter((user) => takes(user, name)).map((user) => user.path);
      const isUsedHere = timesIn(name, text) > 1;
      if (users.some((user) => /^(src|scripts)\//.test(user))) return [];
      if (users.length === 0)
        return isType && isUsedHere ? [] : [`${path} exports ${name}, and no other file takes it`];
      return isUsedHere ? [] : [`${path} exports ${name}, and only ${users.join(", ")} takes it`];
    });
  });
}

/** Who takes something of each file; a script that bundles a file by its path takes it as a whole. */
function takersOf(modules) {
  const takers = new Map();
  const add = (from, taker) => takers.set(from, [...(takers.get(from) ?? []), taker]);
  for (const [path, { text, takes }] of modules) {
    for (const { from, names } of takes) add(from, { path, text, names });
    if (path.startsWith("scripts/"))
      for (const [from] of text.matchAll(/src\/[\w/-]+\.tsx?/g)) add(from, { path, text, names: "any" });
  }
  return takers;
}

function takes({ text, names }, name) {
  return names === "any" ? name === "default" || timesIn(name, text) > 0 : names.includes(name);
}
