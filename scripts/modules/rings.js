/** Modules of the house that take from one another in a ring, each ring once (Tarjan, SIAM J. Comput. 1 (1972) 146). */
export function rings(modules) {
  const place = new Map();
  const lowest = new Map();
  const open = [];
  const found = [];
  const visit = (name) => {
    place.set(name, place.size);
    lowest.set(name, place.get(name));
    open.push(name);
    for (const { from } of modules.get(name).takes) {
      if (!modules.has(from)) continue;
      if (!place.has(from)) visit(from);
      if (open.includes(from)) lowest.set(name, Math.min(lowest.get(name), lowest.get(from)));
    }
    if (lowest.get(name) !== place.get(name)) return;
    const ring = open.splice(open.indexOf(name));
    if (ring.length > 1) found.push(ring);
  };
  for (const name of modules.keys()) if (!place.has(name)) visit(name);
  return found.map((ring) => `${ring.sort().join(", ")}: these import one another in a ring`);
}
