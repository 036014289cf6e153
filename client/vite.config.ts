// Builds the bench into dist/client: self-contained files, nothing inline, so that a strict content policy holds.
import { preact } from '@preact/preset-vite';
import { defineConfig, type Plugin } from 'vite';

/** The page fetches the code of a family or a kit when a job first needs it, and the kerf's engine after the drawing. */
const codeOnDemand: Plugin = {
  name: 'code-on-demand',
  enforce: 'pre',
  resolveId(source, importer = '') {
    if (source === './catalogue.js' && /\/parts-library\/(parts|kits)\/index\.ts$/.test(importer))
      return this.resolve('./catalogue-on-demand.js', importer);
    const name = /^(\.\/(?:offset\/)?engine)\.js$/.exec(source)?.[1];
    return name !== undefined && importer.includes('/parts-library/geometry/')
      ? this.resolve(`${name}-on-demand.js`, importer)
      : undefined;
  },
};

export default defineConfig({
  root: import.meta.dirname,
  base: './',
  plugins: [codeOnDemand, preact()],
  // makerjs is CommonJS; the development server has to convert it before the first part is drawn.
  optimizeDeps: { include: ['makerjs', 'clipper-lib'] },
  build: {
    outDir: '../dist/client',
    emptyOutDir: true,
    target: 'es2023',
    // A data: address would need a hole in the content policy.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    sourcemap: false,
    // Minified bytes; the budget that counts is measured compressed.
    chunkSizeWarningLimit: 800,
  },
});
