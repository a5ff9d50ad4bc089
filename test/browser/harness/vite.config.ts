/** A page with the storage and the state and no screens. It is built beside the tests and never into dist/. */
import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'
import { VitePWA } from 'vite-plugin-pwa'

export default defineConfig({
  root: import.meta.dirname,
  base: './',
  publicDir: false,
  build: { outDir: 'dist', emptyOutDir: true, target: 'es2023', minify: false, modulePreload: { polyfill: false } },
  plugins: [
    react(),
    VitePWA({
      strategies: 'injectManifest',
      srcDir: '../../../app/worker',
      filename: 'worker.ts',
      injectRegister: false,
      // As the app's own: a worker may not import later, nor know the address of a module.
      injectManifest: { rollupFormat: 'iife' },
      manifest: false,
    }),
  ],
})
