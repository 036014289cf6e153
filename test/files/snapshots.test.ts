// The files themselves, kept so that a changed byte shows up in review. FISHPLATE_UPDATE=1 writes them anew.
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { cutSvg, everyDxf, finishedSvg } from './pieces.js';

const folder = fileURLToPath(new URL('../snapshots/files/', import.meta.url));

test.each([
  ...everyDxf.map(({ version, unit, file }) => [`${version}-${unit}.${file.name}`, file.text] as const),
  [finishedSvg.name, finishedSvg.text] as const,
  [cutSvg.name, cutSvg.text] as const,
])('%s is what it was', (name, text) => {
  if (process.env['FISHPLATE_UPDATE'] === '1') writeFileSync(folder + name, text);
  expect(text).toBe(readFileSync(folder + name, 'utf8'));
});
