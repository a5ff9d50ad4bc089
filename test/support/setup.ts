/** Every component test begins with an empty page. */
import { cleanup, configure } from '@testing-library/react'
import { afterEach } from 'vitest'

// A part that is loaded on demand is compiled on demand here, which takes a busy machine longer than the usual second.
configure({ asyncUtilTimeout: 8_000 })
afterEach(cleanup)
