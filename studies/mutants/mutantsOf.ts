import { parseSync } from 'vite';

/** One small fault that a source could have: `to` instead of the text from `start` to `end` (in UTF-16 units). */
export interface Mutant {
  readonly file: string;
  readonly line: number;
  readonly start: number;
  readonly end: number;
  readonly from: string;
  readonly to: string;
}

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [field: string]: unknown;
}

const OPERATORS: Readonly<Record<string, readonly string[]>> = {
  '+': ['-'],
  '-': ['+'],
  '*': ['/'],
  '/': ['*'],
  '+=': ['-='],
  '-=': ['+='],
  '*=': ['/='],
  '/=': ['*='],
  '<': ['<=', '>'],
  '<=': ['<', '>='],
  '>': ['>=', '<'],
  '>=': ['>', '<='],
  '===': ['!=='],
  '!==': ['==='],
  '&&': ['||'],
  '||': ['&&'],
};

/** Every mutant of a TypeScript source: signs, comparisons, guards, branches, numbers and sentences, each changed alone. */
export function mutantsOf(file: string, source: string): Mutant[] {
  const found: Mutant[] = [];
  const text = (value: unknown) => {
    const { start, end } = value as Node;
    return source.slice(start, end);
  };
  const change = ({ start, end }: { start: number; end: number }, to: string) => {
    const line = source.slice(0, start).split('\n').length;
    found.push({ file, line, start, end, from: source.slice(start, end), to });
  };
  const visit = (node: Node) => {
    // Types are no part of what runs, but what stands before an `as`, a `!` or a `satisfies` is.
    if (node.type.startsWith('TS') && !node['expression']) return;
    if (node.type === 'ImportDeclaration') return;
    if (typeof node['operator'] === 'string' && node['left']) {
      const left = node['left'] as Node;
      const right = node['right'] as Node;
      const operator = node['operator'];
      const start = source.indexOf(operator, left.end);
      const joinsText = operator.startsWith('+') && (isText(left) || isText(right));
      if (!joinsText)
        for (const to of OPERATORS[operator] ?? []) change({ start, end: start + operator.length }, to);
    } else if (node.type === 'UnaryExpression' && /^[!-]$/.test(String(node['operator']))) {
      change(node, text(node['argument']));
    } else if (node.type === 'MemberExpression' && /^Math\.(min|max)$/.test(text(node))) {
      change(node, text(node) === 'Math.min' ? 'Math.max' : 'Math.min');
    } else if (node.type === 'ConditionalExpression') {
      const [yes, no] = [text(node['consequent']), text(node['alternate'])];
      change(node, `${text(node['test'])} ? (${no}) : (${yes})`);
    } else if (node.type === 'IfStatement' && !node['alternate'] && leaves(node['consequent'] as Node)) {
      change(node['test'] as Node, 'false');
    } else if (typeof node['value'] === 'number') {
      change(node, String(otherNumber(node['value'])));
    } else if (isSentence(node, text(node))) {
      change(node, "''");
    }
    for (const field of Object.values(node))
      for (const child of [field].flat()) if (isNode(child)) visit(child);
  };
  visit(parseSync(file, source).program as unknown as Node);
  return found;
}

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && 'type' in value && 'start' in value;
}

/** The next one of what is likely counted, half as much again of what is likely measured. */
function otherNumber(value: number): number {
  return Number.isInteger(value) && value < 10 ? value + 1 : 1.5 * value;
}

function isText({ type, value }: Node): boolean {
  return type === 'TemplateLiteral' || typeof value === 'string';
}

function isSentence(node: Node, text: string): boolean {
  return isText(node) && / /.test(text.replaceAll(/\$\{[^}]*\}/g, ''));
}

/** Whether a guard's branch does nothing but leave. */
function leaves(branch: Node): boolean {
  const body = branch.type === 'BlockStatement' ? (branch['body'] as Node[]) : [branch];
  return /^(Return|Throw|Continue|Break)Statement$/.test(body[0]?.type ?? '');
}
