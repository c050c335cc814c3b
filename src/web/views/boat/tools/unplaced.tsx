import { type PointerEvent, useRef, useState } from "react";
import { useWordsOfBoat } from "../../../words/boat.js";
import type { BoatThing } from "../model/things.js";
import { ThingSign } from "../sheet/thing-sign.js";

/** Entries without a place, at the edge of the drawing; each can be dragged in, or placed by its button. */
export function Unplaced(props: {
  /** The first piece of each entry. */
  things: readonly BoatThing[];
  readOnly: boolean;
  selected: string | undefined;
  select: (name: string) => void;
  /** Brought to a place of the screen; false: that was beside the sheet. */
  bring: (thing: BoatThing, clientX: number, clientY: number) => boolean;
  placeAmidships: (thing: BoatThing) => void;
}) {
  const words = useWordsOfBoat().boat;
  const { things, readOnly } = props;
  if (things.length === 0) return <p className="hint boat-unplaced">{words.allPlaced}</p>;
  return (
    <section className="boat-unplaced" aria-labelledby="not-placed">
      <h3 id="not-placed">{words.notPlaced}</h3>
      <p className="hint">{readOnly ? words.readOnlyPlan : words.notPlacedHint}</p>
      <ul>
        {things.map((thing) => (
          <li key={thing.group}>
            <Entry thing={thing} {...props} />
          </li>
        ))}
      </ul>
    </section>
  );
}

type EntryProps = Parameters<typeof Unplaced>[0] & { readonly thing: BoatThing };

function Entry({ thing, readOnly, selected, select, bring, placeAmidships }: EntryProps) {
  const words = useWordsOfBoat().boat;
  const [by, setBy] = useState<readonly [number, number]>();
  const start = useRef<readonly [number, number]>(undefined);
  const name = thing.count > 1 ? words.pieces(thing.group, thing.count) : thing.group;
  const down = (event: PointerEvent<HTMLElement>) => {
    if (readOnly || (event.pointerType === "mouse" && event.button !== 0)) return;
    start.current = [event.clientX, event.clientY];
    event.currentTarget.setPointerCapture(event.pointerId);
  };
  const move = (event: PointerEvent) => {
    if (!start.current) return;
    const [dx, dy] = [event.clientX - start.current[0], event.clientY - start.current[1]];
    if (by || Math.hypot(dx, dy) > 5) setBy([dx, dy]);
  };
  const end = (event: PointerEvent) => {
    if (start.current && by) bring(thing, event.clientX, event.clientY);
    start.current = undefined;
    setBy(undefined);
  };
  return (
    <div className="boat-unplaced-entry" data-unplaced={thing.group}>
      <span
        className="boat-handle"
        data-moving={by !== undefined || undefined}
        style={by ? { transform: `translate(${by[0]}px, ${by[1]}px)` } : undefined}
        onPointerDown={down}
        onPointerMove={move}
        onPointerUp={end}
        onPointerCancel={() => {
          start.current = undefined;
          setBy(undefined);
        }}
      >
        <svg className="boat-handle-sign" viewBox="-10 -10 20 20" aria-hidden="true" focusable="false">
          <ThingSign thing={thing} />
        </svg>
      </span>
      <button
        type="button"
        className="quiet boat-name"
        aria-pressed={selected === thing.group}
        onClick={() => select(thing.group)}
      >
        <bdi>{name}</bdi>
      </button>
      {!readOnly && (
        <button
          type="button"
          className="icon-button"
          aria-label={words.placeIt(name)}
          title={words.placeIt(name)}
          onClick={() => placeAmidships(thing)}
        >
          <PlaceIcon />
        </button>
      )}
    </div>
  );
}

function PlaceIcon() {
  return (
    <svg className="icon" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <path d="M4 14c2 4 5 5 8 5s6-1 8-5zM12 3v8m-3-3 3 3 3-3" />
    </svg>
  );
}
