import type { Question } from '#contract/evidence/evidenceReport.ts';

/** What long work is at, for whoever waits for it. `at` counts from 1. */
export type Doing =
  | { code: 'ranking'; at: number; of: number }
  | { code: 'sharing'; group: string }
  | { code: 'readingLog'; at: number; of: number }
  | { code: 'question'; at: number; of: number; question: Question }
  | { code: 'weighingLifters'; at: number; of: number }
  | { code: 'playing'; at: number; of: number };

/** Hears how far long work is: parts done of all, which take about the same time each, and what it is at. */
export type Tell = (done: number, total: number, doing?: Doing) => void;

export interface Told {
  done: number;
  total: number;
  doing: Doing | null;
}

/** How far one long work is: which, and of what. */
export interface WorkTold extends Told {
  work: 'day' | 'evidence' | 'comparison';
  /** Of a day its id; of the club empty. */
  of: string;
}

/** What is told under way, in a coach's words: "Comparing bands, hookups and bars: lifter 3 of 8." */
export function doingSentence(doing: Doing): string {
  switch (doing.code) {
    case 'ranking':
      return `Comparing every band, hookup and bar: lifter ${doing.at} of ${doing.of}.`;
    case 'sharing':
      return `Sharing the gear out: ${doing.group}.`;
    case 'readingLog':
      return `Reading the log for hard lifts: ${Math.floor((100 * doing.at) / Math.max(1, doing.of))} %.`;
    case 'question':
      return `Question ${doing.at} of ${doing.of}: ${asked[doing.question]}.`;
    case 'weighingLifters':
      return `Weighing the logs of those who are ticked: lifter ${doing.at} of ${doing.of}.`;
    case 'playing':
      return `Simulating such comparisons: ${doing.at} of ${doing.of}.`;
  }
}

const asked: Record<Question, string> = {
  carryOver: 'how much of a gym gain reaches the platform',
  boxHeight: 'what height of a box is worth',
  variants: 'what a gain in each assistance lift was worth',
  bandShare: 'whether more band came with larger gains',
  equipped: 'whether it is different in equipment',
};

/** From this share on what went before says how long the rest takes. */
const leastShare = 1 / 3;

/** About how long the rest takes, going by the part that is done: "about 20 s more"; empty as long as too little is. */
export function remainingText({ done, total }: Pick<Told, 'done' | 'total'>, secondsSoFar: number): string {
  if (total <= 0 || done / total < leastShare || done >= total) return '';
  const seconds = (secondsSoFar * (total - done)) / done;
  if (seconds < 1.5) return 'about a second more';
  if (seconds < 10) return `about ${Math.round(seconds)} s more`;
  if (seconds < 90) return `about ${10 * Math.round(seconds / 10)} s more`;
  return `about ${Math.round(seconds / 60)} min more`;
}
