import { runProgram } from './runProgram.ts';

process.exitCode = await runProgram(process.argv.slice(2));
