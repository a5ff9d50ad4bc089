/**
 * The app as it is shipped, with two pages beside it that the same worker keeps: an empty one and one without screens. They
 * are built apart and handed over as finished files, so that no piece of the app is cut differently for their sake.
 */
import react from '@vitejs/plugin-react'
import { build, mergeConfig, type PluginOption, type Rollup } from 'vite'
import app from '../../vite.config.ts'

const policy = (app.plugins ?? []).find(
  (plugin) =>
    plugin !== null && typeof plugin === 'object' && 'name' in plugin && plugin.name === 'content-security-policy',
)
if (!policy) throw new Error('The app has no content security policy')

const pageFiles = async (page: string): Promise<Rollup.RollupOutput['output']> => {
  const built = await build({
    configFile: false,
    root: `${import.meta.dirname}/pages`,
    base: './',
    publicDir: false,
    logLevel: 'warn',
    build: {
      ...app.build,
      outDir: 'unused',
      write: false,
      rolldownOptions: { input: `${import.meta.dirname}/pages/${page}` },
    },
    plugins: [react(), policy],
  })
  const [output] = [built].flat()
  if (!output || !('output' in output)) throw new Error(`${page} was not built`)
  return output.output
}

const besideTheApp: PluginOption = {
  name: 'pages-beside-the-app',
  generateBundle: async function () {
    for (const page of ['empty.html', 'timed.html'])
      for (const file of await pageFiles(page))
        this.emitFile({
          type: 'asset',
          fileName: file.fileName,
          source: file.type === 'chunk' ? file.code : file.source,
        })
  },
}

export default mergeConfig(app, { plugins: [besideTheApp] })
