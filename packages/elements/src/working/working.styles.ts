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
    min-width: 0;
    overflow-wrap: anywhere;
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
  math {
    font-size: 1.05em;
  }
  .ways {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 1rem;
    margin: 0;
  }
  button,
  summary {
    min-height: var(--_target);
    display: inline-flex;
    align-items: center;
    padding: 0;
    border: 0;
    background: none;
    color: var(--_accent);
    font: inherit;
    font-weight: 550;
    cursor: pointer;
  }
  .tried {
    margin: 0;
    padding-inline-start: 0.5rem;
    border-inline-start: 4px double var(--_accent);
    font-weight: 650;
  }
  .try {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem 1rem;
    padding-block-end: 0.5rem;
  }
  .try label {
    display: flex;
    align-items: center;
    gap: 0.5rem;
  }
  .try input {
    width: 7rem;
    min-height: var(--_target);
    padding-inline: 0.5rem;
    font: inherit;
    color: inherit;
    background: var(--_sunk);
    border: 1px solid var(--_field);
  }
  .formula {
    overflow-x: auto;
    padding-block: 0.25rem;
  }
  .numbers,
  .source {
    margin: 0;
    font-size: 0.8125rem;
    color: var(--_quiet);
  }
`;
