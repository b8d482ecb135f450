import { css } from 'lit';

export const styles = css`
  :host {
    display: block;
    container-type: inline-size;
  }
  ol {
    list-style: none;
    margin: 0;
    padding: 0;
    counter-reset: step var(--_from, 0);
  }
  li {
    counter-increment: step;
    display: grid;
    grid-template-columns: 2rem 1fr;
    gap: 0.25rem 0.5rem;
    padding-block: 0.65rem;
    line-height: 1.42;
  }
  li + li {
    border-block-start: 1px solid var(--_rule);
  }
  li::before {
    content: counter(step);
    font-weight: 700;
    font-size: 1.0625rem;
    text-align: end;
    padding-inline-end: 0.35rem;
    color: var(--_quiet);
  }
  .what {
    margin: 0;
    text-wrap: pretty;
  }
  .cautions {
    grid-column: 2;
    margin: 0;
    padding: 0;
    list-style: none;
    display: grid;
    gap: 0.3rem;
    align-content: start;
  }
  .cautions p {
    margin: 0;
    display: grid;
    grid-template-columns: 1.35em 1fr;
    gap: 0.45rem;
    font-size: 0.9375rem;
    line-height: 1.36;
    padding: 0.1rem 0 0.1rem;
  }
  @container (min-width: 40rem) {
    li {
      grid-template-columns: 2rem minmax(0, 3fr) minmax(0, 2fr);
      column-gap: 0.9rem;
    }
    .cautions {
      grid-column: 3;
    }
  }
  .empty {
    color: var(--_quiet);
  }
`;
