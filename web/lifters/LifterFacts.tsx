import type { ReactNode } from 'react';
import { equipmentWord, liftWords } from '#contract/words/liftWords.ts';
import { written } from '#contract/words/written.ts';
import { Known } from '#web/parts/Known.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { ageOn } from './age.ts';
import { type LifterRecords, straightBest } from './lifterRecords.ts';

/** The head of the page: name and the few numbers one asks for first. */
export function LifterFacts(props: { own: LifterRecords; today: string; onEdit: () => void }) {
  const { lifter, bodyMass, best: bests } = props.own;
  const units = useUnits();
  const age = ageOn(lifter.bornOn, props.today);
  const about = [
    age === null ? 'age not known' : `${age} years`,
    lifter.category,
    equipmentWord(lifter.equipment),
  ];
  return (
    <section className="stack">
      <div className="row base">
        <h1>{lifter.name}</h1>
        <span className="quiet">{about.join(', ')}</span>
        <button type="button" className="plain" onClick={props.onEdit}>
          Change
        </button>
      </div>
      <dl className="lifters-facts">
        <Fact word="stature">
          {lifter.statureM === null ? (
            '–'
          ) : (
            <Known
              value={written(lifter.statureM, units.length)}
              unit={units.length}
              known="measured"
              size="lead"
            />
          )}
        </Fact>
        <Fact word="body mass">
          {bodyMass[0] === undefined ? (
            '–'
          ) : (
            <Known
              value={written(bodyMass[0].massKg, units.mass)}
              unit={units.mass}
              known="measured"
              size="lead"
            />
          )}
        </Fact>
        {liftWords.map(({ value, word }) => {
          const best = straightBest(bests, value);
          return (
            <Fact key={value} word={`${word}, best`}>
              {best === null ? (
                '–'
              ) : (
                <Known
                  value={written(best.setup.barKg, units.mass)}
                  unit={units.mass}
                  known="measured"
                  size="lead"
                />
              )}
            </Fact>
          );
        })}
      </dl>
      {lifter.note !== '' && <p className="quiet">{lifter.note}</p>}
    </section>
  );
}

function Fact({ word, children }: { word: string; children: ReactNode }) {
  return (
    <div>
      <dt className="small quiet">{word}</dt>
      <dd>{children}</dd>
    </div>
  );
}
