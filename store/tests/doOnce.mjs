/** Does the one thing that is named first on the command line to the club file named second, and ends. */
import { restoreArchive } from '../archive.ts';
import { keptCopies, snapshotFolderOf } from '../copies/keptCopies.ts';
import { finishRestore, restoreFile } from '../copies/restoreFile.ts';
import { takeSnapshot } from '../copies/takeSnapshot.ts';
import { filePieces } from '../filePieces.ts';
import { makeWhole } from '../open/makeWhole.ts';
import { fileSets } from './fileSets.ts';
import { openClub, tester } from './openClub.ts';
import { smallClub } from './smallClub.ts';
import { squatSet } from './squatSet.ts';

const [, , what, path] = process.argv;

async function inClub(file, work) {
  const store = await openClub(file);
  await work(store);
  await store.close();
}

const [newest] = await keptCopies(path, snapshotFolderOf(path));
await {
  found: () => makeWhole(path, (beside) => inClub(beside, (store) => store.importRecords(smallClub()))),
  open: () => inClub(path, () => {}),
  log: () => inClub(path, (store) => store.logSets(Array.from({ length: 40 }, () => squatSet()))),
  takeIn: () => inClub(path, (store) => store.takeSetsIn(fileSets(40))),
  replace: () => inClub(path, (store) => restoreArchive(store, filePieces(`${path}.archive`))),
  snapshot: () => takeSnapshot(path, snapshotFolderOf(path)),
  restore: () => restoreFile(path, newest, { clubId: 'club', who: tester }),
  finishRestore: () => finishRestore(path),
}[what.split(' ')[0]]();
