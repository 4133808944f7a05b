import '@fontsource-variable/archivo/wdth.css';
import './theme/tokens.css';
import './theme/type.css';
import './theme/base.css';
import './parts/fields.css';
import './parts/choice.css';
import './parts/range.css';
import './parts/table.css';
import './parts/known.css';
import './parts/mark.css';
import './parts/empty.css';
import './parts/toast.css';
import './parts/clash.css';
import './parts/chart.css';
import './parts/form.css';
import './parts/door.css';
import './setup/setup.css';
import './shell/shell.css';
import './theme/print.css';
import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { StrictMode, Suspense } from 'react';
import { createRoot } from 'react-dom/client';
import { fetchFirst } from './api/fetchFirst.ts';
import { ClashAsked } from './parts/ClashAsked.tsx';
import { Toast } from './parts/Toast.tsx';
import { App } from './shell/App.tsx';
import { ScreenError } from './shell/ScreenError.tsx';
import { applyKeptLight } from './theme/useLight.ts';

applyKeptLight();
// The server stands beside the screen: what it says is fresh until it reports a change.
const client = new QueryClient({
  defaultOptions: { queries: { staleTime: Number.POSITIVE_INFINITY, retry: 1 } },
});
const root = document.getElementById('root');
if (root === null) throw new Error('The page has no place for the program.');
// Until then the page shows the line that it came with.
await fetchFirst(client, location.pathname);
createRoot(root).render(
  <StrictMode>
    <QueryClientProvider client={client}>
      <Toast>
        <ClashAsked>
          <ScreenError>
            <Suspense fallback={<p className="quiet waiting">Opening the club.</p>}>
              <App />
            </Suspense>
          </ScreenError>
        </ClashAsked>
      </Toast>
    </QueryClientProvider>
  </StrictMode>,
);
