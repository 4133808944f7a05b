/** The edge of the page's head: a measuring tape, one tick each eight pixels. */
export function Tape() {
  return (
    <svg className="tape" width="100%" height="10" aria-hidden="true">
      <defs>
        <pattern id="tape-ticks" width="80" height="10" patternUnits="userSpaceOnUse">
          {[0, 8, 16, 24, 32, 40, 48, 56, 64, 72].map((x) => (
            <path
              key={x}
              d={`M${x + 0.5} 0v${x === 0 ? 10 : x === 40 ? 7 : 4}`}
              stroke="var(--rule-strong)"
            />
          ))}
        </pattern>
      </defs>
      <path d="M0 0.5h10000" stroke="var(--ink)" />
      <rect width="100%" height="10" fill="url(#tape-ticks)" />
    </svg>
  );
}
