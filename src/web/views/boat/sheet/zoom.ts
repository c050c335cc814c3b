import type { Spot2 } from "../model/paper.js";

/** From this scale on signs have their full size; on a smaller sheet they shrink with it, to this share at the least. */
const fullSignPxPerMm = 0.11;
const leastSign = 0.6;

/** How the sheet lies in its window: screen px = sheet mm · pxPerMm + shift. */
export interface Lie {
  readonly pxPerMm: number;
  readonly x: number;
  readonly y: number;
}

/** Forty times as large as the whole boat in its window: a lamp then fills a phone. */
const mostTimes = 40;

/** Pans and zooms a group of the drawing by its transform alone, so that nothing is drawn anew. */
export class Zoom {
  private readonly groups = new Set<SVGGElement>();
  private windowPx: Spot2 = [1, 1];
  private sheetMm: Spot2 = [1, 1];
  private least = 1;
  lie: Lie = { pxPerMm: 1, x: 0, y: 0 };

  /** @param settled Told a moment after the last change. */
  constructor(private readonly settled: () => void) {}

  private timer: ReturnType<typeof setTimeout> | undefined;

  /** Lays a group as the sheet lies. @returns how to let it go. */
  readonly hold = (group: SVGGElement | null): (() => void) => {
    if (group) this.groups.add(group);
    this.apply();
    return () => {
      if (group) this.groups.delete(group);
    };
  };

  stop(): void {
    clearTimeout(this.timer);
  }

  /** The window or the sheet has another size. Where one looked at the whole, one does still. */
  fitTo(windowPx: Spot2, sheetMm: Spot2): void {
    const whole = this.isWhole();
    this.windowPx = windowPx;
    this.sheetMm = sheetMm;
    this.least = Math.min(windowPx[0] / sheetMm[0], windowPx[1] / sheetMm[1]);
    if (whole) this.whole();
    else this.set(this.lie);
  }

  isWhole(): boolean {
    return this.lie.pxPerMm <= this.least * 1.001 || this.windowPx[0] <= 1;
  }

  whole(): void {
    const pxPerMm = this.least;
    this.set({
      pxPerMm,
      x: (this.windowPx[0] - this.sheetMm[0] * pxPerMm) / 2,
      y: (this.windowPx[1] - this.sheetMm[1] * pxPerMm) / 2,
    });
  }

  /** Zooms by a factor about a place of the window [px]; the middle where none is given. */
  by(factor: number, about: Spot2 = [this.windowPx[0] / 2, this.windowPx[1] / 2]): void {
    const pxPerMm = Math.min(Math.max(this.lie.pxPerMm * factor, this.least), this.least * mostTimes);
    const ratio = pxPerMm / this.lie.pxPerMm;
    this.set({
      pxPerMm,
      x: about[0] - (about[0] - this.lie.x) * ratio,
      y: about[1] - (about[1] - this.lie.y) * ratio,
    });
  }

  pan(dxPx: number, dyPx: number): void {
    this.set({ ...this.lie, x: this.lie.x + dxPx, y: this.lie.y + dyPx });
  }

  /** Brings a place of the sheet into the window, with some room around it, where it is outside. */
  show([right, down]: Spot2): void {
    const [x, y] = this.toWindow([right, down]);
    const room = 40;
    const off = (at: number, size: number) => Math.max(room - at, 0) + Math.min(size - room - at, 0);
    const [dx, dy] = [off(x, this.windowPx[0]), off(y, this.windowPx[1])];
    if (dx !== 0 || dy !== 0) this.pan(dx, dy);
  }

  toSheet([x, y]: Spot2): Spot2 {
    const { pxPerMm, x: left, y: top } = this.lie;
    return [(x - left) / pxPerMm, (y - top) / pxPerMm];
  }

  toWindow([right, down]: Spot2): Spot2 {
    const { pxPerMm, x, y } = this.lie;
    return [right * pxPerMm + x, down * pxPerMm + y];
  }

  private set({ pxPerMm, x, y }: Lie): void {
    const held = (shift: number, size: number, sheet: number) => {
      const spare = size - sheet * pxPerMm;
      // a sheet smaller than its window stays in the middle; a larger one is never pulled off it
      return spare >= 0 ? spare / 2 : Math.min(0, Math.max(spare, shift));
    };
    this.lie = {
      pxPerMm,
      x: held(x, this.windowPx[0], this.sheetMm[0]),
      y: held(y, this.windowPx[1], this.sheetMm[1]),
    };
    this.apply();
    clearTimeout(this.timer);
    this.timer = setTimeout(this.settled, 120);
  }

  private apply(): void {
    const { pxPerMm, x, y } = this.lie;
    for (const group of this.groups) {
      group.setAttribute("transform", `translate(${x} ${y}) scale(${pxPerMm})`);
      // what keeps its size on screen is drawn larger by as much as the sheet is smaller
      group.style.setProperty("--px", String(1 / pxPerMm));
      group.style.setProperty("--sign", String(Math.min(Math.max(pxPerMm / fullSignPxPerMm, leastSign), 1)));
    }
  }
}
