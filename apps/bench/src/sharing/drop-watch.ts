import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Files that are dragged over the page and dropped onto it. */
export class DropWatch implements ReactiveController {
  /** A file is held over the page. */
  isOver = false;
  private readonly host: ReactiveControllerHost & HTMLElement;
  private readonly take: (file: File) => void;

  constructor(host: ReactiveControllerHost & HTMLElement, take: (file: File) => void) {
    this.host = host;
    this.take = take;
    host.addController(this);
  }

  hostConnected(): void {
    this.host.addEventListener('dragover', this.over);
    this.host.addEventListener('dragleave', this.leave);
    this.host.addEventListener('drop', this.drop);
  }

  hostDisconnected(): void {
    this.host.removeEventListener('dragover', this.over);
    this.host.removeEventListener('dragleave', this.leave);
    this.host.removeEventListener('drop', this.drop);
  }

  private turn(isOver: boolean): void {
    this.isOver = isOver;
    this.host.requestUpdate();
  }

  private readonly over = (event: DragEvent): void => {
    if (event.dataTransfer?.types.includes('Files') !== true) return;
    event.preventDefault();
    this.turn(true);
  };

  private readonly leave = (event: DragEvent): void => {
    if (event.relatedTarget === null) this.turn(false);
  };

  private readonly drop = (event: DragEvent): void => {
    const [file] = event.dataTransfer?.files ?? [];
    this.turn(false);
    if (file === undefined) return;
    event.preventDefault();
    this.take(file);
  };
}
