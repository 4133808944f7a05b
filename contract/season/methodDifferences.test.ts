import { describe, expect, it } from 'vitest';
import { methodDifferences } from './methodDifferences.ts';
import { shippedMethods } from './shipped/shippedMethods.ts';

const [method] = structuredClone(shippedMethods);

describe('two methods side by side', () => {
  it('a method does not differ from itself, nor by its version and its day', () => {
    expect(methodDifferences(method!, { ...method!, version: 9, madeOn: '2030-01-01' })).toEqual([]);
  });

  it('a changed figure is told by phase, day, group and week, in both directions', () => {
    const changed = structuredClone(method!);
    const phase = changed.phases.find(({ id }) => id === 'speed-waves')!;
    const group = phase.days.flatMap(({ groups }) => groups).find(({ id }) => id === 'speed-squat')!;
    if (group.aim.by !== 'barAndBands') throw new Error('The speed squat hangs bands.');
    group.aim.barShares[1] = 0.5;
    group.blocks[0]![0]!.reps = 3;
    const before = methodDifferences(method!, changed);
    const back = methodDifferences(changed, method!);
    expect(before).toHaveLength(2);
    expect(before[0]!.where).toMatch(/^Speed waves, .*Speed squat, .*bar of week 2$/);
    expect(before[0]!.after).toBe('50 %');
    expect(before[1]!.where).toMatch(/Speed squat, .*step.* 1, reps$/);
    expect(back.map(({ where, before: was, after: is }) => [where, is, was])).toEqual(
      before.map(({ where, before: was, after: is }) => [where, was, is]),
    );
  });

  it('a box by depth is told as one', () => {
    const changed = structuredClone(method!);
    const squat = changed.phases.find(({ id }) => id === 'speed-waves')!.days[0]!.groups[0]!;
    squat.variants[0]!.start = { way: 'box', heightM: 0.36 };
    expect(methodDifferences(changed, method!).map(({ before, after }) => [before, after])).toContainEqual([
      'box',
      "box at each lifter's own height",
    ]);
  });

  it('another aim, day of the week, lift or kind of work is told in the words of the screen', () => {
    const changed = structuredClone(method!);
    const [day] = changed.phases[0]!.days;
    day!.weekday = 1;
    Object.assign(day!.groups[0]!, { work: 'speed', lift: 'bench' });
    const told = methodDifferences(method!, changed).map(({ where, after }) => [
      where.split(', ').at(-1),
      after,
    ]);
    expect(told).toEqual([
      ['day of the week', 'Mon'],
      ['kind of work', 'speed'],
      ['lift', 'bench press'],
    ]);
  });

  it('a source, and whose speed counts, are told as the form calls them', () => {
    const changed = structuredClone(method!);
    Object.assign(changed.sources[0]!, { of: 'Band steps', source: 'our own log' });
    const speed = { by: 'speed' as const, zones: [{ fromMps: 0.7, toMps: 0.8 }], of: 'firstRep' as const };
    changed.phases[0]!.days[0]!.groups[0]!.aim = speed;
    const ofSet = structuredClone(changed);
    ofSet.phases[0]!.days[0]!.groups[0]!.aim = { ...speed, of: 'set' };
    expect(methodDifferences(method!, changed).map(({ where }) => where)).toEqual(
      expect.arrayContaining(['source 1, which figures', 'source 1, their source']),
    );
    expect(methodDifferences(changed, ofSet)).toEqual([
      { where: expect.stringMatching(/whose speed$/), before: 'first rep', after: 'whole set' },
    ]);
  });

  it('a phase that one of them lacks is one difference, not one for each of its figures', () => {
    const shorter = { ...method!, phases: method!.phases.slice(0, -1) };
    expect(methodDifferences(method!, shorter)).toEqual([
      { where: method!.phases.at(-1)!.title, before: 'is there', after: null },
    ]);
  });
});
