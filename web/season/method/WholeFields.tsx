import { fieldOf } from '#contract/records/fields.ts';
import {
  limits as limitsShape,
  type Method,
  method as methodShape,
  mostOf,
} from '#contract/records/method.ts';
import { usualNearWeeks } from '#contract/season/nearUntil.ts';
import { counted } from '#contract/words/counted.ts';
import { useClubSettings } from '#web/api/useClub.ts';
import { FigureField } from '#web/parts/FigureField.tsx';
import { LongTextField } from '#web/parts/LongTextField.tsx';
import { textLimits } from '#web/parts/limits.ts';
import { PercentField } from '#web/parts/PercentField.tsx';
import { EntriesFields } from './EntriesFields.tsx';
import { firstLimits, firstSource } from './firstEntries.ts';
import { LimitField } from './LimitField.tsx';
import { limitsOf, useMethodFields } from './methodFields.ts';

const { shape } = methodShape;
const source = shape.sources.element.shape;

/** What a method says of itself beside its title: whom it suits, its limits, where its figures come from. */
export function WholeFields({ draft, onChange }: { draft: Method; onChange: (draft: Method) => void }) {
  const { nearWeeks: clubWeeks } = useClubSettings();
  const field = useMethodFields('');
  const put = (change: Partial<Method>) => onChange({ ...draft, ...change });
  const putLimits = (change: Partial<Method['limits']>) => put({ limits: { ...draft.limits, ...change } });
  return (
    <>
      <h3 className="season-whole season-part">The method itself</h3>
      <div className="season-whole">
        <LongTextField
          {...field('says', 'What it does, in short')}
          {...textLimits(fieldOf('says', shape.says))}
          value={draft.says}
          onChange={(says) => put({ says })}
        />
      </div>
      <div className="season-whole">
        <LongTextField
          {...field('forWhom', 'For whom, and who should not follow it')}
          {...textLimits(fieldOf('forWhom', shape.forWhom))}
          value={draft.forWhom}
          onChange={(forWhom) => put({ forWhom })}
        />
      </div>
      <LimitField
        at="limits.mostHeavyLiftsAWeek"
        word="heavy lifts a week"
        label="Heavy lifts of a week, at most"
        hint="At 90 % or more at lockout, all lifts together."
        value={draft.limits.mostHeavyLiftsAWeek}
        usual={firstLimits.mostHeavyLiftsAWeek}
        limits={limitsOf(limitsShape.shape.mostHeavyLiftsAWeek)}
        onChange={(mostHeavyLiftsAWeek) => putLimits({ mostHeavyLiftsAWeek })}
      />
      <LimitField
        at="limits.mostRise"
        word="the rise from week to week"
        label="More lifts than the week before, at most"
        percent
        value={draft.limits.mostRise}
        usual={firstLimits.mostRise}
        limits={limitsOf(limitsShape.shape.mostRise)}
        onChange={(mostRise) => putLimits({ mostRise })}
      />
      <LimitField
        at="limits.mostWeeksOnOneBandShare"
        word="weeks on one band share"
        label="Weeks on one band share, at most"
        value={draft.limits.mostWeeksOnOneBandShare}
        usual={firstLimits.mostWeeksOnOneBandShare}
        limits={limitsOf(limitsShape.shape.mostWeeksOnOneBandShare)}
        onChange={(mostWeeksOnOneBandShare) => putLimits({ mostWeeksOnOneBandShare })}
      />
      <PercentField
        {...field('zoneShift', 'Zones of the volume table moved up by')}
        {...limitsOf(shape.zoneShift)}
        value={draft.zoneShift}
        hint="For work with bands; 5 is common practice. 0 takes the table as it is printed."
        onChange={(zoneShift) => put({ zoneShift })}
      />
      <FigureField
        {...field('nearWeeks', 'Worked out to bar and bands')}
        {...limitsOf(shape.nearWeeks.unwrap())}
        word="weeks"
        value={draft.nearWeeks ?? usualNearWeeks}
        hint={
          clubWeeks === null
            ? 'From today on. Later weeks are ranges; more weeks take longer to work out.'
            : `From today on. The club's settings say ${counted(clubWeeks, 'week')}, and that leads.`
        }
        onChange={(nearWeeks) => put({ nearWeeks })}
      />
      <div className="season-whole">
        <EntriesFields
          at="sources"
          title="Where its figures come from"
          one="source"
          isWide
          nameOf={({ of }) => of}
          list={draft.sources}
          most={mostOf.sources}
          first={firstSource}
          onChange={(sources) => put({ sources })}
        >
          {(one) => <SourceFields {...one} />}
        </EntriesFields>
      </div>
    </>
  );
}

type Source = Method['sources'][number];

function SourceFields(props: { at: string; each: Source; put: (change: Partial<Source>) => void }) {
  const { at, each, put } = props;
  const field = useMethodFields(at);
  return (
    <>
      <LongTextField
        {...field('of', 'Which figures')}
        {...textLimits(fieldOf('of', source.of))}
        value={each.of}
        onChange={(of) => put({ of })}
      />
      <LongTextField
        {...field('source', 'Their source')}
        {...textLimits(fieldOf('source', source.source))}
        value={each.source}
        onChange={(from) => put({ source: from })}
      />
    </>
  );
}
