/**
 * Before a new step or kind: keeps a club file and an archive as this version writes them, beside those of older versions,
 * for the tests that open every one of them. What is kept already stays as it is.
 */
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import { tsImport } from 'tsx/esm/api';

process.chdir(dirname(dirname(fileURLToPath(import.meta.url))));
const load = (module) => tsImport(`../${module}`, import.meta.url);
const { openClub } = await load('store/tests/openClub.ts');
const { smallClub } = await load('store/tests/smallClub.ts');
const { migrations } = await load('store/migrate.ts');
const { exportArchive } = await load('store/archive.ts');
const { archiveVersion } = await load('contract/archive/archiveShape.ts');

const folder = mkdtempSync(join(tmpdir(), 'kept-'));
const path = join(folder, 'club.sqlite');
const store = await openClub(path);
await store.importRecords(smallClub());
keep(`store/tests/archives/${archiveVersion}.json`, await exportArchive(store));
await store.close();
keep(`store/tests/versions/${Object.keys(migrations).at(-1)}.sql`, dumpOf(path));
rmSync(folder, { recursive: true });

function keep(file, text) {
  if (existsSync(file)) return console.log(`${file} is kept already.`);
  writeFileSync(file, text);
  console.log(`Kept ${file}.`);
}

/** A file as the SQL that makes it again, tables before what is indexed. */
function dumpOf(file) {
  const db = new Database(file, { readonly: true });
  const made = db.prepare(
    "select type, name, sql from sqlite_master where sql is not null order by type = 'table' desc, name",
  );
  const lines = made.all().flatMap(({ type, name, sql }) => {
    if (type !== 'table') return [`${sql};`];
    const columns = db.pragma(`table_info("${name}")`).map((column) => `quote("${column.name}")`);
    const rows = db.prepare(`select ${columns.join(" || ',' || ")} as cells from "${name}"`).all();
    return [`${sql};`, ...rows.map(({ cells }) => `INSERT INTO "${name}" VALUES(${cells});`)];
  });
  db.close();
  return ['BEGIN TRANSACTION;', ...lines, 'COMMIT;', ''].join('\n');
}
