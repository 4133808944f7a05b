import { percent } from '#contract/words/percent.ts';
import { type ChartUnits, massText } from './ChartUnits.ts';
import type { LoadScene } from './HeightScene.ts';
import { firstThatFits, letters, paint, textWidthPx } from './paint.ts';

/** A text in its place, with its baseline at y. */
interface PlacedText {
  text: string;
  x: number;
  y: number;
}

/** Letters at one end of the range: the number that matters, its unit, and the share of strength beside or below. */
export interface EndWords {
  number: PlacedText;
  quiet: PlacedText[];
  /** Rows (px) that they take up. */
  topY: number;
  toY: number;
}

/**
 * What is written at one end, above lockout or below the bottom. Where the pane is narrow, the share gets a line of its
 * own; what does not fit is said shorter, and the number itself is never left out.
 */
export function endWords(
  scene: LoadScene,
  units: ChartUnits,
  where: 'bottom' | 'lockout',
  pane: { x: number; width: number; levelY: number },
): EndWords | null {
  const { x, width, levelY } = pane;
  const point = where === 'bottom' ? scene.points[0] : scene.points[scene.points.length - 1];
  if (point === undefined) return null;
  const number = massText(units, point.totalN);
  const held = scene.held.find((p) => Math.abs(p.zM - point.zM) < 1e-6)?.heldN;
  const share = held !== undefined && held > 0 ? percent(point.totalN / held) : null;
  const besideX = x + textWidthPx(number, letters.number) + 3;
  const room = x + width - besideX;
  const unit = units.massUnit;
  const whole = firstThatFits([`${unit} at ${where}, ${share} of strength`], letters.small, room);
  const inOneLine = share === null || whole !== '';
  const beside =
    share !== null && inOneLine ? whole : firstThatFits([`${unit} at ${where}`, unit], letters.small, room);
  const below = inOneLine ? '' : firstThatFits([`${share} of strength`, share], letters.small, width);
  const numberY = where === 'bottom' ? levelY + 22 : levelY - (inOneLine ? 10 : 25);
  const quiet = [
    { text: beside, x: besideX, y: numberY },
    { text: below, x, y: numberY + 15 },
  ].filter(({ text }) => text !== '');
  return {
    number: { text: number, x, y: numberY },
    quiet,
    topY: numberY - letters.number * 0.75,
    toY: numberY + (inOneLine ? 4 : 19),
  };
}

export function LoadEnd({ words }: { words: EndWords | null }) {
  if (words === null) return null;
  const { number, quiet } = words;
  return (
    <g>
      <text x={number.x} y={number.y} fontSize={letters.number} fontWeight="700" fill={paint.ink}>
        {number.text}
      </text>
      {quiet.map(({ text, x, y }) => (
        <text key={text} x={x} y={y} fill={paint.quiet}>
          {text}
        </text>
      ))}
    </g>
  );
}
