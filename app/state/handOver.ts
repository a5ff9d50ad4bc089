/** A file leaves the app: by the phone's own sharing sheet if it takes files of this kind, else as a download. */
export type HandedOver = { readonly how: 'shared' | 'downloaded'; readonly name: string }

/** In the very touch: browsers forget it within seconds. Undefined: she closed the sheet. */
export const handOver = async (file: File): Promise<HandedOver | undefined> => {
  const shares = typeof navigator.canShare === 'function' && navigator.canShare({ files: [file] })
  const how = shares ? await share(file) : download(file)
  return how && { how, name: file.name }
}

const share = async (file: File): Promise<HandedOver['how'] | undefined> => {
  try {
    await navigator.share({ files: [file] })
    return 'shared'
  } catch (error) {
    // She closed the sheet. Anything else (a policy, a touch too long ago) still leaves the other way.
    return error instanceof DOMException && error.name === 'AbortError' ? undefined : download(file)
  }
}

const download = (file: File): HandedOver['how'] => {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(file)
  link.download = file.name
  link.click()
  // Some browsers begin to read only after the click is over.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000)
  return 'downloaded'
}
