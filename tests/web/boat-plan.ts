import type { Page } from "playwright-core";

/** An invented boat: a starting form, a face with a row of lamps on both sides, runs along legs, and gear without a place. */
export const curlew = `skiffloom: 1
name: Curlew, an invented launch
rules: iso
craft: {kind: launch, length: 4.6 m, beam: 1.75 m, hull: glass, form: {start from: vee-bottomed utility, depth: 0.72 m}}
batteries:
  house: {chemistry: agm, voltage: 12 V, capacity: 50 Ah, main: {device: bolted fuse, rating: 40 A, interrupts: 2000 A, from source: 120 mm}, size: [200 mm, 170 mm, 180 mm], weight: 15 kg, stands at: [400 mm, 0 mm, 260 mm]}
panels:
  helm: {studs per bus: 8, stands at: [1700 mm, -450 mm, 480 mm], inside: [240 mm, 160 mm, 60 mm], ways: {lamps: {switch: {rating: 10 A}}, bilge: {switch: none, always live: true}}}
boxes:
  fore box: {joins: bus, stands at: [3500 mm, 250 mm, 450 mm], inside: [120 mm, 90 mm, 60 mm]}
faces:
  topside: {strip: [chine, sheer], from: 0.6 m, to: 3.6 m, pair: true}
gear:
  coaming lamp: {count: 6, role: lighting, draws: 0.9 W, on: topside, row: {from: 300 mm, to: 2600 mm, below: sheer, off: 80 mm}, pair: true, hole: {size: 16 mm, flange: 28 mm}}
  sounder: {role: electronics, draws: 9 W, stands at: [1900 mm, -250 mm, 620 mm]}
  bilge pump: {role: bilge pump, draws: 2.8 A at 12 V, float switch: true, stands at: [150 mm, 0 mm, 90 mm]}
  deck lamp: {count: 4, role: lighting, draws: 1 W}
  horn: {role: sound signal, draws: 3 A at 12 V}
runs:
  feed: {from: house, to: helm, length: 1.6 m, size: 6 mm2, colours: {out: red, return: black}}
  lamp trunk: {from: helm / lamps, to: fore box, along: [], size: 1 mm2, colours: {out: blue, return: black}}
  lamp chain: {from: fore box, to: coaming lamp, reaches: chain, length: 1 m, size: 1 mm2, colours: {out: blue, return: black}}
  pump cable: {from: helm / bilge, to: bilge pump, length: 2.4 m, colours: {out: brown, return: black}}
waypoints:
  knee: {at: [2500 mm, 500 mm, 480 mm]}
legs:
  side: {from: helm, to: knee}
  bow: {from: knee, to: fore box}
float:
  hull: {weight: 210 kg, at: [2.0 m, 0 m, 0.35 m]}
  people: {skipper: {weight: 80 kg, at: [1.3 m, 0 m, 0.6 m]}}
`;

/** Where a thing is on the screen, in a view of the sheet. */
export async function spotOf(page: Page, name: string, view = "plan"): Promise<{ x: number; y: number }> {
  const box = await page.locator(`[data-thing="${name}"][data-view="${view}"] .focus-ring`).boundingBox();
  if (!box) throw new Error(`${name} is not drawn in ${view}`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}
