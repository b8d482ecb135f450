/** A small integer generator (xorshift32): the same seed gives the same bytes everywhere. */
export function drawn(seed: number): (below: number) => number {
  let state = seed | 0 || 1;
  return (below) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) % below;
  };
}

const telling = ['\0', '\uFEFF', '\u00a0', '\u2212', '/', '"', "'", '″', ',', '.', '-', '+', 'e', 'E', '9', '0', '1e999', '1e-320', '{', '}', '[', ']', ':', ';', '\t', '\r\n', '\\u0000', '__proto__', 'constructor', 'NaN', 'Infinity', 'null', 'true', ' in', ' mm', 'µ', '°', '½', '😀', '<img src=x onerror=alert(1)>', '\u202e'];

/** Bytes of a good text with a few of them flipped, cut, doubled, replaced or swapped for telling ones; now and then bytes out of nothing. */
export function spoilt(good: readonly Uint8Array[], draw: (below: number) => number): Uint8Array {
  if (draw(20) === 0) return Uint8Array.from({ length: draw(80) }, () => draw(256));
  let bytes = [...(good[draw(good.length)] ?? [])];
  for (let round = 1 + draw(4); round > 0; round -= 1) {
    const at = draw(bytes.length + 1);
    const length = 1 + draw(8);
    switch (draw(6)) {
      case 0: bytes[at] = draw(256); break;
      case 1: bytes.splice(at, length); break;
      case 2: bytes.splice(at, 0, ...bytes.slice(at, at + length)); break;
      case 3: bytes.splice(at, draw(2), ...new TextEncoder().encode(telling[draw(telling.length)])); break;
      case 4: bytes = bytes.slice(0, at); break;
      default: {
        const other = good[draw(good.length)] ?? [];
        const from = draw(other.length + 1);
        bytes = [...bytes.slice(0, at), ...other.slice(from, from + draw(200))];
      }
    }
  }
  return Uint8Array.from(bytes);
}

/** Text as a file or a keyboard gives it: UTF-8, broken bytes and all. */
export const textOf = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

export const bytesOf = (texts: readonly string[]): readonly Uint8Array[] => texts.map((text) => new TextEncoder().encode(text));
