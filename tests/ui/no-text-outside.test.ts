import { readdirSync, readFileSync } from "node:fs";
import { parseAst } from "vite";
import { expect, test } from "vitest";

/** Attributes that are read out or shown. */
const shown = /^(aria-label|aria-valuetext|aria-description|title|placeholder|alt|label)$/;

/** Units, and the program's own name, are the same in every language. */
const everywhere = /\b(dB|dBFS|Hz|ms|Leftwright)\b/g;

/** More than a letter: 'L' and 'R' stand on the gear itself. */
const isText = (text: string): boolean => /\p{L}{2}/u.test(text.replace(everywhere, ""));

/** A sentence, or the beginning of one: what no name of the core's is. */
const isSentence = (text: string): boolean =>
  /^\s*\p{Lu}\p{Ll}+,? \p{L}/u.test(text) || /\p{L}{2} .*\p{L}[.?!]\s*$/u.test(text);

interface Node {
  readonly type: string;
  readonly [key: string]: unknown;
}
const isNode = (value: unknown): value is Node =>
  typeof value === "object" && value !== null && "type" in value;

/** What a node is made of. */
const within = (node: Node): readonly Node[] =>
  Object.entries(node)
    .flatMap(([, value]) => (Array.isArray(value) ? value : [value]))
    .filter(isNode);

/** Texts that an expression may come to. */
function texts(node: unknown): readonly string[] {
  if (!isNode(node)) return [];
  switch (node.type) {
    case "Literal":
      return typeof node.value === "string" ? [node.value] : [];
    case "TemplateLiteral":
      return (node.quasis as readonly { readonly value: { readonly raw: string } }[]).map(
        ({ value }) => value.raw,
      );
    case "ConditionalExpression":
      return [...texts(node.consequent), ...texts(node.alternate)];
    case "LogicalExpression":
      return [...texts(node.left), ...texts(node.right)];
    case "JSXExpressionContainer":
      return texts(node.expression);
    default:
      return [];
  }
}

/** Texts that stand in a file of a screen: between tags, in what is read out, and sentences anywhere; mistakes of ours are for us. */
function found(node: Node): readonly string[] {
  const deeper = () => within(node).flatMap(found);
  switch (node.type) {
    case "ImportDeclaration":
    case "TSLiteralType":
      return [];
    case "NewExpression":
      return /Error$/.test(String((node.callee as { name?: string }).name)) ? [] : deeper();
    case "JSXText":
      return [String(node.value)].filter(isText);
    case "JSXAttribute": {
      const { name } = node.name as { readonly name: string };
      return shown.test(name) ? texts(node.value).filter(isText) : deeper();
    }
    case "JSXElement":
    case "JSXFragment": {
      const children = (node.children as readonly Node[]).flatMap(texts).filter(isText);
      return [...children, ...deeper()];
    }
    case "Literal":
    case "TemplateLiteral":
      return [...texts(node).filter(isSentence), ...deeper()];
    default:
      return deeper();
  }
}

const read = (text: string, lang: "ts" | "tsx") =>
  (parseAst(text, { lang }) as unknown as { readonly body: readonly Node[] }).body.flatMap(found);

const files = ["src/ui/screens", "src/ui/parts"]
  .flatMap((folder) => readdirSync(folder).map((name) => `${folder}/${name}`))
  .filter((path) => /\.tsx?$/.test(path));

test("the reading finds text where it stands", () => {
  const text = (source: string) => read(source, "tsx");
  expect(text("const a = <p>Hello</p>;")).toEqual(["Hello"]);
  expect(text("const a = <p aria-label='left side'>{b}</p>;")).toEqual(["left side"]);
  expect(text("const a = <p>{b ? 'yes' : `no, no`}</p>;")).toEqual(["yes", "no, no"]);
  expect(text("const a = () => 'Done, check again';")).toEqual(["Done, check again"]);
  expect(text("const a = <p class='dim'>{words.done} · L</p>;")).toEqual([]);
  expect(text("throw new Error('nobody sits here.');")).toEqual([]);
});

test.for(files)("%s has no text of its own", (path) => {
  const source = readFileSync(path, "utf8");
  expect(read(source, path.endsWith("x") ? "tsx" : "ts")).toEqual([]);
  expect(source).not.toMatch(/words\/(english|german)/);
});
