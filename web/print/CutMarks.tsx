/** Short thin lines where a page of four cards is cut: at the edges and in the middle, never through a word. */
export function CutMarks() {
  return (
    <svg className="cut-marks" width="100%" height="100%" aria-hidden="true">
      {marks.map(([x1, y1, x2, y2]) => (
        <line key={`${x1}${y1}`} x1={x1} y1={y1} x2={x2} y2={y2} stroke="#000" strokeWidth="0.5" />
      ))}
    </svg>
  );
}

const marks = [
  ['50%', '0', '50%', '3%'],
  ['50%', '48.5%', '50%', '51.5%'],
  ['50%', '97%', '50%', '100%'],
  ['0', '50%', '4%', '50%'],
  ['48%', '50%', '52%', '50%'],
  ['96%', '50%', '100%', '50%'],
] as const;
