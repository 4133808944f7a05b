import type { AimInTurn, GroupAsked } from '#contract/records/method.ts';
import { basisWords } from '#contract/words/basisWords.ts';
import { FigureField } from '#web/parts/FigureField.tsx';
import { PercentField } from '#web/parts/PercentField.tsx';

/** The figures of one group: sets, reps, shares and speeds by week of the wave, band shares by wave. */
export function GroupFigures(props: {
  group: GroupAsked;
  dayTitle: string;
  onChange: (group: GroupAsked) => void;
}) {
  const { group, dayTitle, onChange } = props;
  const { blocks, aim } = group;
  const setMain = (week: number, change: { sets?: number; reps?: number }) =>
    onChange({
      ...group,
      blocks: blocks.map((steps, at) =>
        at === week
          ? steps.map((step, place) => (place === mainStep(steps) ? { ...step, ...change } : step))
          : steps,
      ),
    });
  return (
    <fieldset className="season-whole season-figures-of">
      <legend>
        <strong>{group.title}</strong>, {dayTitle}
      </legend>
      <div className="fields">
        {blocks.map((steps, week) => {
          const main = steps[mainStep(steps)]!;
          const of = blocks.length === 1 ? '' : `, week ${week + 1}`;
          return [
            <FigureField
              key={`sets ${week}`}
              label={`Sets${of}`}
              value={main.sets}
              min={1}
              max={30}
              whole
              onChange={(sets) => setMain(week, { sets })}
            />,
            <FigureField
              key={`reps ${week}`}
              label={`Reps${of}`}
              value={main.reps}
              min={1}
              max={30}
              whole
              onChange={(reps) => setMain(week, { reps })}
            />,
          ];
        })}
        {shareLists(aim).map(({ word, per, shares, min, max, withShares }) =>
          shares.map((share, at) => (
            <PercentField
              key={`${word} ${at}`}
              label={shares.length === 1 ? word : `${word}, ${per} ${at + 1}`}
              value={share}
              min={min}
              max={max}
              onChange={(next) =>
                onChange({
                  ...group,
                  aim: withShares(shares.map((one, place) => (place === at ? next : one))),
                })
              }
            />
          )),
        )}
        {aim.by === 'speed' &&
          aim.zones.map((zone, at) =>
            (['fromMps', 'toMps'] as const).map((end) => (
              <FigureField
                key={`${end} ${at}`}
                label={`${end === 'fromMps' ? 'From' : 'To'}${aim.zones.length === 1 ? '' : `, week ${at + 1}`}`}
                word="m/s"
                value={zone[end]}
                min={0.05}
                max={2.5}
                onChange={(next) =>
                  onChange({
                    ...group,
                    aim: {
                      ...aim,
                      zones: aim.zones.map((one, place) => (place === at ? { ...one, [end]: next } : one)),
                    },
                  })
                }
              />
            )),
          )}
      </div>
    </fieldset>
  );
}

/** The step that the others lead up to: the last at the whole aim, else the last. */
function mainStep(steps: readonly { shareOfAim: number }[]): number {
  const at = steps.findLastIndex(({ shareOfAim }) => shareOfAim === 1);
  return at < 0 ? steps.length - 1 : at;
}

/** A list of shares of an aim, and the aim with other ones in their place. */
interface ShareList {
  word: string;
  per: 'week' | 'wave';
  shares: readonly number[];
  min: number;
  max: number;
  withShares: (shares: number[]) => AimInTurn;
}

function shareLists(aim: AimInTurn): ShareList[] {
  switch (aim.by) {
    case 'percent':
      return aim.targets.map(({ basis, shares }, at) => ({
        word: `Share, ${basisWords.find(({ value }) => value === basis)!.word}`,
        per: 'week',
        shares,
        min: 0.05,
        max: 2,
        withShares: (next) => ({
          ...aim,
          targets: aim.targets.map((target, place) => (place === at ? { ...target, shares: next } : target)),
        }),
      }));
    case 'barAndBands':
      return [
        {
          word: 'Bar',
          per: 'week',
          shares: aim.barShares,
          min: 0.05,
          max: 2,
          withShares: (barShares) => ({ ...aim, barShares }),
        },
        {
          word: 'Bands at lockout',
          per: 'wave',
          shares: aim.bandShares,
          min: 0,
          max: 1,
          withShares: (bandShares) => ({ ...aim, bandShares }),
        },
        ...aim.levels.map(
          ({ leastTimesBodyMass, bandShares }, at): ShareList => ({
            word: `Bands from ${leastTimesBodyMass} body masses on`,
            per: 'wave',
            shares: bandShares,
            min: 0,
            max: 1,
            withShares: (next) => ({
              ...aim,
              levels: aim.levels.map((level, place) =>
                place === at ? { ...level, bandShares: next } : level,
              ),
            }),
          }),
        ),
      ];
    case 'capability':
      return [
        {
          word: 'At the bottom',
          per: 'week',
          shares: aim.bottomShares,
          min: 0.1,
          max: 1.2,
          withShares: (bottomShares) => ({ ...aim, bottomShares }),
        },
        {
          word: 'At lockout',
          per: 'week',
          shares: aim.lockoutShares,
          min: 0.1,
          max: 1.2,
          withShares: (lockoutShares) => ({ ...aim, lockoutShares }),
        },
      ];
    case 'speed':
      return [];
  }
}
