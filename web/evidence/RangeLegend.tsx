/** What marks and lines of the pictures mean. */
export function RangeLegend() {
  return (
    <p className="chart-legend small quiet">
      <span>
        <svg width="44" height="16" aria-hidden="true">
          <path d="M0 8h44" stroke="var(--ink)" strokeWidth="1.25" />
          <path d="M10 8h24" stroke="var(--ink)" strokeWidth="5" />
        </svg>
        thick: holds the truth 80 % of the time; thin: 95 %
      </span>
      <span>
        <svg width="16" height="16" aria-hidden="true">
          <rect x="2" y="2" width="12" height="12" fill="var(--ink)" />
        </svg>
        the club
      </span>
      <span>
        <svg width="16" height="16" aria-hidden="true">
          <circle cx="8" cy="8" r="5.5" fill="var(--paper)" stroke="var(--ink)" strokeWidth="2" />
        </svg>
        one lifter, leaning on the club where their own log says little
      </span>
    </p>
  );
}
