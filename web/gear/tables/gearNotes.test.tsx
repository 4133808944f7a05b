import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { smallClub } from '#store/tests/smallClub.ts';
import { clubKey } from '#web/api/useClub.ts';
import type { Gear } from '#web/gear/state/useGear.ts';
import { ViewUnits } from '#web/parts/ViewUnits.tsx';
import { BoxesPage } from './BoxesPage.tsx';
import { ChainsPage } from './ChainsPage.tsx';
import { IronPage } from './IronPage.tsx';

const noted = ['bar', 'collarPair', 'disc', 'chainPair', 'box'] as const;

test('what a coach notes of bars, collars, discs, chains and boxes is read beside them', () => {
  const records = structuredClone(smallClub());
  for (const kind of noted) {
    expect(records[kind]).not.toEqual([]);
    for (const record of records[kind]) record.note = `noted of a ${kind}`;
  }
  const gear: Gear = {
    records,
    club: records.club[0]!,
    today: '2026-11-25',
    gravityMps2: 9.8,
    pairs: [],
    places: [],
  };
  const client = new QueryClient();
  client.setQueryData(clubKey, { records, seq: 1 });
  const read = renderToStaticMarkup(
    <QueryClientProvider client={client}>
      <ViewUnits clubMass="kg" clubLength="cm">
        <IronPage gear={gear} />
        <ChainsPage gear={gear} />
        <BoxesPage gear={gear} />
      </ViewUnits>
    </QueryClientProvider>,
  );
  for (const kind of noted) expect(read).toContain(`noted of a ${kind}`);
});
