import { insideRoom } from "../reference/boxes.js";

/** Something that is screwed to the base of a box, seen from above [mm]. */
export interface Content {
  readonly id: string;
  readonly widthMm: number;
  readonly heightMm: number;
  /** From the base up. */
  readonly tallMm: number;
  /** Room for tool and fingers around it; the larger of two neighbours' counts. */
  readonly workingMm?: number;
  /** Must not be turned by 90°. */
  readonly upright?: boolean;
}

export interface PlacedContent extends Content {
  readonly x: number;
  readonly y: number;
  readonly turned: boolean;
}

/** The part of the base that contents may take, after room for bends behind the entries. */
export interface Floor {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
  readonly depthMm: number;
  /** Corner posts and the like. */
  readonly keepOuts: readonly {
    readonly x: number;
    readonly y: number;
    readonly widthMm: number;
    readonly heightMm: number;
  }[];
}

export type ContentsAnswer =
  | { readonly ok: true; readonly placed: readonly PlacedContent[] }
  | {
      readonly ok: false;
      readonly problem: "too-tall" | "no-room-for-contents";
      readonly content: string;
      readonly figureMm?: number;
      readonly limitMm?: number;
      readonly proof: "proven" | "not found";
    };

/** Positions looked at before the search gives up. */
const budget = 60_000;

interface Rect {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
  readonly room: number;
}

/**
 * Lays contents on the base, each pushed left and down against others or the edge; every order and turn is tried, so that
 * within the budget 'no room' is proven. Working room is kept between contents, half of it at an edge.
 * @throws RangeError if a measure is not above zero.
 */
export function packContents(floor: Floor, contents: readonly Content[]): ContentsAnswer {
  for (const { id, widthMm, heightMm, tallMm, workingMm = 0 } of contents) {
    if (!(widthMm > 0 && heightMm > 0 && tallMm > 0 && workingMm >= 0)) {
      throw new RangeError(
        `${id} needs measures above zero, got ${widthMm} × ${heightMm} × ${tallMm}, ${workingMm}`,
      );
    }
    const limitMm = floor.depthMm - insideRoom.underLidMm;
    if (tallMm > limitMm) {
      return { ok: false, problem: "too-tall", content: id, figureMm: tallMm, limitMm, proof: "proven" };
    }
  }
  const order = contents.toSorted((a, b) => b.widthMm * b.heightMm - a.widthMm * a.heightMm);
  let steps = budget;
  let deepest = 0;
  const laid: (PlacedContent & { readonly rect: Rect })[] = [];
  const waiting = [...order];

  const search = (): boolean | undefined => {
    if (waiting.length === 0) return true;
    deepest = Math.max(deepest, laid.length);
    const tried = new Set<string>();
    for (let k = 0; k < waiting.length; k += 1) {
      const content = waiting[k];
      if (content === undefined) continue;
      const key = `${content.widthMm} ${content.heightMm} ${content.workingMm} ${content.upright}`;
      if (tried.has(key)) continue;
      tried.add(key);
      for (const turned of content.upright === true || content.widthMm === content.heightMm
        ? [false]
        : [false, true]) {
        for (const rect of places(
          floor,
          content,
          turned,
          laid.map((one) => one.rect),
        )) {
          steps -= 1;
          if (steps < 0) return undefined;
          waiting.splice(k, 1);
          laid.push({ ...content, x: rect.x, y: rect.y, turned, rect });
          const found = search();
          if (found !== false) return found;
          laid.pop();
          waiting.splice(k, 0, content);
        }
      }
    }
    return false;
  };

  const found = search();
  if (found === true) return { ok: true, placed: laid.map(({ rect: _rect, ...content }) => content) };
  const without = order[Math.min(deepest, order.length - 1)];
  return {
    ok: false,
    problem: "no-room-for-contents",
    content: without?.id ?? "",
    proof: found === undefined ? "not found" : "proven",
  };
}

/** Every place pushed left and down: x and y from an edge or from the end of something laid. */
function places(floor: Floor, content: Content, turned: boolean, laid: readonly Rect[]): Rect[] {
  const room = content.workingMm ?? insideRoom.workingMm;
  const w = turned ? content.heightMm : content.widthMm;
  const h = turned ? content.widthMm : content.heightMm;
  const gap = (other: Rect): number => Math.max(room, other.room);
  const xs = new Set([floor.x0 + room / 2]);
  const ys = new Set([floor.y0 + room / 2]);
  for (const other of laid) {
    xs.add(other.x + other.w + gap(other));
    ys.add(other.y + other.h + gap(other));
  }
  for (const post of floor.keepOuts) {
    xs.add(post.x + post.widthMm + room / 2);
    ys.add(post.y + post.heightMm + room / 2);
  }
  const rects: Rect[] = [];
  for (const y of [...ys].sort((a, b) => a - b)) {
    for (const x of [...xs].sort((a, b) => a - b)) {
      if (x + w + room / 2 > floor.x1 + 1e-9 || y + h + room / 2 > floor.y1 + 1e-9) continue;
      const rect = { x, y, w, h, room };
      const clear = laid.every((other) => apart(rect, other, gap(other)));
      const posts = floor.keepOuts.every((post) =>
        apart(rect, { x: post.x, y: post.y, w: post.widthMm, h: post.heightMm, room: 0 }, room / 2),
      );
      if (clear && posts) rects.push(rect);
    }
  }
  return rects;
}

function apart(a: Rect, b: Rect, gap: number): boolean {
  const hair = 1e-9;
  return (
    a.x + a.w + gap <= b.x + hair ||
    b.x + b.w + gap <= a.x + hair ||
    a.y + a.h + gap <= b.y + hair ||
    b.y + b.h + gap <= a.y + hair
  );
}
