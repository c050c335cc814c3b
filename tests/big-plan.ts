import { seeded } from "./laws/generated-network.js";

const waysEach = 20;

/** What gear may be, an invented mix small enough that any number of them leaves a battery standing. */
const kinds = [
  "role: lighting, draws: 40 mW",
  "role: electronics, draws: 60 mW",
  "role: gauge, draws: 4 mA, behaves as: current",
  "role: other, draws: 5 mA at 12 V, behaves as: resistance",
];

/**
 * The text of an invented plan with so many pieces of gear: panels on one battery, their ways by turns a chain of boxes with gear on each, single runs out of one
 * box, and a row on one chain; the last panel hangs on a converter.
 * @param gearEach Gear on each way, which is how long the chains are.
 * @param seed Same seed, same plan.
 */
export function bigPlanText(gear: number, gearEach = 20, seed = 1): string {
  const random = seeded(seed);
  const between = (low: number, high: number) => Math.round(low + (high - low) * random());
  const panels = Math.max(2, Math.ceil(gear / (waysEach * gearEach)));
  const lines = { panels: [] as string[], boxes: [] as string[], gear: [] as string[], runs: [] as string[] };
  let left = gear;
  for (let p = 0; p < panels; p += 1) {
    const panel = `p${p}`;
    const ways = Array.from({ length: waysEach }, (_, w) => `${panel}w${w}`);
    lines.panels.push(`  ${panel}: {ways: {${ways.map((way) => `${way}: {}`).join(", ")}}}`);
    const feed = p === panels - 1 ? "step / out" : "house";
    lines.runs.push(`  ${panel} feed: {from: ${feed}, to: ${panel}, length: ${between(1, 3)} m}`);
    for (const [w, way] of ways.entries()) {
      const count = Math.min(left, gearEach);
      left -= count;
      if (count === 0) continue;
      const from = `${panel} / ${way}`;
      if (w % 3 === 0) addRow(way, from, count);
      else if (w % 3 === 1) addStar(way, from, count);
      else addBoxChain(way, from, count);
    }
  }
  function kind(): string {
    return `{${kinds[between(0, kinds.length - 1)]}, works: 9 V to 16 V}`;
  }
  function addRow(way: string, from: string, count: number): void {
    lines.gear.push(`  ${way} row: {count: ${count}, role: lighting, draws: 50 mW, works: 9 V to 16 V}`);
    lines.runs.push(
      `  ${way} row run: {from: ${from}, to: ${way} row, reaches: chain, length: ${between(200, 900)} mm}`,
    );
  }
  function addStar(way: string, from: string, count: number): void {
    lines.boxes.push(`  ${way} box: {}`);
    lines.runs.push(`  ${way} trunk: {from: ${from}, to: ${way} box, length: ${between(1, 4)} m}`);
    for (let k = 0; k < count; k += 1) addOne(`${way} g${k}`, `${way} box`);
  }
  function addBoxChain(way: string, from: string, count: number): void {
    let at = from;
    for (let k = 0; k < count; k += 1) {
      lines.boxes.push(`  ${way} box ${k}: {}`);
      lines.runs.push(
        `  ${way} trunk ${k}: {from: ${at}, to: ${way} box ${k}, length: ${between(200, 900)} mm}`,
      );
      at = `${way} box ${k}`;
      addOne(`${way} g${k}`, at);
    }
  }
  function addOne(name: string, from: string): void {
    lines.gear.push(`  ${name}: ${kind()}`);
    lines.runs.push(`  ${name} run: {from: ${from}, to: ${name}, length: ${between(200, 900)} mm}`);
  }
  return `skiffloom: 1
name: A boat far too large, invented
rules: us
conductors: {sizes: [18 AWG, 16 AWG, 14 AWG, 12 AWG, 10 AWG, 8 AWG, 6 AWG, 4 AWG, 2 AWG, 1/0 AWG, 4/0 AWG]}
batteries:
  house: {chemistry: agm, capacity: 2000 Ah, internal resistance: 0.2 mΩ, main: {device: bolted fuse, interrupts: 100000 A}}
converters:
  step: {output: 12 V, most output: 40 A, efficiency: 90 %, works: 9 V to 16 V, isolated: false}
panels:
${lines.panels.join("\n")}
boxes:
${lines.boxes.join("\n")}
gear:
${lines.gear.join("\n")}
runs:
  step feed: {from: house, to: step / in, length: 1 m, fuse: {device: cartridge fuse, rating: 60 A, interrupts: 20000 A}}
${lines.runs.join("\n")}
outings:
  all night: {lasts: 8 h, on: [{what: p0}, {what: p1, from: 2 h, to: 4 h}]}
`;
}
