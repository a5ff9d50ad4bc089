/** How far a long task has come, in a bar and in words. */
import '../styles/fields.css'
import '../styles/telling.css'
import { useId } from 'react'

type ProgressProps = {
  readonly label: string
  readonly done: number
  readonly of: number
  readonly says?: string | undefined
}

export const Progress = ({ label, done, of, says }: ProgressProps) => {
  const id = useId()
  return (
    <div className="progress">
      <label htmlFor={id}>{label}</label>
      <progress id={id} value={done} max={of} />
      {says && <p className="field-hint">{says}</p>}
    </div>
  )
}
