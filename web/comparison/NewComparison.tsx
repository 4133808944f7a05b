import { useState } from 'react';
import { useLocation } from 'wouter';
import { type ComparisonWish, comparisonWish } from '#contract/comparison/comparisonWish.ts';
import { localDate } from '#contract/records/kind.ts';
import type { Lifter } from '#contract/records/lifters.ts';
import { notOfAge } from '#contract/records/notOfAge.ts';
import { LEAST_WEEKS, MOST_WEEKS, startProblem } from '#contract/records/planProblem.ts';
import { dateText } from '#contract/words/dateText.ts';
import { liftWords, startWords } from '#contract/words/liftWords.ts';
import { notDrawnSentence } from '#contract/words/notDrawnSentence.ts';
import { outcomeWords } from '#contract/words/outcomeText.ts';
import { hungWords } from '#contract/words/variantText.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { useDraw } from '#web/api/useComparison.ts';
import { useWorkTold } from '#web/api/useWorkTold.ts';
import { FigureField } from '#web/parts/FigureField.tsx';
import { localToday } from '#web/parts/localToday.ts';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { Waiting } from '#web/parts/Waiting.tsx';
import { wrongText } from '#web/parts/wrongText.ts';
import { LifterTicks } from '#web/setup/LifterTicks.tsx';
import { OutlookView } from './OutlookView.tsx';
import { useWishInAddress } from './useWishInAddress.ts';

/** In the choice of a method: the way's name says all. */
const NO_METHOD = '';

/** A comparison before the draw: two ways, what is looked at, how long, who; and at once what could be seen. */
export function NewComparison() {
  const club = useClub();
  const today = localToday(useClubSettings().timeZone);
  const [, go] = useLocation();
  const draw = useDraw();
  const chosen = useWishInAddress(today);
  const told = useWorkTold('comparison');
  const [isDrawing, setDrawing] = useState(false);
  const [title, setTitle] = useState('');
  const [firstMethodId, setFirstMethod] = useState<string | null>(null);
  const [secondMethodId, setSecondMethod] = useState<string | null>(null);
  const { outcome, lift, way, hung, first, second, startsOn, weeks } = chosen;
  // While the day is being typed, everybody is judged by today.
  const judgedOn = localDate.safeParse(startsOn).success ? startsOn : today;
  const here = club.lifter.filter(({ leftOn }) => leftOn === null || leftOn > judgedOn);
  const offered = here.filter(({ bornOn }) => notOfAge(bornOn, judgedOn) === null);
  const lifterIds = chosen.lifterIds.filter((id) => offered.some((one) => one.id === id));
  const family = outcome === 'setup' ? { way, hung } : null;
  const wish = { outcome, lift, family, ways: [first, second], startsOn, weeks, lifterIds };
  const wrong = wrongWith({ startsOn, weeks, lifterIds, ways: [first, second] }, today);
  const methods = [
    { value: NO_METHOD, word: 'none: the name says it' },
    ...club.method.map(({ id, methodDocument: of }) => ({
      value: id,
      word: `${of.title}, version ${of.version}`,
    })),
  ];
  const save = async () => {
    setDrawing(true);
    try {
      const id = await draw({
        ...comparisonWish.parse(wish),
        title,
        firstMethodId,
        secondMethodId,
        note: '',
        seed: null,
      });
      go(`/${id}`);
    } finally {
      setDrawing(false);
    }
  };
  return (
    <div className="stack loose comparison">
      <h1>Plan a comparison</h1>
      <p>
        Lots decide who gets which of two ways, before anybody starts. Take only ways that you would give to
        each of these lifters anyway, and ask everybody first.
      </p>
      <RecordForm
        title="What is compared"
        onSave={save}
        onLeave={() => go('/')}
        leaveWord="Not now"
        saveWord="Draw who gets which"
        wrong={noDay(startsOn) === null ? wrong : null}
      >
        <TextField label="Title" value={title} onChange={setTitle} required maxLength={80} />
        <TextField
          label="First way"
          value={first}
          onChange={chosen.setFirst}
          required
          maxLength={80}
          hint="As you say it in the gym: waves of three weeks."
        />
        <TextField label="Second way" value={second} onChange={chosen.setSecond} required maxLength={80} />
        {club.method.length > 0 && (
          <>
            <SelectField
              label="Method of the first way"
              value={firstMethodId ?? NO_METHOD}
              options={methods}
              onChange={(id) => setFirstMethod(id === NO_METHOD ? null : id)}
            />
            <SelectField
              label="Method of the second way"
              value={secondMethodId ?? NO_METHOD}
              options={methods}
              onChange={(id) => setSecondMethod(id === NO_METHOD ? null : id)}
            />
          </>
        )}
        <SelectField
          label="Looked at"
          value={outcome}
          options={outcomeWords}
          onChange={chosen.setOutcome}
          hint="Said before anybody starts, and not changed afterwards."
        />
        <SelectField label="Lift" value={lift} options={liftWords} onChange={chosen.setLift} />
        {outcome === 'setup' && (
          <>
            <SelectField label="Start" value={way} options={startWords(lift)} onChange={chosen.setWay} />
            <SelectField label="On the bar" value={hung} options={hungWords} onChange={chosen.setHung} />
          </>
        )}
        <TextField label="First day" type="date" value={startsOn} onChange={chosen.setStartsOn} required />
        <FigureField
          label="Lasts"
          word="weeks"
          value={weeks}
          min={LEAST_WEEKS}
          max={MOST_WEEKS}
          whole
          onChange={chosen.setWeeks}
        />
        <LifterTicks lifters={offered} ticked={lifterIds} onChange={chosen.setLifterIds} />
        <NotOffered lifters={here} startsOn={judgedOn} />
        {isDrawing ? (
          <section className="whole-line comparison-outlook" aria-label="The draw">
            <Waiting what="Drawing, and simulating what was drawn:" told={told} />
          </section>
        ) : (
          <OutlookView wish={wrong === null ? readyWish(wish) : null} wrong={wrong} />
        )}
      </RecordForm>
    </div>
  );
}

/** What could be seen does not wait for the names of the ways. */
function readyWish(wish: object): ComparisonWish | null {
  const { ways } = wish as { ways: string[] };
  const named = ways.map((name, at) => (name.trim() === '' ? `way ${at + 1}` : name));
  return comparisonWish.safeParse({ ...wish, ways: named }).data ?? null;
}

function wrongWith(
  wish: { startsOn: string; weeks: number; lifterIds: readonly string[]; ways: readonly string[] },
  today: string,
): string | null {
  const { startsOn, weeks, lifterIds, ways } = wish;
  const none = noDay(startsOn);
  if (none !== null) return none;
  if (startsOn < today)
    return `First day is ${dateText(startsOn)}; a comparison begins today or later, since it is planned before anybody starts.`;
  const late = startProblem(startsOn, weeks, dateText);
  if (late !== null) return `First day is ${dateText(startsOn)}; ${late}.`;
  const [first, second] = ways.map((name) => name.trim().toLowerCase());
  if (first !== '' && first === second) return 'Second way: give it another name than the first.';
  return lifterIds.length < 2 ? 'Lifters: tick at least two.' : null;
}

/** Why a first day is none, which its field says too. */
function noDay(startsOn: string): string | null {
  return wrongText({ label: 'First day', value: startsOn, type: 'date', required: true });
}

/** Who cannot be ticked, and why. */
function NotOffered({ lifters, startsOn }: { lifters: readonly Lifter[]; startsOn: string }) {
  const told = lifters.flatMap(({ id, name, bornOn }) => {
    const reason = notOfAge(bornOn, startsOn);
    return reason === null ? [] : [notDrawnSentence({ lifterId: id, name, reason })];
  });
  return told.length === 0 ? null : <p className="whole-line small quiet">{told.join(' ')}</p>;
}
