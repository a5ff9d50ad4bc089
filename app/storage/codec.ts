/** Reached by import() alone, so that checking shapes costs a cold start nothing. */
export { decodeEntry, exportLedger, readLedgerFile } from '../../core/index.ts'
