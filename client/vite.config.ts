// Builds the bench into dist/client: self-contained files, nothing inline, so that a strict content policy holds.
import { preact } from '@preact/preset-vite';
import { defineConfig, type Plugin } from 'vite';

/** The page fetches the code of a family or a kit when a job first needs it. */
const cataloguesOnDemand: Plugin = {
  name: 'catalogues-on-demand',
  enforce: 'pre',
  resolveId(source, importer) {
    return source === './catalogue.js' && /\/parts-library\/(parts|kits)\/index\.ts$/.test(importer ?? '')
      ? this.resolve('./catalogue-on-demand.js', importer)
      : undefined;
  },
};

export default defineConfig({
  root: import.meta.dirname,
  base: './',
  plugins: [cataloguesOnDemand, preact()],
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
