/** Files from the phone: chosen, handed on, and the field is empty again. */
import '../styles/file.css'
import { type Asked, Labelled } from './Labelled.tsx'

type FileFieldProps = Asked & {
  readonly accept: string
  readonly multiple?: boolean
  readonly onFiles: (files: readonly File[]) => void
}

export const FileField = ({ accept, multiple = false, onFiles, ...asked }: FileFieldProps) => (
  <Labelled {...asked}>
    {(wires) => (
      <input
        {...wires}
        className="file-input"
        type="file"
        accept={accept}
        multiple={multiple}
        onChange={({ target }) => {
          const files = [...(target.files ?? [])]
          // Emptied, so that the same file may be chosen again once it is mended.
          target.value = ''
          if (files.length > 0) onFiles(files)
        }}
      />
    )}
  </Labelled>
)
