/** The rows and columns of her own tray, drawn as they are typed. */
import './food.css'
import { NumberField } from '../../parts/NumberField.tsx'
import { Tray } from '../../parts/Tray.tsx'
import { readTray, type TrayFields } from './trays.ts'

type TrayQuestionsProps = {
  readonly fields: TrayFields
  readonly change: (fields: Partial<TrayFields>) => void
  readonly wrong: (field: string) => string | undefined
}

export const TrayQuestions = ({ fields, change, wrong }: TrayQuestionsProps) => {
  const tray = readTray(fields)
  return (
    <div className="pair">
      <NumberField
        label="Rows in a tray"
        value={fields.rows}
        onChange={(rows) => change({ rows })}
        error={wrong('rows')}
      />
      <NumberField
        label="Wells in a row"
        value={fields.columns}
        onChange={(columns) => change({ columns })}
        error={wrong('columns')}
      />
      {tray.ok && (
        <Tray
          {...tray.value}
          wells={Array.from({ length: tray.value.rows * tray.value.columns }, () => true)}
          size="compact"
          says={`A tray of ${tray.value.rows} by ${tray.value.columns} wells, full.`}
        />
      )}
    </div>
  )
}
