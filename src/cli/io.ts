/** What the command needs of the world around it. */
export interface CliIo {
  /** The text of a file; rejects with Node's error where there is none to be read. */
  readFile(path: string): Promise<string>;
  /** All of standard input. */
  readInput(): Promise<string>;
  /** The version of the package. */
  version(): Promise<string>;
  /** The day it is now where the command runs, as an ISO date. */
  today(): string;
  /** This moment in UTC, as calendars write it: `20261129T021600Z`. */
  now(): string;
  write(text: string): void;
  writeError(text: string): void;
}
