/** A picture is called by what it is: the first half of the SHA-256 of its bytes, in hexadecimal. */
import type { PhotoId } from '../../core/index.ts'

const nameBytes = 16

export const pictureName = async (bytes: ArrayBuffer): Promise<PhotoId> => {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes))
  return [...digest.subarray(0, nameBytes)].map((byte) => byte.toString(16).padStart(2, '0')).join('') as PhotoId
}
