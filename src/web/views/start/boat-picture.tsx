/** A small boat in fine lines, profile over plan, as on a designer's drawing; for the eye only. */
export function BoatPicture() {
  return (
    <svg className="boat-picture" viewBox="0 0 640 220" aria-hidden="true" focusable="false">
      <g className="hair">
        <path d="M20 84h600M20 168h600" />
        {[80, 140, 200, 260, 320, 380, 440, 500, 560].map((x) => (
          <path key={x} d={`M${x} 22v86M${x} 130v76`} />
        ))}
      </g>
      <g className="ink">
        <path d="M62 52c120 14 330 18 516-20-12 38-40 64-70 74-120 6-300 6-408 0C82 92 68 74 62 52z" />
        <path d="M62 52c150 22 350 22 516-20M70 74c150 18 330 18 488-14" className="thin" />
        <path d="M62 168c0-26 40-34 160-34 170 0 300 10 356 34-56 24-186 34-356 34-120 0-160-8-160-34z" />
        <path
          d="M78 168c0-18 44-26 144-26 150 0 260 8 318 26-58 18-168 26-318 26-100 0-144-8-144-26z"
          className="thin"
        />
        <path d="M170 143v50M330 142v52M452 148v40" className="thin" />
      </g>
      <g className="accent">
        <path d="M128 168h122l46-18h96M250 168l46 18h96" />
        <circle cx="392" cy="150" r="4.5" />
        <circle cx="392" cy="186" r="4.5" />
        <path d="M108 160h20v16h-20z" />
      </g>
    </svg>
  );
}
