import { expect, test } from 'vitest';
import type { JsonObject } from '../document/raw-document.js';
import { faultOfTools } from './fault-of-tools.js';
import { toolsForNewJob } from './tools-for-new-job.js';

const tube: JsonObject = { name: 'offcut', kind: 'tube', outsideMm: '1 3/8 in', wallMm: 3 };
const begun: JsonObject = { name: 'half ty', kind: 'tube' };
const spoilt: JsonObject = { ...tube, wallMm: 50 };
const own = (tools: readonly JsonObject[]) => tools.map((tool, i) => ({ id: String(i), tool, revision: 1, addedAt: i }));

test('a new job begins with the tools that count and can be read', () => {
  expect(toolsForNewJob(own([tube, begun, spoilt, { ...tube, name: 'another' }]))).toEqual([tube, { ...tube, name: 'another' }]);
});

test('a fault is found at the tool that has it; one that is only begun has none', () => {
  expect(faultOfTools([begun, tube])).toBeNull();
  expect(faultOfTools([begun, tube, spoilt])).toMatchObject({ key: 'file.toolsAtHand[2].wallMm' });
});
