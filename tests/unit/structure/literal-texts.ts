import { isNode, type SourceFile, type SyntaxNode, syntaxOf, walk } from './source-files';

/** Attributes whose value a user reads or hears. */
const READ_OUT = new Set([
  'title',
  'alt',
  'placeholder',
  'label',
  'aria-label',
  'aria-description',
  'aria-roledescription',
  'aria-valuetext',
  'aria-placeholder',
]);

const LETTER = /\p{L}/u;

/** Words in a component's file that a user would see, as `path: "words"`. They belong into the catalogue. */
export function literalTexts(file: SourceFile): string[] {
  const found: string[] = [];
  for (const node of walk(syntaxOf(file))) {
    if (node.type === 'JSXElement' || node.type === 'JSXFragment') {
      for (const child of node.children as SyntaxNode[]) {
        if (child.type === 'JSXText') found.push(String(child.value));
        if (child.type === 'JSXExpressionContainer') found.push(...shownBy(child.expression));
      }
    }
    if (node.type === 'JSXAttribute' && READ_OUT.has(nameOf(node.name)) && isNode(node.value)) {
      found.push(
        ...(node.value.type === 'JSXExpressionContainer' ? shownBy(node.value.expression) : shownBy(node.value)),
      );
    }
  }
  return found.filter((text) => LETTER.test(text)).map((text) => `${file.path}: "${text.trim()}"`);
}

function nameOf(name: unknown): string {
  if (!isNode(name)) return '';
  if (name.type === 'JSXNamespacedName') return `${nameOf(name.namespace)}:${nameOf(name.name)}`;
  return String(name.name);
}

/** The literal texts that an expression may come to: through conditions, lists and templates, not through calls. */
function shownBy(expression: unknown): string[] {
  if (!isNode(expression)) return [];
  switch (expression.type) {
    case 'Literal':
      return typeof expression.value === 'string' ? [expression.value] : [];
    case 'TemplateLiteral': {
      const quasis = expression.quasis as { value: { cooked: string } }[];
      return [...quasis.map((quasi) => quasi.value.cooked), ...(expression.expressions as unknown[]).flatMap(shownBy)];
    }
    case 'ConditionalExpression':
      return [...shownBy(expression.consequent), ...shownBy(expression.alternate)];
    case 'LogicalExpression':
    case 'BinaryExpression':
      return expression.operator === '+' || expression.type === 'LogicalExpression'
        ? [...shownBy(expression.left), ...shownBy(expression.right)]
        : [];
    case 'ArrayExpression':
      return (expression.elements as unknown[]).flatMap(shownBy);
    case 'ParenthesizedExpression':
    case 'TSAsExpression':
    case 'TSNonNullExpression':
      return shownBy(expression.expression);
    default:
      return [];
  }
}

/** Words in a page's HTML. Its title may be one of the catalogue's texts; nothing else may stand there. */
export function htmlTexts(file: SourceFile, catalogue: ReadonlySet<string>): string[] {
  const bare = file.text
    .replace(/<!doctype[^>]*>/i, '')
    .replace(/<!--[\s\S]*?-->/g, '')
    .replace(/<title>([^<]*)<\/title>/, (_all, title: string) => (catalogue.has(title) ? '' : title));
  return (bare.match(/(?<=>|^)[^<]+/g) ?? [])
    .filter((text) => LETTER.test(text))
    .map((text) => `${file.path}: "${text.trim()}"`);
}

/** Every plain string of the catalogue. */
export function stringsOf(catalogue: object): Set<string> {
  const found = new Set<string>();
  for (const value of Object.values(catalogue)) {
    if (typeof value === 'string') found.add(value);
    else if (typeof value === 'object' && value !== null) for (const text of stringsOf(value)) found.add(text);
  }
  return found;
}
