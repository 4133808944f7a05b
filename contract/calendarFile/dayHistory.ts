import type { RecordOf } from '#contract/records/allKinds.ts';
import type { Club } from '#contract/records/club.ts';
import type { Day } from '#contract/records/day.ts';

type Meet = RecordOf<'meet'>;
type SeasonEntry = RecordOf<'seasonEntry'>;

/** What the log of changes tells of training days and meets that they themselves do not. */
export interface DayHistory {
  /** The last change that is in it; 0: none. */
  seq: number;
  /** By the day's id: every day that a change named, removed ones too. */
  days: ReadonlyMap<string, DayPast>;
  /** Likewise every meet; everybody who was ever to lift at it. */
  meets: ReadonlyMap<string, MeetPast>;
  /** What befell all days at once: another usual hour, another club in the place of this one. */
  all: Told;
}

/** How often something was changed, and when last; null: never. */
export interface Told {
  changes: number;
  changedAt: string | null;
}

export interface DayPast extends Told {
  /** As it last stood. */
  last: Pick<Day, 'date' | 'title'>;
  /** Everybody who ever had a place in it. */
  lifterIds: ReadonlySet<string>;
}

export interface MeetPast extends Told {
  /** As it last stood; null: it came with a club that replaced another, and was not changed since. */
  last: Pick<Meet, 'date' | 'title'> | null;
  lifterIds: ReadonlySet<string>;
}

/** As much of a change as is read here. */
export interface ToldChange {
  seq: number;
  madeAt: string;
  replaced: boolean;
  entries: readonly { kind: string; id: string; before: object | null; after: object | null }[];
}

export const noHistory: DayHistory = {
  seq: 0,
  days: new Map(),
  meets: new Map(),
  all: { changes: 0, changedAt: null },
};

/** The history with the changes that come after it, oldest first. */
export function historyAfter(history: DayHistory, changes: readonly ToldChange[]): DayHistory {
  const days = new Map(history.days);
  const meets = new Map(history.meets);
  let { seq, all } = history;
  for (const change of changes) {
    seq = change.seq;
    if (change.replaced || change.entries.some(changesTheHour)) all = toldAgain(all, change);
    for (const { kind, id, before, after } of change.entries) {
      if (kind === 'meet') {
        const { date, title } = (after ?? before) as Meet;
        meets.set(id, { ...meetAgain(meets.get(id), change), last: { date, title } });
      }
      if (kind === 'seasonEntry')
        for (const { meetId, lifterId } of lifterMoves(
          before as SeasonEntry | null,
          after as SeasonEntry | null,
        )) {
          const told = meetAgain(meets.get(meetId), change);
          meets.set(meetId, { ...told, lifterIds: new Set([...told.lifterIds, lifterId]) });
        }
      if (kind !== 'day') continue;
      const known = days.get(id) ?? { changes: 0, changedAt: null, lifterIds: new Set<string>() };
      const states = [before, after].filter((state) => state !== null) as Day[];
      const lifterIds = new Set([...known.lifterIds, ...states.flatMap(liftersOf)]);
      const { date, title } = states.at(-1)!;
      days.set(id, { ...toldAgain(known, change), last: { date, title }, lifterIds });
    }
  }
  return { seq, days, meets, all };
}

/** Who has a place in a day. */
export function liftersOf({ groups }: Pick<Day, 'groups'>): string[] {
  return groups.flatMap(({ places }) => places.map(({ lifterId }) => lifterId));
}

function meetAgain(known: MeetPast | undefined, change: ToldChange): MeetPast {
  const before = known ?? { changes: 0, changedAt: null, last: null, lifterIds: new Set<string>() };
  return { ...before, ...toldAgain(before, change) };
}

/** The meets that somebody came to or left. */
function lifterMoves(before: SeasonEntry | null, after: SeasonEntry | null) {
  return [before, after].flatMap((one, at, both) => {
    const other = both[1 - at];
    const staysAt = (meetId: string) => other?.lifterId === one?.lifterId && other?.meetIds.includes(meetId);
    const { meetIds = [], lifterId = '' } = one ?? {};
    return meetIds.filter((meetId) => !staysAt(meetId)).map((meetId) => ({ meetId, lifterId }));
  });
}

function toldAgain({ changes }: Told, { madeAt }: ToldChange): Told {
  return { changes: changes + 1, changedAt: madeAt };
}

/** The fields of the club's settings that stand in each of its days. */
const hourFields = [
  'timeZone',
  'trainingStartsAt',
  'trainingMinutes',
  'namesInCalendar',
] as const satisfies readonly (keyof Club)[];

function changesTheHour({ kind, before, after }: ToldChange['entries'][number]): boolean {
  if (kind !== 'club') return false;
  return hourFields.some((field) => fieldOf(before, field) !== fieldOf(after, field));
}

function fieldOf(state: object | null, field: string): unknown {
  return state && Reflect.get(state, field);
}
