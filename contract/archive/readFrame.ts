import { beyondBounds } from '#contract/json/beyondBounds.ts';
import { type Cut, Uncut } from '#contract/json/cutLists.ts';
import { allKinds, kindNames } from '#contract/records/allKinds.ts';
import { issueProblem } from '#contract/words/shapeProblem.ts';
import { spelt } from '#contract/words/spelt.ts';
import { archiveFormat, archiveFrame, archiveVersion, withLog, withTakenPlans } from './archiveShape.ts';
import { type ArchiveProblem, nameOf, parsedPart } from './readItem.ts';

/** The archive about its lists: what stands in it beside their entries, and on which lines. */
export class ArchiveFrame {
  readonly #values = new Map<string, unknown>();
  readonly #records = new Map<string, unknown>();
  readonly #lines = new Map<string, number>([['', 1]]);

  /** Notes a value; what is wrong where nothing after it matters. */
  take(part: Cut): ArchiveProblem | null {
    const { path, line } = part;
    const name = nameOf(path);
    if (name !== '' && this.#lines.has(name))
      return { field: name, message: `The archive names ${spelt(name)} twice.`, line };
    this.#lines.set(name, line);
    const beyond = beyondBounds(part.text);
    if (beyond !== null) throw new Uncut(beyond, line);
    const value = parsedPart(part);
    const [first, inside] = path;
    if (first === undefined) return part.text === '{}' ? null : this.#wrongFormat(undefined);
    if (inside !== undefined) this.#records.set(inside, value);
    else this.#values.set(first, value);
    if (first === 'format') return this.#wrongFormat(value);
    return first === 'version' ? this.#wrongVersion(value) : null;
  }

  /** What is wrong with it as a whole. */
  problems(): ArchiveProblem[] {
    const { format, version } = Object.fromEntries(this.#values) as { format?: unknown; version?: unknown };
    const wrong = this.#wrongFormat(format) ?? this.#wrongVersion(version);
    if (wrong) return [wrong];
    const today = this.#asWrittenToday(version as number);
    const read = archiveFrame.safeParse(today);
    if (read.success) return [];
    return read.error.issues.map((issue) => {
      const problem = issueProblem(issue, today);
      return { ...problem, line: this.#lineOf(problem.field) };
    });
  }

  #wrongFormat(format: unknown): ArchiveProblem | null {
    if (format === archiveFormat) return null;
    return {
      field: 'format',
      message: `The file is not a "${archiveFormat}".`,
      line: this.#lineOf('format'),
    };
  }

  #wrongVersion(version: unknown): ArchiveProblem | null {
    if (Number.isInteger(version) && Number(version) >= 1 && Number(version) <= archiveVersion) return null;
    const message = `The archive has version ${spelt(version)}; this program reads versions 1 to ${archiveVersion}.`;
    return { field: 'version', message, line: this.#lineOf('version') };
  }

  /** The line of a field, or where there is none of what it would stand in. */
  #lineOf(field: string): number {
    return this.#lines.get(field) ?? this.#lines.get(field.replace(/\.[^.]*$/, '')) ?? 1;
  }

  /** An archive of version 1 knows no log, and none of the kinds that came later. */
  #asWrittenToday(version: number): object {
    const later = kindNames.filter((kind) => allKinds[kind].facts.sinceArchive > version);
    const none = Object.fromEntries(later.map((kind) => [kind, []]));
    const given = Object.fromEntries(this.#values);
    const isObject = typeof given.records === 'object' && given.records !== null;
    return {
      ...given,
      version: archiveVersion,
      ...(isObject ? { records: { ...none, ...Object.fromEntries(this.#records) } } : {}),
      ...(version < withTakenPlans ? { takenPlans: [] } : {}),
      ...(version < withLog ? { sets: [], former: [] } : {}),
    };
  }
}
