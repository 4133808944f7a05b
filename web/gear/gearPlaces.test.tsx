import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { Router } from 'wouter';
import { kindNames } from '#contract/records/allKinds.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { clubKey } from '#web/api/useClub.ts';
import { ViewUnits } from '#web/parts/ViewUnits.tsx';
import { GearScreen } from './GearScreen.tsx';
import { gearPlaces } from './gearPlaces.ts';

const records = smallClub();
const client = new QueryClient();
client.setQueryData(clubKey, { records, seq: 1 });

function shownAt(path: string): string {
  return renderToStaticMarkup(
    <QueryClientProvider client={client}>
      <ViewUnits clubMass="kg" clubLength="cm">
        <Router ssrPath={path}>
          <GearScreen />
        </Router>
      </ViewUnits>
    </QueryClientProvider>,
  );
}

test('every kind of record has its spreadsheet offered at some place of the gear screen', () => {
  const paths = [...gearPlaces.map(({ path }) => path), `/racks/${records.rack[0]!.id}`];
  const shown = paths.map(shownAt).join('');
  expect(kindNames.filter((kind) => !shown.includes(`download="${kind}.csv"`))).toEqual([]);
});

test.each(gearPlaces)('$path is reached by its link, which says that one is there', ({ path, word }) => {
  const shown = shownAt(path);
  const here = [...shown.matchAll(/<a [^>]*aria-current="page"[^>]*>([^<]*)</g)].map(([, text]) => text);
  expect(here).toEqual([word]);
  expect(shown).not.toContain('is not here');
});
