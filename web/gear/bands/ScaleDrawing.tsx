/** How a band is measured: relaxed beside a tape, or hung from a scale with discs in it. Figures match the steps beside it. */
export function ScaleDrawing({ show }: { show: 'rest' | 'hang' }) {
  return (
    <svg className="scale-drawing" viewBox="0 0 260 340" role="img" aria-label={words[show]}>
      {show === 'rest' ? <Relaxed /> : <Hung />}
    </svg>
  );
}

const words = {
  rest: 'A relaxed loop lies flat beside a tape; its length is read from end to end.',
  hang: 'A scale hangs from a rack, the band from the scale, discs on a pin from the band; the tape beside it shows the length from end to end. One stands aside, not below and not in line.',
};

function Relaxed() {
  return (
    <g>
      <path d="M20 210H240" stroke="var(--ink)" strokeWidth="3" />
      <rect x="40" y="188" width="180" height="20" rx="10" fill="var(--rubber-soft)" stroke="var(--rubber)" />
      <rect x="48" y="194" width="164" height="8" rx="4" fill="var(--paper)" stroke="var(--rubber)" />
      <Tape x={40} y={150} length={180} flat />
      <path d="M40 140V180M220 140V180" stroke="var(--ink)" strokeDasharray="2 3" />
      <path d="M40 130H220" stroke="var(--ink)" />
      <path d="M48 126L40 130L48 134M212 126L220 130L212 134" fill="none" stroke="var(--ink)" />
      <text x="130" y="120" textAnchor="middle" className="drawn-words strong">
        rest length
      </text>
      <text x="130" y="236" textAnchor="middle" className="drawn-words">
        lying flat, not pulled
      </text>
    </g>
  );
}

function Hung() {
  return (
    <g>
      <path d="M30 18H210" stroke="var(--iron-line)" strokeWidth="8" />
      <path d="M110 22V40" stroke="var(--ink)" strokeWidth="2" />
      <circle cx="110" cy="58" r="18" fill="var(--paper)" stroke="var(--ink)" strokeWidth="2" />
      <path d="M110 58L120 47" stroke="var(--ink)" strokeWidth="2" />
      <path d="M110 76V86" stroke="var(--ink)" strokeWidth="2" />
      <Mark x={152} y={58} figure="3" />
      <rect
        x="101"
        y="86"
        width="18"
        height="158"
        rx="9"
        fill="none"
        stroke="var(--rubber)"
        strokeWidth="6"
      />
      <path d="M110 238V256" stroke="var(--ink)" strokeWidth="3" />
      <rect x="80" y="256" width="60" height="9" fill="var(--iron)" stroke="var(--iron-line)" />
      <rect x="72" y="265" width="76" height="11" fill="var(--iron)" stroke="var(--iron-line)" />
      <rect x="72" y="276" width="76" height="11" fill="var(--iron)" stroke="var(--iron-line)" />
      <Mark x={168} y={271} figure="1" />
      <path d="M28 318H244" stroke="var(--ink)" strokeWidth="3" />
      <rect x="66" y="306" width="88" height="10" fill="var(--paper-sunk)" stroke="var(--rule-strong)" />
      <Tape x={54} y={84} length={162} />
      <path d="M62 84H100M62 246H100" stroke="var(--ink)" strokeDasharray="2 3" />
      <Mark x={28} y={165} figure="2" />
      <circle cx="216" cy="205" r="8" fill="none" stroke="var(--ink)" strokeWidth="2" />
      <path
        d="M216 213V262M216 262L206 316M216 262L226 316M216 228L202 244M216 228L230 244"
        fill="none"
        stroke="var(--ink)"
        strokeWidth="2"
      />
      <text x="216" y="186" textAnchor="middle" className="drawn-words">
        aside
      </text>
    </g>
  );
}

function Tape(props: { x: number; y: number; length: number; flat?: boolean }) {
  const { x, y, length, flat } = props;
  const ticks = Array.from({ length: Math.floor(length / 9) + 1 }, (_, i) => i);
  const tick = (i: number) => {
    const size = i % 5 === 0 ? 8 : 4;
    return flat ? `M${x + i * 9} ${y + 14}v${-size}` : `M${x} ${y + i * 9}h${size}`;
  };
  return (
    <g>
      <rect
        x={x}
        y={y}
        width={flat ? length : 12}
        height={flat ? 14 : length}
        fill="var(--paper)"
        stroke="var(--rule-strong)"
      />
      <path d={ticks.map(tick).join('')} stroke="var(--ink)" />
    </g>
  );
}

function Mark({ x, y, figure }: { x: number; y: number; figure: string }) {
  return (
    <g>
      <circle cx={x} cy={y} r="12" fill="var(--ink)" />
      <text x={x} y={y + 5} textAnchor="middle" className="drawn-figure">
        {figure}
      </text>
    </g>
  );
}
