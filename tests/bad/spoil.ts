/** Seeded numbers (mulberry32), so that every run spoils the same plans in the same ways. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Signs and scraps that mean something to YAML, to JavaScript or to the plan. */
const scraps = [
  ..."{}[],:#&*!|>'\"%@`?-~\t\r\n\\ ",
  ": ",
  " #",
  "- ",
  "? ",
  "<<: ",
  "&a ",
  "*a",
  "!!map ",
  "!x ",
  "---\n",
  "...\n",
  "%YAML 1.1\n",
  "__proto__: ",
  "constructor: {prototype: {}}",
  "work out",
  "none",
  "null",
  "~",
  "1e999",
  "-1",
  "9".repeat(400),
  "0x7fffffffffffffff",
  ".inf",
  ".nan",
  "1:30",
  "on",
  "\ufeff",
  "\u0000",
  "\u2028",
  "½ in",
  "-5 m",
  "1,5 V",
  "count: 99999999",
  "count: 50000",
  "skiffloom: 2\n",
  "|\n",
  ">-\n",
  "\n\n",
  "    ",
  "{".repeat(30),
  "[".repeat(60),
  "- ".repeat(40),
  "{a: ".repeat(30),
];

/** A plan spoilt in one to four ways. `others` are plans to take pieces from. */
export function spoilt(plan: string, others: readonly string[], next: () => number): string {
  let text = plan;
  const times = 1 + Math.floor(next() * 4);
  for (let time = 0; time < times; time++) text = spoil(text, others, next);
  return text.slice(0, 20_000);
}

/** The bytes of a plan with one to four of them struck at random. */
export function spoiltBytes(plan: string, next: () => number): Uint8Array {
  const bytes = new TextEncoder().encode(plan);
  for (let flips = 0; flips < 4; flips++) bytes[Math.floor(next() * bytes.length)] = Math.floor(next() * 256);
  return bytes;
}

function spoil(text: string, others: readonly string[], next: () => number): string {
  const pick = (length: number) => Math.floor(next() * length);
  const at = pick(text.length + 1);
  const length = pick(next() < 0.7 ? 12 : 200);
  const piece = text.slice(at, at + length);
  switch (pick(10)) {
    case 0: // another letter
      return (
        text.slice(0, at) +
        String.fromCharCode(next() < 0.9 ? 32 + pick(95) : pick(0x10000)) +
        text.slice(at + 1)
      );
    case 1: // a hole
      return text.slice(0, at) + text.slice(at + length);
    case 2: // twice
      return text.slice(0, at) + piece + text.slice(at);
    case 3: {
      // elsewhere
      const there = pick(text.length + 1);
      return text.slice(0, there) + piece + text.slice(there);
    }
    case 4: {
      // from another plan
      const other = others[pick(others.length)] ?? "";
      const from = pick(other.length + 1);
      return text.slice(0, at) + other.slice(from, from + length) + text.slice(at);
    }
    case 5:
    case 6:
      return text.slice(0, at) + (scraps[pick(scraps.length)] ?? "") + text.slice(at);
    case 7: {
      // two lines change places
      const lines = text.split("\n");
      const one = pick(lines.length);
      const two = pick(lines.length);
      return lines
        .map((line, index) => (index === one ? lines[two] : index === two ? lines[one] : line))
        .join("\n");
    }
    case 8: {
      // more or less indent
      const lines = text.split("\n");
      const one = pick(lines.length);
      return lines
        .map((line, index) =>
          index !== one ? line : next() < 0.5 ? ` ${line}` : line.replace(/^ {1,2}/, ""),
        )
        .join("\n");
    }
    default: // cut short
      return next() < 0.2 ? text.slice(0, at) : text.replace(/\d+/, String(10 ** pick(40)));
  }
}

/** The head of a plan with one or two of its sections, so that many fit into a test. */
export function smallPiece(plan: string, next: () => number): string {
  const sections = plan.split(/\n(?=[a-z])/);
  const head = sections.filter((section) => /^(skiffloom|name|rules):/.test(section));
  const rest = sections.filter((section) => !head.includes(section) && section.length < 1500);
  const one = rest[Math.floor(next() * rest.length)] ?? "";
  const two = next() < 0.5 ? (rest[Math.floor(next() * rest.length)] ?? "") : "";
  return `${[...head, one, two].join("\n")}\n`;
}
