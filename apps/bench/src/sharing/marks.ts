/** What the address of a page begins its fragment with when a job comes with it. */
export const jobMark = '#job=';

/** What a backup says of itself in its first entry. */
export const backupFormat = 'seatwright-backup';

/** What a list of tubes and sockets says of itself in its first entry. */
export const toolListFormat = 'seatwright-tools';

/** Whether the fragment of an address says that a job comes with it. */
export function carriesJob(fragment: string): boolean {
  return fragment.startsWith(jobMark);
}

/** Whether a text says of itself that it is a backup; it may still be a broken one. */
export function saysBackup(text: string): boolean {
  return text.slice(0, 200).includes(`"${backupFormat}"`);
}

/** Whether a text says of itself that it is a list of tubes and sockets. */
export function saysToolList(text: string): boolean {
  return text.slice(0, 200).includes(`"${toolListFormat}"`);
}
