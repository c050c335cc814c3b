import { type KeyboardEvent, type PointerEvent, useRef } from "react";
import type { EntryFault } from "../../../core/box/check-entries.js";
import { type Placed, windowOf } from "../../../core/box/entry-rules.js";
import type { BoxBody, Face } from "../../../core/box/face.js";
import { caliperWords, holeWords } from "../../../words/layout-words.js";
import { useShows } from "../../app/context.js";
import { ReadOut, useReadOut } from "../../parts/read-out.js";
import { useLayoutWords } from "../../parts/use-layout-words.js";
import { useWordsOfBoxes } from "../../words/boxes.js";
import { asChoices } from "../boat/sheet/path.js";

interface FaceProps {
  readonly face: Face;
  readonly body: BoxBody;
  readonly entries: readonly Placed[];
  readonly faults: readonly EntryFault[];
  readonly movable: boolean;
  readonly onTry: (entry: Placed) => void;
  readonly onTake: (entry: Placed) => void;
  readonly onLeave: () => void;
}

const edgeMm = 6;
/** A hole stays large enough for a finger; a long face is moved across under it. */
const leastPxPerMm = 2.4;
const stillRole = { role: "group" } as const;
const movableRole = { role: "option", "aria-selected": false, tabIndex: 0 } as const;
const fixedRole = { role: "img" } as const;

/** One face at scale, seen from outside with the lid above: holes, what their nuts cover, and where the one in hand may lie. */
export function FaceView({ face, body, entries, faults, movable, onTry, onTake, onLeave }: FaceProps) {
  const words = useWordsOfBoxes().boxes;
  const { entry: named } = useLayoutWords().words;
  const shows = useShows();
  const drawing = useRef<SVGSVGElement>(null);
  const [said, say] = useReadOut();
  const held = useRef<{ from: Placed; x: number; y: number; now: Placed; moved: boolean }>(undefined);
  const wide = face.lengthMm + 2 * edgeMm;
  const high = face.depthMm + 2 * edgeMm + 6;
  const down = (y: number) => edgeMm + 3 + face.depthMm - y;
  const labelOf = (entry: Placed) =>
    words.entry(
      named(entry.id),
      holeWords(entry.holeMm, shows),
      caliperWords(entry.x, shows),
      caliperWords(entry.y, shows),
    );
  const move = (event: PointerEvent) => {
    const { current } = held;
    const width = drawing.current?.getBoundingClientRect().width ?? 0;
    if (!current || width === 0) return;
    const perPx = wide / width;
    const x = Math.round((current.from.x + (event.clientX - current.x) * perPx) * 2) / 2;
    const y = Math.round((current.from.y - (event.clientY - current.y) * perPx) * 2) / 2;
    current.moved = current.moved || Math.hypot(event.clientX - current.x, event.clientY - current.y) > 3;
    if (!current.moved) return;
    current.now = { ...current.from, ...within(face, x, y) };
    onTry(current.now);
  };
  const up = () => {
    const { current } = held;
    held.current = undefined;
    if (current?.moved) onTake(current.now);
  };
  const onKey = (entry: Placed) => (event: KeyboardEvent) => {
    const step = steps[event.key];
    if (!step) return;
    event.preventDefault();
    const byMm = nudgeMm[shows.lengths][event.shiftKey ? "far" : "near"];
    const moved = { ...entry, ...within(face, entry.x + step[0] * byMm, entry.y + step[1] * byMm) };
    onTake(moved);
    say(labelOf(moved));
  };
  const hands = (entry: Placed) => ({
    onPointerDown: (event: PointerEvent<SVGGElement>) => {
      if (!movable || event.button !== 0) return;
      held.current = { from: entry, x: event.clientX, y: event.clientY, now: entry, moved: false };
      event.currentTarget.setPointerCapture(event.pointerId);
    },
    onPointerMove: move,
    onPointerUp: up,
    onPointerCancel: () => {
      held.current = undefined;
      onLeave();
    },
    onKeyDown: movable ? onKey(entry) : undefined,
  });
  return (
    <figure
      className="face"
      style={{ width: (wide * 96) / 25.4, minWidth: Math.min(wide * leastPxPerMm, 900) }}
    >
      <figcaption>{words.faces[face.name]}</figcaption>
      <svg
        ref={drawing}
        viewBox={`0 0 ${wide} ${high}`}
        {...(movable ? asChoices : stillRole)}
        aria-label={words.faces[face.name]}
      >
        <rect
          className="face-edge"
          x={edgeMm}
          y={down(face.depthMm)}
          width={face.lengthMm}
          height={face.depthMm}
        />
        {face.lidLipMm > 0 && (
          <path
            className="face-lip"
            d={`M${edgeMm} ${down(face.depthMm - face.lidLipMm)}h${face.lengthMm}`}
          />
        )}
        {face.keepOuts.map((keep) => (
          <rect
            key={keep.x}
            className="face-keep"
            x={edgeMm + keep.x}
            y={down(keep.y + keep.heightMm)}
            width={keep.widthMm}
            height={keep.heightMm}
          />
        ))}
        <text className="map-small" x={wide / 2} y={edgeMm - 1} fontSize={4.4} textAnchor="middle">
          {words.lid}
        </text>
        <text className="map-small" x={wide / 2} y={high - edgeMm + 2} fontSize={4.4} textAnchor="middle">
          {words.base}
        </text>
        {entries.map((entry, index) => {
          const bad = faults.some(({ at, with: other }) => at === entry.id || other === entry.id);
          const window = windowOf(face, entry, body);
          return (
            <g
              key={entry.id}
              className="entry"
              data-entry={entry.id}
              data-bad={bad}
              data-movable={movable}
              {...(movable ? movableRole : fixedRole)}
              aria-label={labelOf(entry)}
              aria-describedby={index === 0 ? "boxes-hint" : undefined}
              {...hands(entry)}
            >
              {window.x1 > window.x0 && window.y1 > window.y0 && (
                <rect
                  className="entry-window"
                  x={edgeMm + window.x0}
                  y={down(window.y1)}
                  width={window.x1 - window.x0}
                  height={window.y1 - window.y0}
                />
              )}
              <circle className="entry-nut" cx={edgeMm + entry.x} cy={down(entry.y)} r={entry.acrossMm / 2} />
              <circle className="entry-hole" cx={edgeMm + entry.x} cy={down(entry.y)} r={entry.holeMm / 2} />
              <text x={edgeMm + entry.x} y={down(entry.y) + 1.7} fontSize={4.8} textAnchor="middle">
                {bad ? `${index + 1}!` : index + 1}
              </text>
            </g>
          );
        })}
      </svg>
      <ReadOut said={said} />
      <ol className="face-legend">
        {entries.map(({ id }) => (
          <li key={id}>
            <bdi>{named(id)}</bdi>
          </li>
        ))}
      </ol>
    </figure>
  );
}

/** What an arrow key moves a hole by, and with Shift [mm]. */
const nudgeMm = {
  millimetres: { near: 1, far: 5 },
  inches: { near: 25.4 / 32, far: 25.4 / 8 },
} as const;

const steps: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** Kept on the face, wherever one drags to. */
function within({ lengthMm, depthMm }: Face, x: number, y: number): { x: number; y: number } {
  return { x: Math.min(Math.max(x, 0), lengthMm), y: Math.min(Math.max(y, 0), depthMm) };
}
