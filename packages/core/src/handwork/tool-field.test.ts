import * as z from 'zod/mini';
import { describe, expect, it } from 'vitest';
import { toolField } from './tool-field.js';

const reads = (tool: object) => z.safeParse(toolField, { name: 'offcut', kind: 'tube', outsideMm: 40, ...tool }).success;

describe('toolField', () => {
  it('takes a tube by wall or by inside, and a turned disc by neither', () => {
    expect(reads({ wallMm: 2 })).toBe(true);
    expect(reads({ insideMm: 36 })).toBe(true);
    expect(reads({ kind: 'turned' })).toBe(true);
  });

  it('refuses a tube or socket without either, both at once, and a wall that leaves nothing', () => {
    expect(reads({})).toBe(false);
    expect(reads({ kind: 'socket' })).toBe(false);
    expect(reads({ wallMm: 2, insideMm: 36 })).toBe(false);
    expect(reads({ insideMm: 40 })).toBe(false);
    expect(reads({ wallMm: 20.1 })).toBe(false);
  });

  it('refuses fields it does not know', () => {
    expect(reads({ wallMm: 2, colour: 'grey' })).toBe(false);
  });
});
