import { readFile } from 'node:fs/promises';
import { text } from 'node:stream/consumers';
import { Command } from 'commander';
import { CliError } from '../CliError.ts';

interface ComputeOptions {
  input?: string;
  list?: boolean;
  schema?: boolean;
}

/** `compute`: one calculation, JSON in and JSON out, with neither server nor database. */
export function computeCommand(): Command {
  return new Command('compute')
    .summary('one calculation: JSON in, JSON out')
    .description('Answers one JSON document with another. All quantities SI, the unit in the field name.')
    .argument('[operation]', 'which calculation; --list names them')
    .option('-i, --input <file>', 'read the document from this file instead of standard input')
    .option('--list', 'name the calculations')
    .option('--schema', 'print the JSON Schema of what the calculation takes and gives')
    .addHelpText(
      'after',
      `
A document that cannot be answered prints nothing on standard output, one line
{"error":{"field":"...","message":"..."}} on standard error, and ends with 2.

For example:
  echo '{"target_kg":102.5,"bar_kg":20,"collars_kg":5,"discs":[{"mass_kg":20,"pairs":4},{"mass_kg":1.25,"pairs":1}]}' \\
    | rackwright compute plates`,
    )
    .action(compute);
}

async function compute(name: string | undefined, options: ComputeOptions): Promise<void> {
  const { findOperation, operationNames, operations } = await import('#reckon/operations.ts');
  const { InputError } = await import('#contract/compute/InputError.ts');
  if (options.list) {
    const width = Math.max(...operationNames.map((known) => known.length));
    print(operations.map((known) => `${known.name.padEnd(width)}  ${known.summary}`).join('\n'));
    return;
  }
  try {
    const operation = findOperation(name ?? '');
    if (!operation) {
      const asked = name === undefined ? 'No calculation is named' : `${name} is not a calculation`;
      throw new InputError({
        field: 'operation',
        message: `${asked}; the known ones are ${operationNames.join(', ')}.`,
      });
    }
    if (options.schema) {
      const { operationSchema } = await import('#contract/compute/operationSchema.ts');
      print(JSON.stringify(operationSchema(operation), null, 2));
      return;
    }
    const { parseJson } = await import('#contract/compute/readInput.ts');
    const { runOperation } = await import('#contract/compute/runOperation.ts');
    const answer = await runOperation(operation, parseJson(await readDocument(options.input)), Date.now);
    print(JSON.stringify(answer, null, process.stdout.isTTY ? 2 : undefined));
  } catch (error) {
    if (error instanceof InputError) throw new CliError(JSON.stringify(error.body), 2);
    throw error;
  }
}

async function readDocument(file: string | undefined): Promise<string> {
  if (file === undefined) return text(process.stdin);
  try {
    return await readFile(file, 'utf8');
  } catch {
    const { InputError } = await import('#contract/compute/InputError.ts');
    throw new InputError({ field: 'input', message: `The file ${file} cannot be read.` });
  }
}

function print(line: string): void {
  process.stdout.write(`${line}\n`);
}
