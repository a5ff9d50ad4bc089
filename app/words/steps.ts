/** What a step of the pumps-off night is called, by its key: short, and true once it is done. */
import { type DeviceSort, readStep, type Which } from '../../core/index.ts'
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

/** One of a sort of which there are several. */
const oneOf: Readonly<Partial<Record<DeviceSort, string>>> = {
  dosingPump: 'the dosing pump',
  reactor: 'the reactor',
  wave: 'the wave pump',
}

/** What tells a device apart, by its key; undefined for one nobody described. */
export type WhichIs = (key: string) => Which | undefined
const byItsKey: WhichIs = (key) => {
  const number = /\d+$/.exec(key)?.[0]
  return number === undefined ? {} : { nth: Number(number) }
}

/** A second one of a sort has a number after its name. */
export const deviceOf = (key: string): DeviceSort | undefined => {
  const sort = key.replace(/-?\d+$/, '')
  return Object.hasOwn(deviceWords, sort) ? (sort as DeviceSort) : undefined
}
/** "the skimmer", "the wave pump 2", "the return pump “left”". */
export const deviceName = (key: string, which: WhichIs = byItsKey): string => {
  const sort = deviceOf(key)
  if (!sort) return key.replace(/-/g, ' ')
  const { name, nth } = which(key) ?? byItsKey(key) ?? {}
  const one = oneOf[sort] ?? deviceWords[sort]
  return name ? `${one} “${name}”` : nth ? `${one}\u00a0${nth}` : deviceWords[sort]
}
export const bare = (name: string): string => name.replace(/^the /, '')

/** A step a newer version knows goes by its own key. */
export const stepName = (step: string, which?: WhichIs): string => {
  const read = readStep(step)
  const { key = '', place = 'display' } = read ?? {}
  switch (read?.does) {
    case 'off':
    case 'on':
    case 'out':
    case 'in':
      return capital(`${bare(deviceName(key, which))} ${read.does}`)
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
