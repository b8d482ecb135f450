import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Held, shareEqual } from './held.js';

describe('what is equal stays the same object', () => {
  it('keeps the parts that did not change', () => {
    const last = { verdict: 'suits', parts: [{ name: 'a', mm: 1 }, { name: 'b', mm: 2 }] };
    const next = shareEqual(last, { verdict: 'suits', parts: [{ name: 'a', mm: 1 }, { name: 'b', mm: 3 }] }) as typeof last;
    expect(next).toEqual({ verdict: 'suits', parts: [{ name: 'a', mm: 1 }, { name: 'b', mm: 3 }] });
    expect(next).not.toBe(last);
    expect(next.parts[0]).toBe(last.parts[0]);
    expect(next.parts[1]).not.toBe(last.parts[1]);
  });

  it('tells a missing key from one that is undefined', () => {
    const last = { a: undefined };
    expect(shareEqual(last, { b: undefined })).toEqual({ b: undefined });
    expect(shareEqual({ a: 1 }, { a: 1, b: undefined })).toHaveProperty('b');
  });

  it('leaves one object that stands at two places one object', () => {
    const finding = { code: 'a', mm: 2 };
    const next = shareEqual({ all: [{ code: 'a', mm: 1 }], some: [{ code: 'a', mm: 2 }] }, { all: [finding], some: [finding] }) as { readonly all: readonly object[]; readonly some: readonly object[] };
    expect(next.all[0]).toBe(next.some[0]);
  });

  it('is equal to what came in, whatever came before, and is the last one where that is equal', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), (last, next) => {
        expect(shareEqual(last, next)).toEqual(next);
        expect(shareEqual(next, structuredClone(next))).toBe(next);
      }),
    );
  });

  it('holds under names apart', () => {
    const held = new Held();
    const first = held.same('a', [1]);
    expect(held.same('b', [1])).not.toBe(first);
    expect(held.same('a', [1])).toBe(first);
  });
});
