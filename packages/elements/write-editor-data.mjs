// Writes what editors complete and explain tags with, from the custom-elements manifest.
import { readFileSync, writeFileSync } from 'node:fs';

const at = (name) => new URL(name, import.meta.url);
const { modules } = JSON.parse(readFileSync(at('./custom-elements.json'), 'utf8'));
const { name, version } = JSON.parse(readFileSync(at('./package.json'), 'utf8'));
const elements = modules.flatMap(({ declarations = [] }) => declarations.filter(({ tagName }) => tagName !== undefined)).sort((a, b) => (a.tagName < b.tagName ? -1 : 1));

/** The words that an attribute takes, where its type names them. */
const wordsOf = ({ type }) => [...(type?.text ?? '').matchAll(/'([^']+)'/g)].map(([, word]) => word);

const tags = elements.map(({ tagName, description = '', attributes = [] }) => ({
  name: tagName,
  description,
  attributes: attributes.map((attribute) => ({ name: attribute.name, ...(attribute.description === undefined ? {} : { description: attribute.description }), ...(wordsOf(attribute).length === 0 ? {} : { values: wordsOf(attribute).map((word) => ({ name: word })) }) })),
}));
writeFileSync(at('./html-custom-data.json'), `${JSON.stringify({ version: 1.1, tags }, null, 1)}\n`);

const webTypes = {
  name,
  version,
  'description-markup': 'markdown',
  contributions: {
    html: {
      elements: elements.map(({ tagName, description = '', attributes = [], events = [], members = [], cssParts = [] }) => ({
        name: tagName,
        description,
        attributes: attributes.map((attribute) => ({ name: attribute.name, description: attribute.description ?? '', value: { type: attribute.type?.text ?? 'string' } })),
        js: {
          properties: members.filter(({ kind }) => kind === 'field').map((member) => ({ name: member.name, description: member.description ?? '', value: { type: member.type?.text ?? 'unknown' } })),
          events: events.filter((event) => event.name !== undefined).map((event) => ({ name: event.name, description: event.description ?? '' })),
        },
        css: { parts: cssParts.map((part) => ({ name: part.name, description: part.description ?? '' })) },
      })),
    },
  },
};
writeFileSync(at('./web-types.json'), `${JSON.stringify(webTypes, null, 1)}\n`);
