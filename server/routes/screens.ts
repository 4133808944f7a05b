import { serveStatic } from '@hono/node-server/serve-static';
import { Hono } from 'hono';

/** The built screens: files with a hash in their name are kept by the browser for a year, the page itself is asked for each time. */
export function screenRoutes(webRoot: string) {
  const files = serveStatic({
    root: webRoot,
    precompressed: true,
    onFound: (path, c) => {
      const hashed = /[/\\]assets[/\\]/.test(path);
      c.header('Cache-Control', hashed ? 'public, max-age=31536000, immutable' : 'no-cache');
    },
  });
  const page = serveStatic({
    root: webRoot,
    path: 'index.html',
    precompressed: true,
    onFound: (_path, c) => c.header('Cache-Control', 'no-cache'),
  });
  return (
    new Hono()
      .use(files)
      // Places within the app (/day/...) have no dot; a missing file has, and stays missing.
      .get('/:place{[^.]*}', page)
  );
}
