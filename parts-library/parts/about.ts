// What is said of a part family before it is loaded.

export interface About {
  /** As it stands in commands, files and addresses: `adapter-plate`. */
  readonly id: string;
  readonly title: string;
  /** One sentence: what it is and what it is for. */
  readonly summary: string;
}
