import type { Level } from "../../core/findings/finding.js";

/**
 * The sign of a level, told apart by its shape: octagon with a bar, triangle, ring, broken ring. Words stand beside it.
 * @param size Inside a drawing: across, in its units. Left out: as large as the words beside it.
 */
export function LevelMark({ level, size }: { level: Level; size?: number }) {
  return (
    <svg
      className={`level-mark level-${level}`}
      style={size === undefined ? undefined : { width: size, height: size }}
      width={size}
      height={size}
      viewBox="0 0 20 20"
      aria-hidden="true"
      focusable="false"
    >
      {shapeOf(level)}
    </svg>
  );
}

function shapeOf(level: Level) {
  switch (level) {
    case "stop":
      return (
        <>
          <path className="filled" d="M6.5 1.500h7l5 5v7l-5 5h-7l-5-5v-7z" />
          <path className="inside" d="M5.5 10h9" />
        </>
      );
    case "mend":
      return (
        <>
          <path d="M10 2 18.8 17.500H1.200z" />
          <path d="M10 7.500v4.500M10 14.800v.1" />
        </>
      );
    case "mind":
      return (
        <>
          <circle cx="10" cy="10" r="8.2" />
          <path d="M10 9.200v5M10 5.900v.1" />
        </>
      );
    case "unchecked":
      return (
        <>
          <circle className="broken" cx="10" cy="10" r="8.2" />
          <path d="M7.6 7.800c.2-1.5 1.2-2.2 2.5-2.200s2.4.8 2.4 2c0 1.9-2.4 1.9-2.4 3.900M10.1 14.300v.1" />
        </>
      );
    default:
      return level satisfies never;
  }
}
