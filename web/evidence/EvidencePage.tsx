import { Link, useLocation } from 'wouter';
import type { EvidenceReport } from '#contract/evidence/evidenceReport.ts';
import { counted } from '#contract/words/counted.ts';
import { useClub } from '#web/api/useClub.ts';
import { useEvidence } from '#web/api/useEvidence.ts';
import { useWorkTold } from '#web/api/useWorkTold.ts';
import { EmptyState } from '#web/parts/EmptyState.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { useLabel } from '#web/parts/useLabel.ts';
import { Waiting } from '#web/parts/Waiting.tsx';
import { AnswerSection } from './AnswerSection.tsx';
import { RangeLegend } from './RangeLegend.tsx';

const WHOLE_CLUB = 'club';

/** Every question with its answer, for the club or for one lifter. */
export function EvidencePage({ lifterId }: { lifterId: string | null }) {
  const { lifter } = useClub();
  const { label: labelAsked, setLabel, options } = useLabel(lifter);
  // One lifter stands beside the whole club.
  const label = lifterId === null ? labelAsked : '';
  const { report, error, isAsked, stop, askAgain } = useEvidence(label);
  const told = useWorkTold('evidence');
  const [, navigate] = useLocation();
  const nameOf = (id: string) => lifter.find((one) => one.id === id)?.name ?? 'a lifter no longer kept';
  if (lifterId !== null && !lifter.some(({ id }) => id === lifterId)) {
    return (
      <p>
        There is no such lifter. <Link href="/">The whole club</Link>
      </p>
    );
  }
  const of = lifterId === null ? label : nameOf(lifterId);
  const who = [...lifter]
    .sort((a, b) => a.name.localeCompare(b.name))
    .map(({ id, name }) => ({ value: id, word: name }));
  return (
    <div className="stack loose evidence">
      <div className="row ends">
        <h1>{of === '' ? 'Evidence' : `Evidence for ${of}`}</h1>
      </div>
      <Link href="/backtest">Forecasts of past meets, beside what was lifted</Link>
      <Link href="~/comparison">Two ways of training, compared by lot</Link>
      {error && <p role="alert">{error.message}</p>}
      {report === undefined && !error && !isAsked && (
        <p className="row">
          Stopped; nothing was compared.
          <button type="button" onClick={askAgain}>
            Compare after all
          </button>
        </p>
      )}
      {report === undefined && !error && isAsked && (
        <Waiting
          what="Comparing every set of the log with what was lifted at meets:"
          usually="A club of 40 with years of sets takes about half a minute. Other screens stay usable."
          told={told}
          onStop={stop}
        />
      )}
      {report !== undefined && isEmpty(report) && label === '' && <NothingYet />}
      {report !== undefined && (!isEmpty(report) || label !== '') && (
        <>
          <div className="evidence-head">
            <p className="quiet">{restsOn(report)}</p>
            <div className="fields find-fields screen-only">
              <SelectField
                label="Answers for"
                value={lifterId ?? WHOLE_CLUB}
                options={[{ value: WHOLE_CLUB, word: 'the whole club' }, ...who]}
                onChange={(id) => navigate(id === WHOLE_CLUB ? '/' : `/${id}`)}
              />
              {lifterId === null && options.length > 1 && (
                <SelectField
                  label="By those with the label"
                  value={label}
                  options={options}
                  onChange={setLabel}
                />
              )}
            </div>
          </div>
          <RangeLegend />
          {report.answers.map((answer) => (
            <AnswerSection
              key={answer.question}
              answer={answer}
              label={label}
              lifterId={lifterId}
              nameOf={nameOf}
            />
          ))}
        </>
      )}
    </div>
  );
}

function isEmpty({ sets, meetLifts }: EvidenceReport): boolean {
  return sets === 0 && meetLifts === 0;
}

function restsOn({ sets, meetLifts, from, to, windowDays }: EvidenceReport): string {
  const days = from !== null && to !== null ? `, ${monthOf(from)} to ${monthOf(to)}` : '';
  return `From ${sets.toLocaleString('en-GB')} sets and ${counted(meetLifts, 'lift')} at meets${days}. A gain is only counted at the same exact setup, by what was lifted in the ${windowDays} days before each meet. What went together need not be cause and effect.`;
}

const month = new Intl.DateTimeFormat('en-GB', { month: 'long', year: 'numeric', timeZone: 'UTC' });

function monthOf(date: string): string {
  return month.format(new Date(`${date}T00:00:00Z`));
}

function NothingYet() {
  return (
    <EmptyState
      title="Nothing to compare yet"
      steps={[
        'Log what is done on each day, misses too, with the bar, bands and box as they were.',
        'Keep a few setups the same from meet to meet: only a gain at the same setup can be counted.',
        'Write down what was made at meets. From 3 lifters and 8 gains on, this page says what reached the platform.',
      ]}
      action={
        <Link href="~/day" className="button strong">
          To the days
        </Link>
      }
    />
  );
}
