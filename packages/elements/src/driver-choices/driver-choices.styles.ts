import { css } from 'lit';

export const styles = css`
  :host {
    display: block;
    container-type: inline-size;
  }
  fieldset {
    border: 0;
    margin: 0;
    padding: 0;
    min-width: 0;
  }
  .cards {
    display: grid;
    grid-template-columns: repeat(2, minmax(0, 1fr));
    gap: 0.6rem;
  }
  @container (min-width: 40rem) {
    .cards {
      grid-template-columns: repeat(4, minmax(0, 1fr));
    }
  }
  .card {
    position: relative;
    display: grid;
    grid-template-rows: subgrid;
    grid-row: span 10;
    gap: 0.35rem;
    align-content: start;
    padding: 0.7rem 0.75rem 0.8rem;
    border: 1.5px solid var(--_rule);
    border-radius: 3px;
    cursor: pointer;
  }
  .card:has(input:checked) {
    border-color: var(--_ink);
    box-shadow: inset 0 4px 0 var(--_ink);
  }
  .card:has(input:focus-visible) {
    outline: 3px solid var(--_accent);
    outline-offset: 2px;
  }
  .card input {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
    margin: 0;
    opacity: 0;
    cursor: pointer;
  }
  .name {
    font-weight: 650;
    line-height: 1.25;
    overflow-wrap: anywhere;
  }
  .origin {
    display: flex;
    align-items: start;
    gap: 0.35rem;
    font-size: 0.8125rem;
    line-height: 1.3;
    color: var(--_quiet);
  }
  .origin .sign {
    width: 1.2em;
    height: 1.2em;
  }
  .row {
    line-height: 1.25;
  }
  .row span {
    display: block;
    font-size: 0.78rem;
    color: var(--_quiet);
  }
  .row strong {
    font-weight: 550;
  }
  .row.tight strong {
    font-weight: 700;
    text-decoration: underline;
    text-decoration-color: var(--_accent);
    text-decoration-thickness: 2px;
    text-underline-offset: 3px;
  }
  .row em {
    font-style: normal;
    font-size: 0.78rem;
    color: var(--_accent);
  }
  .reasons {
    list-style: none;
    margin: 0.8rem 0 0;
    padding: 0;
    display: grid;
    gap: 0.5rem;
    line-height: 1.4;
  }
  .reasons li {
    display: grid;
    grid-template-columns: 1.5rem 1fr;
    gap: 0.45rem;
  }
  .reasons b {
    display: block;
    font-weight: 600;
  }
  details button {
    min-height: var(--_target);
    padding: 0;
    font: inherit;
    font-weight: 600;
    color: var(--_accent);
    background: none;
    border: 0;
    cursor: pointer;
  }
  details summary {
    min-height: var(--_target);
    color: var(--_accent);
    font-size: 0.9375rem;
  }
  summary::before {
    margin-inline: 0.25rem 0.7rem;
  }
  .misses {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .misses li {
    display: flex;
    justify-content: space-between;
    gap: 1rem;
    padding-block: 0.35rem;
    border-block-end: 1px solid var(--_rule);
  }
  .misses strong {
    text-align: end;
    font-weight: 600;
  }
  .misses span:last-child {
    text-align: end;
    color: var(--_quiet);
  }
`;
