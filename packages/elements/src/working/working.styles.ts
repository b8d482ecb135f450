import { css } from 'lit';

export const styles = css`
  :host {
    display: block;
  }
  ol {
    list-style: none;
    margin: 0;
    padding: 0;
  }
  li {
    padding-block: 0.55rem;
    line-height: 1.4;
    display: grid;
    gap: 0.1rem;
  }
  li + li {
    border-block-start: 1px solid var(--_rule);
  }
  .meaning {
    margin: 0;
    display: flex;
    justify-content: space-between;
    gap: 0 1rem;
    flex-wrap: wrap;
  }
  .value {
    font-weight: 650;
    white-space: nowrap;
  }
  .formula {
    margin: 0;
    overflow-wrap: anywhere;
    font-size: 0.9375rem;
  }
  sub {
    font-size: 0.75em;
    line-height: 0;
  }
  .numbers,
  .source {
    margin: 0;
    font-size: 0.8125rem;
    color: var(--_quiet);
  }
`;
