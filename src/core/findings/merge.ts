import type { Finding, Level } from "./finding.js";

/** One finding for many things that could not be judged for the same reason; none if there are none. */
export function uncheckedTogether(
  rule: string,
  names: readonly string[],
  terms?: Record<string, string>,
): Finding[] {
  const [first, ...more] = [...new Set(names)];
  if (first === undefined) return [];
  return [
    {
      rule,
      level: "unchecked",
      at: first,
      ...(more.length ? { with: more } : {}),
      ...(terms ? { terms } : {}),
    },
  ];
}

/**
 * Things written as one entry (six lamps alike) share one finding: the worst of them stands for it, the others are named.
 * @param worse Is the first figure worse than the second?
 */
export function oneEachGroup(
  findings: readonly Finding[],
  groupOf: (at: string) => string,
  worse: (a: number, b: number) => boolean = (a, b) => a > b,
): Finding[] {
  const groups = new Map<string, { worst: Finding; names: string[] }>();
  for (const finding of findings) {
    const key = `${groupOf(finding.at)}\n${finding.level}`;
    const group = groups.get(key);
    if (!group) {
      groups.set(key, { worst: finding, names: [finding.at] });
      continue;
    }
    group.names.push(finding.at);
    if (worse(finding.figure ?? Number.NaN, group.worst.figure ?? Number.NaN)) group.worst = finding;
  }
  return [...groups.values()].map(({ worst, names }) => {
    const others = names.filter((name) => name !== worst.at);
    return others.length ? { ...worst, with: [...(worst.with ?? []), ...others] } : worst;
  });
}

const order: Readonly<Record<Level, number>> = { stop: 0, mend: 1, mind: 2, unchecked: 3 };
/** Gravest first; findings of one level keep the order they came in. */
export function gravestFirst(findings: readonly Finding[]): Finding[] {
  return findings.toSorted((a, b) => order[a.level] - order[b.level]);
}
