import { type KeyboardEvent, useEffect, useId, useRef, useState } from "react";
import { useWordsOfLists } from "../../words/lists.js";
import type { Column } from "./list-specs.js";

interface CellEditorProps {
  readonly column: Column;
  readonly label: string;
  readonly start: string;
  readonly options: readonly string[];
  /** Takes the text over and goes on from the cell; `stay`: focus has gone elsewhere already. */
  readonly onTake: (text: string, then: "down" | "right" | "left" | "stay") => void;
  readonly onLeave: () => void;
  /** Text of several cells was pasted into this one. */
  readonly onBlock: (text: string) => void;
}

/** The field in a cell while one types in it. Enter takes and goes down, Tab goes aside, Escape leaves all as it was. */
export function CellEditor(props: CellEditorProps) {
  const { column, label, start, options, onTake, onLeave, onBlock } = props;
  const words = useWordsOfLists().fields;
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const [text, setText] = useState(start);
  const done = useRef(false);
  useEffect(() => {
    field.current?.focus({ preventScroll: true });
    // a finger that opens a cell means to put something else there
    if (matchMedia("(pointer: coarse)").matches) field.current?.select();
  }, []);
  const take = (then: "down" | "right" | "left" | "stay") => {
    if (done.current) return;
    done.current = true;
    onTake(text, then);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    event.stopPropagation();
    if (event.nativeEvent.isComposing) return;
    if (event.key === "Enter") take("down");
    else if (event.key === "Tab") take(event.shiftKey ? "left" : "right");
    else if (event.key === "Escape") {
      done.current = true;
      onLeave();
    } else return;
    event.preventDefault();
  };
  const choices = column.takes.as === "flag" ? [words.yes, words.no] : options;
  return (
    <>
      <input
        ref={field}
        className="cell-editor"
        aria-label={label}
        value={text}
        list={choices.length > 0 ? id : undefined}
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        dir="auto"
        onChange={(event) => setText(event.target.value)}
        onKeyDown={onKeyDown}
        onBlur={() => take("stay")}
        onPaste={(event) => {
          event.stopPropagation();
          const pasted = event.clipboardData.getData("text/plain");
          if (!/[\t\n]./.test(pasted.trim())) return;
          event.preventDefault();
          done.current = true;
          onBlock(pasted);
        }}
      />
      {choices.length > 0 && (
        <datalist id={id}>
          {choices.map((choice) => (
            <option key={choice} value={choice} />
          ))}
        </datalist>
      )}
    </>
  );
}
