/** A formula of a working step, taken apart. */
export type Formula =
  | { readonly kind: 'number'; readonly text: string }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'minus'; readonly of: Formula }
  | { readonly kind: 'operation'; readonly operator: '+' | '-' | '*' | '/' | '^' | '<' | '<=' | '>' | '>='; readonly left: Formula; readonly right: Formula }
  | { readonly kind: 'call'; readonly name: string; readonly parts: readonly Formula[] }
  | { readonly kind: 'either'; readonly condition: Formula; readonly then: Formula; readonly otherwise: Formula };

const tokenPattern = /\s*(?:(\d+(?:\.\d+)?(?:e[+-]?\d+)?)|([\p{L}_][\p{L}\p{N}_]*)|(<=|>=|[-+*/^()?:,<>]))/uy;

/**
 * Takes a formula in plain expression syntax apart: numbers, names, + − × ÷, powers, functions, comparisons and choices.
 * Null for anything else: it is then shown as it is written.
 */
export function parseFormula(text: string): Formula | null {
  const tokens: string[] = [];
  tokenPattern.lastIndex = 0;
  while (tokenPattern.lastIndex < text.trimEnd().length) {
    const found = tokenPattern.exec(text);
    if (found === null) return null;
    tokens.push(found[1] ?? found[2] ?? found[3] ?? '');
  }
  let at = 0;
  const peek = () => tokens[at] ?? '';
  const take = () => tokens[at++] ?? '';
  const expect = (token: string) => {
    if (take() !== token) throw new SyntaxError(`no ${token}`);
  };

  function choice(): Formula {
    const condition = comparison();
    if (peek() !== '?') return condition;
    take();
    const then = choice();
    expect(':');
    return { kind: 'either', condition, then, otherwise: choice() };
  }
  function comparison(): Formula {
    const left = sum();
    const operator = peek();
    if (operator !== '<' && operator !== '<=' && operator !== '>' && operator !== '>=') return left;
    take();
    return { kind: 'operation', operator, left, right: sum() };
  }
  function sum(): Formula {
    let left = product();
    for (let operator = peek(); operator === '+' || operator === '-'; operator = peek()) {
      take();
      left = { kind: 'operation', operator, left, right: product() };
    }
    return left;
  }
  function product(): Formula {
    let left = sign();
    for (let operator = peek(); operator === '*' || operator === '/'; operator = peek()) {
      take();
      left = { kind: 'operation', operator, left, right: sign() };
    }
    return left;
  }
  function sign(): Formula {
    if (peek() === '-') {
      take();
      return { kind: 'minus', of: sign() };
    }
    return power();
  }
  function power(): Formula {
    const base = atom();
    if (peek() !== '^') return base;
    take();
    return { kind: 'operation', operator: '^', left: base, right: sign() };
  }
  function atom(): Formula {
    const token = take();
    if (token === '(') {
      const inner = choice();
      expect(')');
      return inner;
    }
    if (/^\d/u.test(token)) return { kind: 'number', text: token };
    if (!/^[\p{L}_]/u.test(token)) throw new SyntaxError(`unexpected ${token}`);
    if (peek() !== '(') return { kind: 'name', name: token };
    take();
    const parts = [choice()];
    while (peek() === ',') {
      take();
      parts.push(choice());
    }
    expect(')');
    return { kind: 'call', name: token, parts };
  }

  try {
    const formula = choice();
    return at === tokens.length ? formula : null;
  } catch (error) {
    if (error instanceof SyntaxError) return null;
    throw error;
  }
}
