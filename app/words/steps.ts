/** What a step of the pumps-off night is called, by its key: short, and true once it is done. */
import { type DeviceSort, readStep } from '../../core/index.ts'
import { capital } from './numbers.ts'

export const deviceWords: Readonly<Record<DeviceSort, string>> = {
  topOff: 'the top-off',
  dosingPump: 'the dosing pumps',
  reactor: 'the reactors',
  feeder: 'the automatic feeder',
  controller: 'the controller’s feed timers',
  sock: 'the sock or floss',
  skimmer: 'the skimmer',
  uv: 'the UV lamp',
  ozone: 'the ozone',
  return: 'the return pump',
  wave: 'the wave pumps',
  sumpHeater: 'the sump heater',
}
const places = { display: 'the display', sump: 'the sump', refugium: 'the refugium' } as const

/** A second one of a sort has a number after its name. */
export const deviceOf = (key: string): DeviceSort | undefined => {
  const sort = key.replace(/-?\d+$/, '')
  return Object.hasOwn(deviceWords, sort) ? (sort as DeviceSort) : undefined
}
/** "the skimmer", "the wave pumps 2". */
export const deviceName = (key: string): string => {
  const sort = deviceOf(key)
  const which = /\d+$/.exec(key)?.[0]
  return sort ? `${deviceWords[sort]}${which ? `\u00a0${which}` : ''}` : key.replace(/-/g, ' ')
}
const bare = (name: string): string => name.replace(/^the /, '')

/** A step a newer version knows goes by its own key. */
export const stepName = (step: string): string => {
  const read = readStep(step)
  const { key = '', place = 'display' } = read ?? {}
  switch (read?.does) {
    case 'off':
    case 'on':
    case 'out':
    case 'in':
      return capital(`${bare(deviceName(key))} ${read.does}`)
    case 'dark':
      return `Dark over ${places[place]}`
    case 'level':
      return 'Level marked'
    case 'waterOut':
      return step === 'waterOut' ? 'Water taken out' : 'Water taken out afterwards'
    case 'pour':
      return `Poured into ${places[place]}`
    case 'look':
      return 'Level and heater looked at'
    default:
      return capital(step.replace(/-/g, ' '))
  }
}
