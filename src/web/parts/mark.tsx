/** The mark in the colours of the light: a skiff seen from above, and a thread woven through its thwarts. */
export function Mark({ sizePx }: { sizePx: number }) {
  return (
    <svg className="mark" viewBox="12 3 40 58" width={sizePx * 0.7} height={sizePx} aria-hidden="true">
      <path className="hull" d="M32 5c10 10 16 22 14 52H18C16 27 22 15 32 5z" />
      <path className="thwarts" d="M20 25h24M17.5 37h29M17.5 48h29" />
      <path className="thread" d="M32 57c-9-5-9-10 0-14.5s9-9 0-13.5-6-8 0-13" />
    </svg>
  );
}
