const paths = {
  undo: "M9 7 4.5 11.5 9 16M5 11.5h9.5a5 5 0 0 1 0 10H11",
  redo: "m15 7 4.5 4.5L15 16m4-4.5H9.5a5 5 0 0 0 0 10H13",
  close: "M6 6l12 12M18 6 6 18",
  back: "M14.5 5 7.5 12l7 7",
  more: "M5 12h.01M12 12h.01M19 12h.01",
  settings: "M4 8h9m5 0h2M4 16h2m5 0h9M15.5 5.5v5M8.5 13.5v5",
  add: "M12 5v14M5 12h14",
  remove: "M5 12h14",
  open: "M4 18V6h6l2 2.5h8V18z",
  save: "M12 4v11m-4.5-4L12 15.5 16.5 11M5 20h14",
  up: "m6.5 14 5.5-5.5 5.5 5.5",
  down: "m6.5 10 5.5 5.5 5.5-5.5",
  check: "m5 12.5 4.5 4.5L19 7.5",
  arrow: "M5 12h13m-5-5.5 5.5 5.5-5.5 5.5",
} as const;

export type IconName = keyof typeof paths;

/** A small drawing beside words; it says nothing by itself. */
export function Icon({ name }: { name: IconName }) {
  return (
    <svg className="icon" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <path d={paths[name]} />
    </svg>
  );
}
