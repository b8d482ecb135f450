import { css } from 'lit';

export const styles = css`
  :host {
    display: block;
  }
  .good {
    --_tone: var(--_good);
  }
  .care {
    --_tone: var(--_care);
  }
  .unknown {
    --_tone: var(--_unknown);
  }
  .bad {
    --_tone: var(--_bad);
  }
  .verdict {
    display: grid;
    gap: 0.75rem 1.5rem;
    align-items: start;
  }
  .stamp {
    justify-self: start;
    display: inline-flex;
    align-items: center;
    gap: 0.55rem;
    margin: 0.35rem 0 0.2rem;
    padding: 0.42rem 0.85rem 0.42rem 0.6rem;
    color: var(--_tone);
    border: 2.5px solid currentColor;
    outline: 1px solid currentColor;
    outline-offset: 3px;
    border-radius: 3px;
    rotate: -1.4deg;
    font-size: 1.2rem;
    line-height: 1.15;
    font-weight: 800;
    letter-spacing: 0.07em;
    text-transform: uppercase;
  }
  .stamp .sign {
    width: 1.7em;
    height: 1.7em;
    color: inherit;
  }
  .stale .stamp {
    border-style: dashed;
    outline-style: dashed;
  }
  .stale-note {
    margin: 0;
    font-weight: 600;
    color: var(--_bad);
  }
  ul {
    list-style: none;
    margin: 0;
    padding: 0;
    display: grid;
    gap: 0.4rem;
    line-height: 1.4;
  }
  li {
    padding-inline-start: 0.8rem;
    border-inline-start: 2px solid var(--_tone);
    text-wrap: pretty;
  }
  button {
    font: inherit;
    color: var(--_accent);
    background: none;
    border: 0;
    border-block-end: 1.5px solid currentColor;
    min-height: var(--_target);
    padding: 0 0.1rem;
    text-align: start;
    cursor: pointer;
    font-weight: 600;
  }
  .next {
    margin: 0;
  }
  :host([compact]) .verdict {
    display: block;
  }
  :host([compact]) .stamp {
    font-size: 0.8rem;
    margin: 0;
    outline-offset: 1.5px;
    padding: 0.15rem 0.5rem 0.15rem 0.35rem;
    border-width: 2px;
    rotate: none;
    background: var(--_paper);
  }
  :host([compact][stale]) .stamp {
    border-style: dashed;
    outline-style: dashed;
  }
  @media print {
    button {
      border: 0;
      color: inherit;
      min-height: 0;
      padding: 0;
    }
  }
`;
