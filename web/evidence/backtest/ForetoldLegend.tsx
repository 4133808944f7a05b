/** What marks and lines of the picture of foretold lifts mean. */
export function ForetoldLegend() {
  return (
    <p className="chart-legend small quiet">
      <span>
        <svg width="44" height="16" aria-hidden="true">
          <path d="M0 8h44" stroke="var(--iron-line)" strokeWidth="1.25" />
          <path d="M10 8h24" stroke="var(--iron)" strokeWidth="9" />
        </svg>
        forecast: thick for 80 %, thin for 95 %
      </span>
      <span>
        <svg width="16" height="16" aria-hidden="true">
          <circle cx="8" cy="8" r="4.5" fill="var(--ink)" />
        </svg>
        best made
      </span>
      <span>
        <svg width="16" height="16" aria-hidden="true">
          <path d="M4 4l8 8m0-8l-8 8" stroke="var(--stop)" strokeWidth="2" />
        </svg>
        lightest missed above it
      </span>
      <span>On the right: forecast, then made.</span>
    </p>
  );
}
