import type { Box } from '#contract/records/gear.ts';
import type { LengthUnit } from '#contract/words/viewUnits.ts';
import { formatQuantity } from '#core/units/formatQuantity.ts';

const pxPerM = 260;
const gapPx = 10;
const widthPx = 50;

/** The boxes on one floor, all to the same scale; mats lie as thin as they are. */
export function BoxStack({ boxes, lengthUnit }: { boxes: readonly Box[]; lengthUnit: LengthUnit }) {
  if (boxes.length === 0) return null;
  const tallest = Math.max(...boxes.map(({ heightM }) => heightM)) * pxPerM;
  const floorY = tallest + 26;
  return (
    <div className="table-scroll">
      <svg
        viewBox={`0 0 ${boxes.length * (widthPx + gapPx)} ${floorY + 22}`}
        width={boxes.length * (widthPx + gapPx)}
        height={floorY + 22}
        role="img"
        aria-label={`Boxes to scale: ${boxes.map((box) => `${box.label} ${formatQuantity(box.heightM, lengthUnit)}`).join(', ')}`}
      >
        {boxes.map((box, i) => {
          const x = i * (widthPx + gapPx) + gapPx / 2;
          const y = floorY - box.heightM * pxPerM;
          return (
            <g key={box.id}>
              <rect
                x={x}
                y={y}
                width={widthPx}
                height={box.heightM * pxPerM}
                fill={box.sort === 'mat' ? 'var(--iron)' : 'var(--paper)'}
                stroke="var(--ink)"
              />
              <text x={x + widthPx / 2} y={y - 8} textAnchor="middle" className="drawn-words strong">
                {formatQuantity(box.heightM, lengthUnit)}
              </text>
              <text x={x + widthPx / 2} y={floorY + 17} textAnchor="middle" className="drawn-words">
                {short(box.label)}
              </text>
            </g>
          );
        })}
        <path d={`M0 ${floorY}H${boxes.length * (widthPx + gapPx)}`} stroke="var(--ink)" strokeWidth="3" />
      </svg>
    </div>
  );
}

function short(label: string): string {
  return label.length > 9 ? `${label.slice(0, 8)}…` : label;
}
