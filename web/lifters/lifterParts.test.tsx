import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { beforeAll, expect, test } from 'vitest';
import { Router } from 'wouter';
import { kindsOwnedBy } from '#contract/records/ownRecords.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { clubKey } from '#web/api/useClub.ts';
import { ViewUnits } from '#web/parts/ViewUnits.tsx';
import type { LifterView } from './LifterView.ts';
import { lifterParts } from './lifterParts.tsx';
import { lifterRecords } from './lifterRecords.ts';
import { PartLinks } from './PartLinks.tsx';
import { partAddress } from './partAddress.ts';

const club = smallClub();
const read = new Set<string>();
const own = new Proxy(lifterRecords(club, 'lifter-1')!, {
  get: (all, kind) => {
    read.add(String(kind));
    return Reflect.get(all, kind);
  },
});
/** A lifter with a log of which nothing has come yet. */
const view: LifterView = {
  own,
  today: '2026-11-10',
  estimates: [],
  sets: [],
  hasSets: false,
  showsEstimate: false,
  hasEstimates: false,
};
const pages = new Map<string, string>();

function drawn(element: ReactNode): string {
  const client = new QueryClient();
  client.setQueryData(clubKey, { records: club, seq: 1 });
  return renderToStaticMarkup(
    <QueryClientProvider client={client}>
      <ViewUnits clubMass="kg" clubLength="cm">
        <Router ssrPath="/lifter-1">{element}</Router>
      </ViewUnits>
    </QueryClientProvider>,
  );
}

function linksIn(html: string): string[] {
  return [...html.matchAll(/href="([^"]+)"/g)].map(([, address]) => address!);
}

beforeAll(() => {
  for (const { id, Part } of lifterParts) pages.set(id, drawn(<Part id={id} {...view} />));
});

test('each part has an address of its own, which one link of the row leads to, and draws what bears its id', () => {
  const addresses = lifterParts.map(({ id }) => partAddress('lifter-1', id));
  expect(new Set(addresses).size).toBe(lifterParts.length);
  expect(linksIn(drawn(<PartLinks lifterId="lifter-1" current="today" />))).toEqual(addresses);
  for (const [id, page] of pages) expect(page.split(` id="${id}"`), id).toHaveLength(2);
});

test('every kind of record that belongs to a lifter is read by a part of the page', () => {
  expect(kindsOwnedBy('lifter').filter((kind) => !read.has(kind))).toEqual([]);
});

test('the row says which part one is at', () => {
  const links = drawn(<PartLinks lifterId="lifter-1" current="heights" />);
  expect(links.match(/aria-current="page"[^>]*>([^<]*)/g)).toHaveLength(1);
  expect(links).toMatch(/aria-current="page"[^>]*>Heights|href="\/lifter-1\/heights" aria-current="page"/);
});

test('somebody with an empty log is asked for heights and bests first', () => {
  const Today = lifterParts[0]!.Part;
  const page = drawn(<Today id="today" {...view} hasSets />);
  const places = ['Bar heights above the floor', 'Write down a best', 'Weigh in'].map((words) =>
    page.indexOf(words),
  );
  expect(places[0]).toBeGreaterThan(0);
  expect(places).toEqual(places.toSorted((a, b) => a - b));
  expect(page).not.toContain('Last sessions');
});

test('a lifter who is held to less reads so above every part, with the way to what it is', () => {
  const [caution] = lifterParts.flatMap(({ id, Caution }) =>
    Caution ? [drawn(<Caution id={id} {...view} />)] : [],
  );
  expect(caution).toMatch(/^<p class="caution"><strong>Restricted\..*?href="\/lifter-1\/restrictions"/);
});
