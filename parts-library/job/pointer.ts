// RFC 6901 pointers: the address of a value inside a job.

/**
 * The pointer to a value from the names and indices that lead to it.
 * @example pointerTo(['rows', 0, 'a/b']) // '/rows/0/a~1b'
 */
export function pointerTo(tokens: readonly (string | number)[]): string {
  return tokens.map((token) => `/${String(token).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}

/**
 * The names and indices of a pointer.
 * @returns undefined when the text is not a pointer (it must be empty or start with a slash)
 * @example tokensOf('/rows/0/a~1b') // ['rows', '0', 'a/b']
 */
export function tokensOf(pointer: string): readonly string[] | undefined {
  if (pointer === '') return [];
  if (!pointer.startsWith('/')) return undefined;
  return pointer
    .slice(1)
    .split('/')
    .map((token) => token.replaceAll('~1', '/').replaceAll('~0', '~'));
}
