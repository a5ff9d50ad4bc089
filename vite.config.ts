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

/** What an installing browser shows. Not precached: the app itself has no use for them. */
const picture = (name: string, form_factor: 'narrow' | 'wide', label: string) => ({
  src: `pictures/${name}.png`,
  sizes: form_factor === 'narrow' ? '390x844' : '1280x800',
  type: 'image/png',
  form_factor,
  label,
})

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
      includeManifestIcons: false,
      injectManifest: {
        // One file, with the codec in it: a worker may not import later, nor know the address of a module.
        rollupFormat: 'iife',
        // The large icons are for an installing browser, which has a network.
        globPatterns: ['**/*.{html,js,css,svg,webmanifest}', 'icons/icon-192.png', 'icons/apple-touch-icon.png'],
      },
      manifest: {
        name: 'Smallhours',
        short_name: 'Smallhours',
        description:
          'Food for the small life of a marine tank: what one dose is, what there is, and which night is next.',
        lang: 'en',
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
        screenshots: [
          picture('tonight', 'narrow', 'Tonight: what to take, and one touch when it is done'),
          picture('night', 'narrow', 'After lights-out: red on black'),
          picture('food', 'narrow', 'Food: what stands behind each door, and until when it is good'),
          picture('desk', 'wide', 'Food, at the desk'),
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
