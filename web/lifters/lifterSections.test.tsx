import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { renderToStaticMarkup } from 'react-dom/server';
import { beforeAll, expect, test } from 'vitest';
import { kindsOwnedBy } from '#contract/records/ownRecords.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { clubKey } from '#web/api/useClub.ts';
import { ViewUnits } from '#web/parts/ViewUnits.tsx';
import { LifterJumps } from './LifterJumps.tsx';
import { lifterRecords } from './lifterRecords.ts';
import { type LifterView, lifterSections } from './lifterSections.tsx';

const club = smallClub();
const read = new Set<string>();
const own = new Proxy(lifterRecords(club, 'lifter-1')!, {
  get: (all, kind) => {
    read.add(String(kind));
    return Reflect.get(all, kind);
  },
});
/** A new lifter's page, before anything is worked out. */
const view: LifterView = {
  own,
  today: '2026-11-10',
  estimates: [],
  sets: [],
  showsEstimate: false,
  hasEstimates: false,
  fault: null,
};
let page = '';
let jumps: string[] = [];

beforeAll(() => {
  const client = new QueryClient();
  client.setQueryData(clubKey, { records: club, seq: 1 });
  page = renderToStaticMarkup(
    <QueryClientProvider client={client}>
      <ViewUnits clubMass="kg" clubLength="cm">
        {lifterSections.map(({ id, Caution }) => Caution && <Caution key={id} id={id} {...view} />)}
        {lifterSections.map(({ id, Section }) => Section && <Section key={id} id={id} {...view} />)}
      </ViewUnits>
    </QueryClientProvider>,
  );
  jumps = hrefsIn(renderToStaticMarkup(<LifterJumps view={view} />));
});

function hrefsIn(html: string): string[] {
  return [...html.matchAll(/href="#([^"]+)"/g)].map(([, id]) => id!);
}

test('each section bears its own id once, so that every link within the page leads somewhere', () => {
  expect(jumps).toEqual(lifterSections.filter(({ id }) => id !== 'any-setup').map(({ id }) => id));
  for (const id of [...jumps, ...hrefsIn(page)]) expect(page.split(` id="${id}"`), id).toHaveLength(2);
});

test('every kind of record that belongs to a lifter is read by a section of the page', () => {
  expect(kindsOwnedBy('lifter').filter((kind) => !read.has(kind))).toEqual([]);
});

test('what is found only once the log is weighed is jumped to only then', () => {
  const later = hrefsIn(renderToStaticMarkup(<LifterJumps view={{ ...view, showsEstimate: true }} />));
  expect(later.filter((id) => !jumps.includes(id))).toEqual(['any-setup']);
});

test('a lifter who is held to less reads so above all sections, with the way to what it is', () => {
  expect(page).toMatch(/^<p class="caution"><strong>Restricted\..*?href="#restrictions"/);
});
