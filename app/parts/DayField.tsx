/** A day, `yyyy-MM-dd` or empty. Fields of digits are read in two orders in two countries, so it is said again in words. */
import { type Picked, Picker } from './Picker.tsx'

type DayFieldProps = Picked & { readonly earliest?: string | undefined; readonly latest?: string | undefined }

export const DayField = ({ earliest, latest, ...asked }: DayFieldProps) => (
  <Picker
    {...asked}
    type="date"
    min={earliest}
    max={latest}
    drawing="M2.5 4.5h15v13h-15zM2.5 8.5h15M6.5 2.5v3.5M13.5 2.5v3.5M6 12h2M12 12h2"
  />
)
