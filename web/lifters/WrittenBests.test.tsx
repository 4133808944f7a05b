import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { smallClub } from '#store/tests/smallClub.ts';
import { clubKey } from '#web/api/useClub.ts';
import { ViewUnits } from '#web/parts/ViewUnits.tsx';
import { WrittenBests } from './WrittenBests.tsx';

test('a note that came with a best, from a form or a spreadsheet, is read beside it', () => {
  const records = smallClub();
  const bests = records.best.map((best) => ({ ...best, note: 'on a soft floor' }));
  const client = new QueryClient();
  client.setQueryData(clubKey, { records, seq: 1 });
  const page = renderToStaticMarkup(
    <QueryClientProvider client={client}>
      <ViewUnits clubMass="kg" clubLength="cm">
        <WrittenBests bests={bests} onOpen={() => undefined} />
      </ViewUnits>
    </QueryClientProvider>,
  );
  expect(page).toContain('on a soft floor');
});
