/** Serves the club file named on the command line, once a line on standard input says so, and prints its address. */
import { once } from 'node:events';
import { writeSync } from 'node:fs';
import { register } from 'tsx/esm/api';

register();
const { openOneClub } = await import('../../oneClub.ts');
const { serve } = await import('../../serve.ts');
const [, , path, webRoot] = process.argv;
await once(process.stdin, 'data');
const store = await openOneClub(path, { name: 'a test' });
const { url } = await serve({ store, port: 0, webRoot });
writeSync(1, `${url}\n`);
