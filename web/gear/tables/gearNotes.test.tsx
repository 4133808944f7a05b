import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { Router } from 'wouter';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { clubKey } from '#web/api/useClub.ts';
import { BandPage } from '#web/gear/bands/BandPage.tsx';
import { ClubForm } from '#web/gear/settings/ClubForm.tsx';
import { ClubPage } from '#web/gear/settings/ClubPage.tsx';
import { ChosenPlace } from '#web/gear/state/Chosen.tsx';
import { pairState } from '#web/gear/state/pairState.ts';
import type { Gear } from '#web/gear/state/useGear.ts';
import { ViewUnits } from '#web/parts/ViewUnits.tsx';
import { BoxesPage } from './BoxesPage.tsx';
import { ChainsPage } from './ChainsPage.tsx';
import { IronPage } from './IronPage.tsx';

function gearOf(records: ClubRecords): Gear {
  return {
    records,
    club: records.club[0]!,
    today: '2026-11-25',
    gravityMps2: 9.8,
    pairs: [],
    places: [],
  };
}

function shown(records: ClubRecords, page: ReactNode): string {
  const client = new QueryClient();
  client.setQueryData(clubKey, { records, seq: 1 });
  return renderToStaticMarkup(
    <QueryClientProvider client={client}>
      <Router ssrPath="/gear">
        <ViewUnits clubMass="kg" clubLength="cm">
          {page}
        </ViewUnits>
      </Router>
    </QueryClientProvider>,
  );
}

const noted = ['bar', 'collarPair', 'disc', 'chainPair', 'box'] as const;

test('what a coach notes of bars, collars, discs, chains and boxes is read beside them', () => {
  const records = structuredClone(smallClub());
  for (const kind of noted) {
    expect(records[kind]).not.toEqual([]);
    for (const record of records[kind]) record.note = `noted of a ${kind}`;
  }
  const gear = gearOf(records);
  const read = shown(
    records,
    <>
      <IronPage gear={gear} />
      <ChainsPage gear={gear} />
      <BoxesPage gear={gear} />
    </>,
  );
  for (const kind of noted) expect(read).toContain(`noted of a ${kind}`);
});

test("what is noted of the club is read above its settings and changed among them, since when a pair is in use on the pair's page", () => {
  const records = structuredClone(smallClub());
  const [club] = records.club;
  const [pair] = records.bandPair;
  club!.note = 'the key hangs behind the door';
  const settings = shown(records, <ClubPage gear={gearOf(records)} />);
  expect(settings.split('the key hangs behind the door')).toHaveLength(3);
  const page = (installedOn: string | null) =>
    shown(
      records,
      <ChosenPlace>
        <BandPage
          gear={gearOf(records)}
          state={pairState(records, club!, { ...pair!, installedOn }, '2026-11-25')}
        />
      </ChosenPlace>,
    );
  expect(page('2026-01-05')).toContain('In use since 5 Jan 2026.');
  expect(page(null)).not.toContain('In use since');
});

test('gravity counts as assumed in the settings until latitude and height are both known', () => {
  const records = smallClub();
  const known = (heightAboveSeaM: number | null) =>
    shown(records, <ClubForm club={{ ...records.club[0]!, latitudeDeg: 51.5, heightAboveSeaM }} />);
  expect(known(null)).toContain('<span class="known-mark">assumed</span>');
  expect(known(40)).not.toContain('<span class="known-mark">assumed</span>');
});
