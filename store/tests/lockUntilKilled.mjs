/** Holds the lock for writing on the club file named on the command line, says so, and never lets it go. */
import Database from 'better-sqlite3';

const file = new Database(process.argv[2]);
file.exec('begin immediate');
process.stdout.write('held\n');
setInterval(() => file.open, 1000);
