import { monthWord } from '#contract/words/dayWords.ts';
import { firstThatFits, letters, paint, textWidthPx } from './paint.ts';
import type { SeasonFrame } from './SeasonScene.ts';

/** A meet of the season, in weeks from the left edge. */
export interface MeetPost {
  at: number;
  title: string;
}

const MS_A_WEEK = 7 * 86_400_000;
const heightPx = 44;

/** The time across: months, meets as posts with their names, today. */
export function SeasonHead(props: { firstMonday: string; meets: readonly MeetPost[]; frame: SeasonFrame }) {
  const { frame } = props;
  const { weekPx, weeks, todayAt } = frame;
  const widthPx = weekPx * weeks;
  return (
    <svg width={widthPx} height={heightPx} viewBox={`0 0 ${widthPx} ${heightPx}`} aria-hidden="true">
      <g fontFamily={letters.family} fontSize={letters.small} fill={paint.quiet}>
        {monthsOver(props.firstMonday, frame).map(({ atPx, text }) => (
          <g key={atPx}>
            <path d={`M${atPx} 4v16`} stroke={paint.ruleStrong} />
            <text x={atPx + 4} y={13}>
              {text}
            </text>
          </g>
        ))}
      </g>
      <path
        d={Array.from({ length: weeks + 1 }, (_, week) => `M${week * weekPx} ${heightPx - 4}v4`).join('')}
        stroke={paint.ruleStrong}
      />
      <path d={`M0 ${heightPx - 0.5}H${widthPx}`} stroke={paint.ink} />
      {todayAt !== null && (
        <path
          d={`M${todayAt * weekPx} 20V${heightPx}`}
          stroke={paint.go}
          strokeWidth="2"
          strokeDasharray="4 3"
        />
      )}
      <g fontFamily={letters.family} fontSize={letters.tag} fontWeight="640" fill={paint.ink}>
        {named(props.meets, frame).map(({ at, text, x, end }) => (
          <g key={`${at} ${text}`}>
            <path d={`M${at * weekPx} 20V${heightPx}`} stroke={paint.ink} strokeWidth="3" />
            <text x={x} y={35} textAnchor={end ? 'end' : 'start'}>
              {text}
            </text>
          </g>
        ))}
      </g>
    </svg>
  );
}

/** The first of each month, as many as have room for their names; the year stands with the first and with each January. */
function monthsOver(firstMonday: string, { weekPx, weeks }: SeasonFrame) {
  const from = Date.parse(firstMonday);
  const date = new Date(from);
  date.setUTCDate(1);
  const months: { atPx: number; text: string }[] = [];
  for (;;) {
    date.setUTCMonth(date.getUTCMonth() + 1);
    const atPx = Math.round(((date.getTime() - from) / MS_A_WEEK) * weekPx);
    if (atPx >= weeks * weekPx) break;
    const withYear = months.length === 0 || date.getUTCMonth() === 0;
    const word = monthWord(date.getUTCMonth() + 1);
    months.push({ atPx, text: withYear ? `${word} ${date.getUTCFullYear()}` : word });
  }
  const standClear = (every: number) =>
    months.every(({ atPx, text }, at) => {
      const next = months[at + every];
      return (
        at % every !== 0 || atPx + 4 + textWidthPx(text, letters.small) <= (next?.atPx ?? weeks * weekPx)
      );
    });
  const every = [1, 2, 3].find(standClear) ?? 6;
  return months.filter((_, at) => at % every === 0);
}

/** A name stands left of its post, where the time before the meet is; right of it where there is more room. */
function named(meets: readonly MeetPost[], { weekPx, weeks }: SeasonFrame) {
  const sorted = [...meets].sort((a, b) => a.at - b.at);
  return sorted.map(({ at, title }, index) => {
    const before = ((sorted[index - 1]?.at ?? 0) * weekPx || 0) + clearPx;
    const after = (sorted[index + 1]?.at ?? weeks) * weekPx - clearPx;
    const post = at * weekPx;
    const left = firstThatFits([title], letters.tag, post - clearPx - before);
    if (left !== '') return { at, text: left, x: post - clearPx, end: true };
    return { at, text: firstThatFits([title], letters.tag, after - post), x: post + clearPx, end: false };
  });
}

const clearPx = 6;
