/** What a step of the pumps-off night says, and why. */
import { type DeviceSort, readStep, type WaterPlace } from '../../core/index.ts'
import { placeWords } from './seedingEntries.ts'
import { deviceName, deviceOf, stepName, type WhichIs } from './steps.ts'

/** What to do at a step, in the dark, in one breath; and what goes wrong without it. */
export const stepTold = (step: string, which?: WhichIs): { readonly say: string; readonly note?: string } => {
  const read = readStep(step)
  if (!read) return { say: stepName(step, which) }
  const { key = '', place = 'display' } = read
  const sort = deviceOf(key)
  const name = deviceName(key, which)
  const note = sort && (read.does === 'off' || read.does === 'out' ? offNotes[sort] : onNotes[sort])
  const told = (say: string, why = note) => (why ? { say, note: why } : { say })
  switch (read.does) {
    case 'off':
      return told(`Switch off ${name}`)
    case 'on':
      return told(`Switch ${name} back on`)
    case 'out':
      return told(`Take out ${name}`)
    case 'in':
      return told(`Put ${name} back in`)
    case 'dark':
      return told(
        `Is it dark over ${placeWords[place]}?`,
        'Before any flow stops: in the light fish eat what is poured.',
      )
    case 'level':
      return told('Wait until the water has run down, then mark the level', 'A strip of tape on the glass is enough.')
    case 'waterOut':
      return step === 'waterOut'
        ? told(
            'Take out water',
            'From low in the display or from the sump, into a marked jug. Never into another tank.',
          )
        : told('Take out as much water as came in', 'From the return chamber, where nothing was poured.')
    case 'pour':
      return told(`Pour into ${placeWords[place]}`, pourNotes[place])
    case 'look':
      return told('Look at the level and the heater', 'A bad smell or a high level: leave the top-off off.')
  }
}
const pourNotes: Readonly<Record<WaterPlace, string>> = {
  display: 'Low among the rock, away from the overflow. Rinse each bottle and pour the rinse too.',
  sump: 'Away from the return pump. Rinse each bottle and pour the rinse too.',
  refugium: 'Among the algae. Rinse each bottle and pour the rinse too.',
}
const offNotes: Readonly<Partial<Record<DeviceSort, string>>> = {
  topOff: 'Otherwise fresh water fills up what you take out.',
  sock: 'It would catch what you pour.',
  skimmer: 'It would foam them out.',
  uv: 'It kills what you pour.',
  ozone: 'It kills what you pour.',
  return: 'Otherwise the overflow swallows them. From this tick on the hour runs.',
  wave: 'From this tick on the hour runs.',
  sumpHeater: 'Low water may leave it dry: off, or well covered.',
}
const onNotes: Readonly<Partial<Record<DeviceSort, string>>> = {
  return: 'Without flow there is no fresh oxygen, and the display is not heated.',
  wave: 'Without flow there is no fresh oxygen.',
  sumpHeater: 'With the level back it is covered again.',
  topOff: 'Only once the level stands at its mark.',
  skimmer: 'It often foams too much for a day: look at its cup.',
}
