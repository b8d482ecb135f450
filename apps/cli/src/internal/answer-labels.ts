import { jsonSchemasOf } from '@seatwright/core';
import { nameInWords } from '@seatwright/core/wording';

/** What the fields of an answer are called, for people. */
export interface AnswerLabels {
  readonly labelOf: (name: string) => string;
  /** The labels inside a field. */
  readonly within: (name: string) => AnswerLabels;
}

interface SchemaNode {
  readonly label?: string;
  readonly $ref?: string;
  readonly items?: SchemaNode;
  readonly properties?: Readonly<Record<string, SchemaNode>>;
  readonly anyOf?: readonly SchemaNode[];
}

const ownWords: Readonly<Record<string, string>> = { assumptions: 'taken for granted', notChecked: 'not looked at', at20C: 'at 20 °C', finds: 'points at', clears: 'rules out' };

/** Labels as the schema of the output has them; where it has none, the name in words, without the unit that the value brings along. */
export function answerLabels(calculation: Parameters<typeof jsonSchemasOf>[0]): AnswerLabels {
  const root = jsonSchemasOf(calculation).output as SchemaNode & { readonly $defs?: Readonly<Record<string, SchemaNode>> };
  /** A node with what it stands for: its definition, and what it may be besides nothing. */
  const opened = (node: SchemaNode | undefined): readonly SchemaNode[] => {
    if (node === undefined) return [];
    const meant = node.$ref === undefined ? undefined : root.$defs?.[node.$ref.split('/').at(-1) ?? ''];
    return [node, ...opened(meant), ...(node.anyOf ?? []).flatMap(opened)];
  };
  const labelsOf = (nodes: readonly SchemaNode[]): AnswerLabels => {
    const field = (name: string) => nodes.flatMap(({ properties }) => opened(properties?.[name]));
    return {
      labelOf: (name) => ownWords[name] ?? field(name).find(({ label }) => label !== undefined)?.label ?? nameInWords(name),
      within: (name) => labelsOf(field(name).flatMap((node) => [node, ...opened(node.items)])),
    };
  };
  return labelsOf(opened(root));
}
