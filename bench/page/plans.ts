/** An invented barge: fifty ways of forty lamps each. */
export function twoThousandLamps(): string {
  const groups = Array.from({ length: 50 }, (_, group) => group + 1);
  const places = (group: number) =>
    Array.from(
      { length: 40 },
      (_, lamp) => `[${200 + lamp * 480} mm, ${-2400 + group * 95} mm, 1200 mm]`,
    ).join(", ");
  return `skiffloom: 1
name: Barge of the bench
rules: iso
craft: {kind: barge, length: 20 m, beam: 5 m, hull: glass}
batteries:
  house: {chemistry: agm, capacity: 2000 Ah, stands at: [1 m, 0 mm, 300 mm], main: {device: bolted fuse, rating: 200 A, interrupts: 20000 A, from source: 120 mm}}
panels:
  helm:
    stands at: [3 m, 0 mm, 800 mm]
    ways:
${groups.map((group) => `      way ${group}a: {switch: {rating: 10 A}}`).join("\n")}
gear:
${groups.map((group) => `  lamp row ${group}a: {count: 40, role: lighting, draws: 0.5 W, stands at: [${places(group)}]}`).join("\n")}
runs:
  feed: {from: house, to: helm, along: []}
${groups.map((group) => `  line ${group}a: {from: helm / way ${group}a, to: lamp row ${group}a, reaches: chain, length: 500 mm}`).join("\n")}
waypoints:
  knee: {at: [2 m, 500 mm, 400 mm]}
legs:
  from battery: {from: house, to: knee}
  to helm: {from: knee, to: helm}
outings:
  evening: {lasts: 2 h, on: [{what: lamp row 1a}, {what: lamp row 2a}]}
`;
}
