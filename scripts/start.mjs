/** From a fresh clone to a running program: installs what is missing, then serves the demo club. */
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ensureInstalled } from './install.mjs';
import { ensureNative } from './native.mjs';

process.chdir(dirname(dirname(fileURLToPath(import.meta.url))));
ensureInstalled();
const lacking = ensureNative();
if (lacking !== null) {
  console.error(lacking);
  process.exit(1);
}
process.argv = [process.argv[0], 'rackwright', 'serve', '--demo', '--known-first', ...process.argv.slice(2)];
await import('../cli/rackwright.js');
