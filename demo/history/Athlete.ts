import { setupKey } from '#contract/log/setupKey.ts';
import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import type { Lift } from '#contract/records/lift.ts';
import { assembleHeights } from '#reckon/lifter/assembleHeights.ts';
import { type Chance, chanceOf } from './Chance.ts';
import { type LifeCourse, lifeCourse } from './lifeCourse.ts';
import { type StrengthCourse, strengthCourse } from './strengthCourse.ts';
import { type TrueLifter, trueLifters } from './TrueLifter.ts';
import { dayOf, trueBody } from './trueBody.ts';
import { type TaskSetup, type TrueTask, trueTask } from './trueTask.ts';

/** An invented lifter with two invented years, for sessions to draw from. Days count from today, negative in the past. */
export interface Athlete extends TrueLifter {
  life: LifeCourse;
  chance: Chance;
  bests: (RecordOf<'best'> & { day: number })[];
  /** Heights of the boxes that were measured with the lifter, and of the bar at the bottom of each lift (m). */
  boxesM: number[];
  bottomM: Record<Lift, number>;
  bodyOn: (day: number) => number;
  courses: Record<Lift, StrengthCourse>;
  task: (setup: TaskSetup) => TrueTask;
}

export function athletes(records: ClubRecords, today: string): Athlete[] {
  return trueLifters(records, today).map((person) => {
    const { id } = person.lifter;
    const chance = chanceOf(person.seed + 1);
    const bodyOn = trueBody(records, id, today);
    const bests = records.best
      .filter(({ lifterId }) => lifterId === id)
      .map((best) => ({ ...best, day: dayOf(best.doneOn, today) }));
    const weighed = records.bodyMass.filter(({ lifterId }) => lifterId === id);
    const firstDay = Math.min(...weighed.map(({ takenOn }) => dayOf(takenOn, today)));
    const daysOf = (platform: boolean) => [
      ...new Set(bests.filter((best) => best.platform === platform).map(({ day }) => day)),
    ];
    const life = lifeCourse(firstDay, daysOf(true), daysOf(false), chance);
    const course = (lift: Lift) => strengthCourse(records, person, lift, life, bodyOn, today);
    const bottom = (lift: Lift) =>
      assembleHeights(records, id, lift, { way: 'free', heightM: null }, today).bottomM;
    return {
      ...person,
      life,
      chance,
      bests,
      boxesM: records.liftHeights
        .filter(({ lifterId, start }) => lifterId === id && start.way === 'box')
        .map(({ start }) => start.heightM!),
      bottomM: { squat: bottom('squat'), bench: bottom('bench'), deadlift: bottom('deadlift') },
      bodyOn,
      courses: { squat: course('squat'), bench: course('bench'), deadlift: course('deadlift') },
      task: remembered((task) => trueTask(records, id, person.lifts[task.lift], task, today)),
    };
  });
}

/** Each setup is worked out once. */
function remembered(find: (task: TaskSetup) => TrueTask): (task: TaskSetup) => TrueTask {
  const known = new Map<string, TrueTask>();
  return (task) => {
    const key = `${setupKey(task)} ${task.setup.rackId}`;
    const task0 = known.get(key) ?? find(task);
    known.set(key, task0);
    return task0;
  };
}
