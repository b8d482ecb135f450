const twoTo32 = 4_294_967_296;

/**
 * Draws that come out the same on every machine: whole-number steps, and only + − × ÷ √ on the way to a sample.
 * Uniform: xoshiro128** (Blackman and Vigna), seeded by a mixing of the seed; steps of 2⁻³².
 * Normal: the exact method of von Neumann as Karney completed it, by comparing uniform draws; no logarithm, no cosine.
 * @source blackman-vigna-2021, karney-2016 (held as: memory)
 */
export class SeededDraws {
  #a: number;
  #b: number;
  #c: number;
  #d: number;

  /** @param seed whole number, 0 to 4 294 967 295 */
  constructor(seed: number) {
    let state = seed | 0;
    const mixed = (): number => {
      state = (state + 0x9e3779b9) | 0;
      let word = state ^ (state >>> 16);
      word = Math.imul(word, 0x21f0aaad);
      word ^= word >>> 15;
      word = Math.imul(word, 0x735a2d97);
      return word ^ (word >>> 15);
    };
    this.#a = mixed();
    this.#b = mixed();
    this.#c = mixed();
    this.#d = mixed() | 1;
  }

  /** Over 0 and below 1, in the middle of its step. */
  uniform(): number {
    const five = Math.imul(this.#b, 5);
    const result = Math.imul((five << 7) | (five >>> 25), 9);
    const shifted = this.#b << 9;
    this.#c ^= this.#a;
    this.#d ^= this.#b;
    this.#b ^= this.#c;
    this.#a ^= this.#d;
    this.#c ^= shifted;
    this.#d = (this.#d << 11) | (this.#d >>> 21);
    return ((result >>> 0) + 0.5) / twoTo32;
  }

  /** A whole number from 0 up to and excluding `count`. */
  below(count: number): number {
    return Math.floor(this.uniform() * count);
  }

  /** Standard normal. */
  normal(): number {
    for (;;) {
      let whole = 0;
      while (this.#happensByRootOfE()) whole += 1;
      if (!this.#allHappen(whole * (whole - 1))) continue;
      const part = this.uniform();
      let isKept = true;
      for (let i = 0; i <= whole && isKept; i += 1) isKept = this.#keeps(whole, part);
      if (!isKept) continue;
      return this.uniform() < 0.5 ? -(whole + part) : whole + part;
    }
  }

  /** True with probability exp(−1/2): an even count of draws, each below the one before, the first below a half. */
  #happensByRootOfE(): boolean {
    let before = this.uniform();
    if (before >= 0.5) return true;
    for (;;) {
      const next = this.uniform();
      if (next >= before) return false;
      before = this.uniform();
      if (before >= next) return true;
    }
  }

  #allHappen(count: number): boolean {
    for (let i = 0; i < count; i += 1) if (!this.#happensByRootOfE()) return false;
    return true;
  }

  /** True with probability exp(−x·(2k + x)/(2k + 2)). */
  #keeps(whole: number, part: number): boolean {
    const chance = (2 * whole + part) / (2 * whole + 2);
    let before = part;
    for (let isEven = true; ; isEven = !isEven) {
      const next = this.uniform();
      if (next >= before || this.uniform() >= chance) return isEven;
      before = next;
    }
  }
}
