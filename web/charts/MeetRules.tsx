import { firstThatFits, letters, paint, textWidthPx } from './paint.ts';
import { type TimeScene, timeOf } from './TimeScene.ts';
import type { TimeFrame } from './timeFrame.ts';

/** A meet is a rule from top to floor with its place above it, where the names stand clear of each other. */
export function MeetRules({ meets, frame }: { meets: TimeScene['meets']; frame: TimeFrame }) {
  const labels = labelled(meets, frame);
  return (
    <g>
      {labels.map(({ on, x, text, row }) => (
        <g key={on}>
          <path
            d={`M${x} ${text === '' ? frame.top : frame.top - 4 - 15 * row}V${frame.floor}`}
            stroke={paint.ruleStrong}
            strokeDasharray="5 3"
          />
        </g>
      ))}
      {labels.map(({ on, text, textX, row }) => (
        <text
          key={on}
          x={textX}
          y={frame.top - 8 - 14 * row}
          fill={paint.quiet}
          stroke={paint.paper}
          strokeWidth="4"
          paintOrder="stroke"
        >
          {text}
        </text>
      ))}
    </g>
  );
}

/** Letters in two rows, the newest first: what finds no room has its rule alone. */
function labelled(meets: TimeScene['meets'], frame: TimeFrame) {
  const clearTo = [frame.widthPx, frame.widthPx];
  return [...meets]
    .sort((a, b) => b.on.localeCompare(a.on))
    .map(({ on, place }) => {
      const x = frame.x(timeOf(on));
      const words = place === '' ? ['meet'] : [place, 'meet'];
      for (const row of [0, 1]) {
        const text = firstThatFits(words, letters.small, clearTo[row]! - frame.left);
        const wide = textWidthPx(text, letters.small);
        const textX = Math.max(frame.left, Math.min(x - wide / 2, frame.widthPx - wide));
        if (text === '' || textX + wide > clearTo[row]!) continue;
        clearTo[row] = textX - 8;
        return { on, x, text, textX, row };
      }
      return { on, x, text: '', textX: x, row: 0 };
    });
}
