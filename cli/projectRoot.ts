import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder that holds package.json, wherever the command was called from. */
export const projectRoot = dirname(dirname(fileURLToPath(import.meta.url)));
