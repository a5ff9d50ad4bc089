import react from '@vitejs/plugin-react'
import { VitePWA } from 'vite-plugin-pwa'
import { defineConfig } from 'vitest/config'

const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ')

export default defineConfig({
  root: 'app',
  base: './',
  appType: 'mpa', // an unknown path is a 404 in dev and preview too, as on a plain static host
  publicDir: '../public',
  build: {
    outDir: '../dist',
    emptyOutDir: true,
    target: 'es2023',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // Whatever the first screen imports in one file: each file more is asked of the worker, and costs a cold start.
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: 'first', test: /app\/main\.tsx$/ }] } } },
  },
  plugins: [
    react(),
    {
      // Only in the build: the dev server needs inline scripts and styles.
      name: 'content-security-policy',
      apply: 'build',
      transformIndexHtml: () => [
        { tag: 'meta', attrs: { 'http-equiv': 'Content-Security-Policy', content: policy }, injectTo: 'head-prepend' },
      ],
    },
    VitePWA({
      strategies: 'injectManifest',
      srcDir: 'worker',
      filename: 'worker.ts',
      injectRegister: false,
      injectManifest: {
        // One file, with the codec in it: a worker may not import later, nor know the address of a module.
        rollupFormat: 'iife',
        globPatterns: ['**/*.{html,js,css,svg,webmanifest}', 'icons/*.png'],
      },
      manifest: {
        name: 'Smallhours',
        short_name: 'Smallhours',
        start_url: './',
        scope: './',
        display: 'standalone',
        theme_color: '#0b0b0b',
        background_color: '#0b0b0b',
        icons: [
          { src: 'icons/icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icons/icon-512.png', sizes: '512x512', type: 'image/png' },
          { src: 'icons/maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
        ],
      },
    }),
  ],
  test: {
    projects: [
      {
        extends: true,
        root: import.meta.dirname,
        test: {
          name: 'core',
          include: ['test/core/**/*.test.ts'],
          environment: 'node',
          setupFiles: ['test/support/noClock.ts'],
        },
      },
      {
        extends: true,
        root: import.meta.dirname,
        test: {
          name: 'app',
          include: ['test/app/**/*.test.tsx'],
          environment: 'jsdom',
          testTimeout: 30_000,
          setupFiles: ['test/support/setup.ts'],
        },
      },
    ],
  },
})
