import { useId } from 'react';
import { Link } from 'wouter';
import { percent } from '#contract/words/percent.ts';
import { useWorkTold } from '#web/api/useWorkTold.ts';
import { Waiting } from '#web/parts/Waiting.tsx';
import { useBeside } from './lastTime/useLastTime.ts';
import { RackLinks } from './RackLinks.tsx';
import { Solved } from './Solved.tsx';
import type { DayDraft } from './useDayDraft.ts';
import type { Solving } from './useSolving.ts';

/** Works the loads out, says how good they are, and lets the coach choose between changing bands and sharing them. */
export function SolveBar({ draft, solving }: { draft: DayDraft; solving: Solving }) {
  const { day, change, wrong } = draft;
  const { prescription, busy, latest } = solving;
  const [beside, setBeside] = useBeside();
  const lifters = new Set(day.groups.flatMap(({ places }) => places.map(({ lifterId }) => lifterId)));
  const told = useWorkTold('day', day.id);
  const slider = useId();
  const empty = day.groups.every((group) => group.places.length === 0);
  const trouble = wrong ?? solving.wrong;
  return (
    <section className="solve-bar screen-only" aria-label="Working the loads out">
      <div className="solve-act">
        <button
          type="button"
          className="strong"
          disabled={busy || empty}
          onClick={() => void solving.solve()}
        >
          {busy ? 'Working the loads out' : latest > 0 ? 'Work the loads out again' : 'Work the loads out'}
        </button>
        {latest > 0 && (
          <nav className="day-papers" aria-label="Papers of this day">
            <Link href={`/${day.id}/sheet`} className="button">
              Rack sheets
            </Link>
            <Link href={`/${day.id}/cards`} className="button">
              Lifters' cards
            </Link>
            <Link href={`/${day.id}/blank`} className="button">
              Blank sheets
            </Link>
          </nav>
        )}
      </div>
      <div className="day-furniture small">
        <div className="pull">
          <label htmlFor={slider} className="field-label">
            Bands
          </label>
          <span className="quiet">own for each</span>
          <input
            id={slider}
            className="range"
            type="range"
            min={0}
            max={1}
            step={0.1}
            value={day.oneSetPull}
            aria-valuetext={pullWords(day.oneSetPull)}
            onChange={(event) => change((now) => ({ ...now, oneSetPull: Number(event.target.value) }))}
            onPointerUp={() => latest > 0 && void solving.solve()}
            onKeyUp={(event) => event.key !== 'Tab' && latest > 0 && void solving.solve()}
          />
          <span className="quiet">one set a rack</span>
        </div>
        {prescription && (
          <button type="button" className="plain" aria-pressed={beside} onClick={() => setBeside(!beside)}>
            {beside ? 'Hide last time' : 'Show last time'}
          </button>
        )}
        {prescription && <RackLinks day={day} />}
      </div>
      <div className="solve-says small">
        <output>
          {empty && (
            <p className="quiet">Put lifters on the racks below; then the loads can be worked out.</p>
          )}
          {busy && (
            <Waiting
              what={`Comparing every band, hookup and bar for ${lifters.size} ${lifters.size === 1 ? 'lifter' : 'lifters'}:`}
              usually="Most days take under 5 s."
              told={told}
              onStop={solving.stop}
            />
          )}
          {!busy && <Solved draft={draft} solving={solving} />}
        </output>
        {trouble && (
          <p className="field-error" role="alert">
            {trouble}
          </p>
        )}
      </div>
    </section>
  );
}

function pullWords(pull: number): string {
  if (pull === 0) return 'own bands for each';
  if (pull === 1) return 'one band set for the whole rack';
  return `${percent(pull)} of the way to one band set for the whole rack`;
}
