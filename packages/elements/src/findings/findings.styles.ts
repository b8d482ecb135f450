import { css } from 'lit';

export const styles = css`
  :host {
    display: block;
  }
  ul {
    list-style: none;
    margin: 0;
    padding: 0;
  }
  li {
    display: grid;
    grid-template-columns: 1.6rem 1fr;
    gap: 0.1rem 0.5rem;
    padding-block: 0.6rem;
    line-height: 1.42;
  }
  li + li {
    border-block-start: 1px solid var(--_rule);
  }
  .says {
    margin: 0;
    text-wrap: pretty;
  }
  .todo,
  .source {
    grid-column: 2;
    margin: 0.15rem 0 0;
  }
  .todo {
    font-weight: 600;
  }
  .todo::before {
    content: '→ ';
    color: var(--_accent);
  }
  .source {
    font-size: 0.8125rem;
    color: var(--_quiet);
  }
  .held {
    font-size: 0.8125rem;
    color: var(--_quiet);
    font-style: italic;
  }
  details > summary,
  button {
    font: inherit;
    font-size: 0.9375rem;
    min-height: var(--_target);
    display: flex;
    align-items: center;
    gap: 0.5rem;
    cursor: pointer;
    color: var(--_accent);
    list-style: none;
    background: none;
    border: 0;
    padding: 0;
  }
  summary::before {
    margin-inline: 0.25rem 0.4rem;
  }
  .foot {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1.5rem;
  }
  .none {
    color: var(--_quiet);
  }
`;
