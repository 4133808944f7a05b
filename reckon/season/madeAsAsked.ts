import type { GroupAsked, PhaseOfMethod, Variant } from '#contract/records/method.ts';
import type { HeldTo } from '#contract/season/heldTo.ts';
import type {
  PlannedGroup,
  PlannedWeek,
  SeasonAsk,
  SeasonWarning,
  SetByHand,
} from '#contract/season/seasonPlan.ts';
import type { WeekAt } from './dayAim.ts';
import type { SeasonLaid, WeekLaid } from './layWeeks.ts';

/** What a group is to be on a day: its start, what the coach set instead, what the lifter is held to. */
export interface GroupChosen {
  group: GroupAsked;
  variant: Variant;
  instead: SetByHand['instead'];
  held: readonly HeldTo[];
}

export interface DayChosen {
  date: string;
  day: PhaseOfMethod['days'][number];
  closed: string | null;
  chosen: GroupChosen[];
}

export interface WeekMade {
  week: PlannedWeek;
  /** What its days are warned of. */
  told: SeasonWarning[];
}

/**
 * Weeks are laid once for all who go to the same meets. Groups and weeks of whoever is held to nothing and has nothing set by hand follow from their place in the method and the starts alone: each is made
 * once for all lifters of whom it is asked.
 */
export function madeAsAsked() {
  const laidFor = new Map<string, SeasonLaid>();
  const groupsMade = new Map<GroupAsked, Map<string, PlannedGroup[]>>();
  const weeksMade = new Map<string, WeekMade>();
  return {
    laid({ from, meets }: SeasonAsk, lay: () => SeasonLaid): SeasonLaid {
      const key = JSON.stringify([from, meets]);
      const laid = laidFor.get(key) ?? lay();
      laidFor.set(key, laid);
      return laid;
    },
    groups(chosen: GroupChosen, at: WeekAt, make: () => PlannedGroup[]): PlannedGroup[] {
      if (!isAsAsked(chosen)) return make();
      const { group, variant } = chosen;
      const ofGroup = groupsMade.get(group) ?? new Map<string, PlannedGroup[]>();
      groupsMade.set(group, ofGroup);
      const key = `${at.wave} ${at.weekOfWave} ${variant.id}`;
      const groups = ofGroup.get(key) ?? make();
      ofGroup.set(key, groups);
      return groups;
    },
    week({ monday, in: at, meets }: WeekLaid, days: readonly DayChosen[], make: () => WeekMade): WeekMade {
      if (!days.every(({ chosen }) => chosen.every(isAsAsked))) return make();
      const key = JSON.stringify([
        monday,
        at && [at.phase.id, at.weekOfPhase],
        meets,
        days.map(({ date, closed, chosen }) => [
          date,
          closed,
          chosen.map(({ group, variant }) => [group.id, variant.id]),
        ]),
      ]);
      const week = weeksMade.get(key) ?? make();
      weeksMade.set(key, week);
      return week;
    },
  };
}

function isAsAsked({ instead, held }: GroupChosen): boolean {
  return instead === null && held.length === 0;
}
