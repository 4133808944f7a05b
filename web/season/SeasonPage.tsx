import { Suspense } from 'react';
import { Link } from 'wouter';
import type { Season } from '#contract/records/season.ts';
import type { SeasonOffer } from '#contract/season/seasonOffer.ts';
import { counted } from '#contract/words/counted.ts';
import { useClub } from '#web/api/useClub.ts';
import { comesLater } from '#web/parts/comesLater.ts';
import { methodWord } from './methodWord.ts';
import { ChangesPart, LifterSeasonPage, TakenPlanPage, WhoPart } from './onDemand.tsx';
import { SeasonPlanPart } from './SeasonPlanPart.tsx';
import type { SeasonView } from './SeasonView.ts';
import { useSeasonView } from './useSeasonView.ts';

const SeasonPaperPage = comesLater(() =>
  import('./paper/SeasonPaperPage.tsx').then((m) => m.SeasonPaperPage),
);

/** The parts of a season, each under an address of its own. */
const parts = [
  { id: undefined, word: 'Plan' },
  { id: 'taken', word: 'Changes' },
  { id: 'who', word: 'Meets and lifters' },
] as const;

/** One season: its title and the others, the row of its parts, and the part that the address names. */
export function SeasonPage(props: { season: Season; part: string | undefined; of?: string }) {
  const { season: kept, part, of } = props;
  const club = useClub();
  const { season, offer } = useSeasonView(kept.id);
  const method = club.method.find(({ id }) => id === kept.methodId);
  const lifter = season.lifters.find((one) => one.lifter.id === of);
  if (part === 'lifter')
    return lifter ? (
      <LifterSeasonPage season={season} of={lifter} />
    ) : (
      <p>
        This lifter is not in this season. <Link href={`/${kept.id}`}>{kept.title}</Link>
      </p>
    );
  if (part === 'paper')
    return (
      <Suspense fallback={<p className="quiet">Fetching this page.</p>}>
        <SeasonPaperPage season={season} />
      </Suspense>
    );
  const others = club.season.filter(({ id }) => id !== kept.id);
  return (
    <div className="stack">
      <div className="row ends base">
        <div className="row base">
          <h1>{kept.title}</h1>
          {others.length > 0 && (
            <nav className="row base screen-only" aria-label="Other seasons">
              {others.map(({ id, title }) => (
                <Link key={id} href={`/${id}`}>
                  {title}
                </Link>
              ))}
            </nav>
          )}
        </div>
        <div className="row base screen-only">
          {method && <Link href={`/methods/${method.id}`}>{methodWord(method)}</Link>}
          <Link href={`/${kept.id}/paper`}>On paper</Link>
          <Link href="~/gear/club#calendar">In your calendar</Link>
          <Link href="~/comparison">Two ways compared</Link>
          <Link href="/new" className="button">
            New season
          </Link>
        </div>
      </div>
      <nav className="season-parts screen-only" aria-label="Of this season">
        {parts.map(({ id, word }) => (
          <Link
            key={word}
            href={id === undefined ? `/${kept.id}` : `/${kept.id}/${id}`}
            aria-current={id === part ? 'page' : undefined}
          >
            {word}
          </Link>
        ))}
      </nav>
      {season.lifters.length === 0 && part === undefined ? (
        <p>
          Nobody is in this season yet. <Link href={`/${kept.id}/who`}>Add lifters</Link>
        </p>
      ) : part === 'who' ? (
        <>
          {season.lifters.length > 0 && <ChangedLine offer={offer} />}
          <WhoPart season={season} />
        </>
      ) : part === 'taken' ? (
        <Taken number={of} season={season} offer={offer} />
      ) : part !== undefined ? (
        <p>There is no such part of a season.</p>
      ) : (
        <>
          <ChangedLine offer={offer} />
          <SeasonPlanPart season={season} />
        </>
      )}
    </div>
  );
}

/** What changed, or a plan that was taken before, where the address names its number. */
function Taken(props: { number: string | undefined; season: SeasonView; offer: SeasonOffer }) {
  const { number, season, offer } = props;
  const head = offer.taken.find((one) => String(one.number) === number);
  if (head === undefined)
    return (
      <div className="stack">
        {number !== undefined && (
          <p className="stop">This season has no plan {number}. Those it has are below.</p>
        )}
        <ChangesPart offer={offer} />
      </div>
    );
  return (
    <TakenPlanPage
      seasonId={season.id}
      number={head.number}
      today={season.today}
      isLast={head === offer.taken.at(-1)}
    />
  );
}

/** Says above the picture, and where the meets are changed, that what is planned now is not what holds. */
function ChangedLine({ offer: { plan, taken, differences } }: { offer: SeasonOffer }) {
  const holds = taken.at(-1);
  if (holds !== undefined && differences.length === 0) return null;
  return (
    <p className="season-changed">
      {holds === undefined
        ? 'This plan has not been taken yet. '
        : `Plan ${holds.number} still holds; what is planned now differs from it for ${counted(differences.length, 'lifter')}. `}
      <Link href={`/${plan.seasonId}/taken`}>
        {holds === undefined ? 'Take it' : 'See what changes, and why'}
      </Link>
    </p>
  );
}
