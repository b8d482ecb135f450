import { css } from 'lit';

export const styles = css`
  fieldset {
    border: 0;
    margin: 0;
    padding: 0;
    min-width: 0;
  }
  legend {
    font-weight: 600;
    color: var(--_ink);
    margin-block-end: 0.3rem;
  }
  .grid {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(8.5rem, 1fr));
    gap: 0.5rem;
    margin-block-start: 0.5rem;
  }
  .where .grid {
    grid-template-columns: 1fr;
  }
  .row {
    display: grid;
    gap: 0.35rem;
  }
  .where .row {
    grid-template-columns: minmax(0, 1.6fr) minmax(0, 1fr) minmax(0, 1fr);
  }
  .where .line {
    padding-inline: 0.4rem;
  }
  .line input {
    flex-basis: 3rem;
  }
  .row label {
    font-size: 0.8125rem;
  }
  .check {
    display: flex;
    align-items: center;
    gap: 0.6rem;
    min-height: var(--_target);
    font-size: 0.9375rem;
    cursor: pointer;
  }
  .check input {
    flex: none;
    width: 1.35rem;
    height: 1.35rem;
    min-height: 0;
    accent-color: var(--_ink);
    outline: revert;
  }
  .result {
    margin: 0.4rem 0 0;
    font-size: 0.9375rem;
    color: var(--_quiet);
    text-wrap: pretty;
  }
  .result strong {
    color: var(--_ink);
  }
`;
