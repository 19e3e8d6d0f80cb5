import react from '@vitejs/plugin-react'
import { VitePWA } from 'vite-plugin-pwa'
import { defineConfig } from 'vitest/config'

export default defineConfig({
  root: 'web',
  publicDir: '../public',
  base: './',
  plugins: [
    react(),
    // The app is kept for the saw, where there may be no network. A new version waits until the next visit.
    VitePWA({
      registerType: 'prompt',
      injectRegister: null,
      manifest: {
        name: 'Casewright',
        short_name: 'Casewright',
        description: 'Cabinets along a wall, and the sheets and cuts they take.',
        display: 'standalone',
        theme_color: '#f5f1e8',
        background_color: '#f5f1e8',
        icons: [{ src: 'favicon.svg', sizes: 'any', type: 'image/svg+xml' }],
      },
      workbox: {
        globPatterns: ['**/*.{html,js,css,woff2,svg}'],
        maximumFileSizeToCacheInBytes: 8_000_000,
      },
    }),
  ],
  build: { outDir: '../dist', emptyOutDir: true, chunkSizeWarningLimit: 1500 },
  worker: { format: 'es' },
  preview: { port: 4173 },
  test: {
    root: '.',
    testTimeout: 120_000,
    // Left to itself it keeps a core free, and takes twice as long on two.
    maxWorkers: '100%',
    pool: 'threads',
    projects: [
      {
        // The engine keeps nothing that another test could see, so its modules are loaded once and not for each file.
        extends: true,
        test: {
          name: 'engine',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', 'tests/web/**'],
          isolate: false,
        },
      },
      {
        // The page has one store, which each file of tests needs for itself.
        extends: true,
        test: { name: 'web', include: ['tests/web/**/*.test.ts', 'tests/web/**/*.test.tsx'] },
      },
    ],
  },
})
