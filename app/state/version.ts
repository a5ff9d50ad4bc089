/** What this build calls itself. */
export { version } from '../../package.json'
