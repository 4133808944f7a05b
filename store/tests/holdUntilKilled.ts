import { holdFile } from '../open/holdFile.ts';

/** Holds the file named on the command line, says so, and never lets it go. */
const hold = holdFile(process.argv[2]!);
if ('tell' in hold) hold.tell('another process');
process.stdout.write('held\n');
setInterval(() => {}, 1000);
