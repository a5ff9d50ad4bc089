/** What is asked of a person: every input named, hinted and, when it is wrong, told so where it stands. */
import { render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { type ReactNode, useState } from 'react'
import { expect, test, vi } from 'vitest'
import { Button } from '../../app/parts/Actions.tsx'
import { Chips } from '../../app/parts/Chips.tsx'
import { Choice } from '../../app/parts/Choice.tsx'
import { ClockField } from '../../app/parts/ClockField.tsx'
import { CountField } from '../../app/parts/CountField.tsx'
import { DayField } from '../../app/parts/DayField.tsx'
import { Field } from '../../app/parts/Field.tsx'
import { NumberField } from '../../app/parts/NumberField.tsx'
import { UnitNumberField } from '../../app/parts/UnitNumberField.tsx'

/** Holds what is typed, as a screen's draft does. */
const Holding = <T,>({ first, children }: { first: T; children: (value: T, set: (value: T) => void) => ReactNode }) => {
  const [value, set] = useState(first)
  return children(value, set)
}

/** The words tied to an element for a screen reader, in the order they are read. */
const describedBy = (element: HTMLElement): string[] =>
  (element.getAttribute('aria-describedby') ?? '')
    .split(' ')
    .filter(Boolean)
    .map((id) => document.getElementById(id)?.textContent ?? `nothing called ${id}`)

test('a field is named by its label, and its hint and error are read with it', () => {
  const { rerender } = render(<Field label="Label says" hint="As printed" value="" onChange={() => {}} />)
  const input = screen.getByRole('textbox', { name: 'Label says' })
  expect(describedBy(input)).toEqual(['As printed'])
  expect(input.getAttribute('aria-invalid')).toBeNull()
  rerender(<Field label="Label says" hint="As printed" error="Too long" value="" onChange={() => {}} />)
  expect(describedBy(input)).toEqual(['As printed', 'Too long'])
  expect(input.getAttribute('aria-invalid')).toBe('true')
})

test('a field of several lines keeps them', async () => {
  render(<Holding first="">{(text, set) => <Field label="Notes" lines={3} value={text} onChange={set} />}</Holding>)
  await userEvent.type(screen.getByRole('textbox', { name: 'Notes' }), 'cloudy{Enter}by morning')
  expect(screen.getByRole<HTMLTextAreaElement>('textbox').value).toBe('cloudy\nby morning')
})

test.each(['0,6', '0.6', '1 200'])('a number typed as "%s" is kept as it was typed', async (typed) => {
  render(
    <Holding first="">
      {(text, set) => <NumberField label="In the bottle" unit="mL" value={text} onChange={set} />}
    </Holding>,
  )
  const input = screen.getByRole<HTMLInputElement>('textbox', { name: 'In the bottle' })
  await userEvent.type(input, typed)
  expect(input.value).toBe(typed)
  expect([input.type, input.inputMode]).toEqual(['text', 'decimal'])
  expect(screen.getByText('mL')).toBeTruthy()
})

test('the unit of a number is asked, not guessed, and what is missing is said of the unit alone', async () => {
  const onUnit = vi.fn()
  render(
    <UnitNumberField
      label="Water that moves"
      value="200"
      onChange={() => {}}
      unitLabel="Unit"
      units={[
        { value: 'litres', label: 'litres' },
        { value: 'usGallons', label: 'US gallons' },
      ]}
      unit={null}
      onUnit={onUnit}
      unitError="Choose the unit."
    />,
  )
  expect(screen.queryByRole('radio', { checked: true })).toBeNull()
  expect(describedBy(screen.getByRole('radiogroup', { name: 'Unit' }))).toEqual(['Choose the unit.'])
  expect(describedBy(screen.getByRole('textbox', { name: 'Water that moves' }))).toEqual([])
  await userEvent.click(screen.getByRole('radio', { name: 'US gallons' }))
  expect(onUnit).toHaveBeenCalledExactlyOnceWith('usGallons')
})

test('a count goes up and down by its keys, never past its ends, and can be typed', async () => {
  render(
    <Holding<number | null> first={1}>
      {(count, set) => <CountField label="Left" value={count} onChange={set} max={48} />}
    </Holding>,
  )
  const input = screen.getByRole<HTMLInputElement>('textbox', { name: 'Left' })
  const fewer = screen.getByRole('button', { name: 'One fewer: Left' })
  await userEvent.click(fewer)
  await userEvent.click(fewer)
  expect(input.value).toBe('0')
  expect(fewer.getAttribute('aria-disabled')).toBe('true')
  await userEvent.clear(input)
  expect(input.value).toBe('')
  await userEvent.type(input, '46')
  expect(input.value).toBe('46')
  await userEvent.keyboard('{ArrowUp}{ArrowUp}{ArrowUp}')
  expect(input.value).toBe('48')
  expect(screen.getByRole('status').textContent).toBe('48')
})

test.each([
  ['-1', 'A whole number, please.'],
  ['10,5', 'A whole number, please.'],
  ['1.000', 'A whole number, please.'],
  ['1e9', 'A whole number, please.'],
  ['0', 'At least 1.'],
  ['49', 'At most 48.'],
])('a count typed as "%s" stays as it was typed, is no number, and is told so', async (typed, says) => {
  const counts: (number | null)[] = []
  const hold = (set: (count: number | null) => void) => (count: number | null) => {
    counts.push(count)
    set(count)
  }
  render(
    <Holding<number | null> first={7}>
      {(count, set) => (
        <CountField label="Left" value={count} onChange={hold(set)} fewer="Fewer" more="More" min={1} max={48} />
      )}
    </Holding>,
  )
  const input = screen.getByRole<HTMLInputElement>('textbox', { name: 'Left' })
  await userEvent.clear(input)
  expect(describedBy(input)).toEqual([])
  await userEvent.type(input, typed)
  expect(input.value).toBe(typed)
  expect(counts.at(-1)).toBeNull()
  expect(describedBy(input)).toEqual([says])
  await userEvent.clear(input)
  await userEvent.type(input, '31')
  expect(counts.at(-1)).toBe(31)
  expect(describedBy(input)).toEqual([])
})

test('a count that changes elsewhere replaces what was typed', async () => {
  const field = (value: number | null) => (
    <CountField label="Left" value={value} onChange={() => {}} fewer="Fewer" more="More" />
  )
  const { rerender } = render(field(null))
  const input = screen.getByRole<HTMLInputElement>('textbox', { name: 'Left' })
  await userEvent.type(input, 'few')
  expect(input.value).toBe('few')
  rerender(field(12))
  expect(input.value).toBe('12')
})

test('the first touch on an empty count starts from its lower end', async () => {
  const onChange = vi.fn()
  render(<CountField label="Left" value={null} onChange={onChange} />)
  await userEvent.click(screen.getByRole('button', { name: 'One more: Left' }))
  expect(onChange).toHaveBeenCalledExactlyOnceWith(1)
})

test('a day is read again in words, and a clock keeps its own form', () => {
  render(
    <>
      <DayField label="Opened on" value="2025-11-25" onChange={() => {}} echo="Tuesday 25 November 2025" />
      <ClockField label="Lights out" value="21:00" onChange={() => {}} error="When?" />
    </>,
  )
  expect(describedBy(screen.getByLabelText('Opened on'))).toEqual(['Tuesday 25 November 2025'])
  expect(screen.getByLabelText<HTMLInputElement>('Lights out').value).toBe('21:00')
  expect(describedBy(screen.getByLabelText('Lights out'))).toEqual(['When?'])
})

test('a choice is one radio group whose rows carry their own line', async () => {
  render(
    <Holding<'trays' | 'loose' | null> first={null}>
      {(kept, set) => (
        <Choice
          label="Kept"
          error="Choose one."
          value={kept}
          onChange={set}
          options={[
            { value: 'trays', label: 'In trays', hint: 'One is pushed out a night' },
            { value: 'loose', label: 'Loose' },
          ]}
        />
      )}
    </Holding>,
  )
  expect(describedBy(screen.getByRole('radiogroup', { name: 'Kept' }))).toEqual(['Choose one.'])
  const trays = screen.getByRole<HTMLInputElement>('radio', { name: 'In trays' })
  expect(describedBy(trays)).toEqual(['One is pushed out a night'])
  await userEvent.click(screen.getByText('In trays'))
  expect(trays.checked).toBe(true)
  const loose = screen.getByRole<HTMLInputElement>('radio', { name: 'Loose' })
  await userEvent.click(loose)
  expect([trays.checked, loose.checked]).toEqual([false, true])
})

test('two choices on one screen do not answer for each other', () => {
  const where = [
    { value: 'kitchen', label: 'Kitchen' },
    { value: 'cellar', label: 'Cellar' },
  ]
  render(
    <>
      <Choice label="Bottle" value="kitchen" onChange={() => {}} options={where} />
      <Choice label="Trays" value="kitchen" onChange={() => {}} options={where} />
    </>,
  )
  const radios = screen.getAllByRole<HTMLInputElement>('radio')
  // One name is what makes a group of radios: for the arrow keys, and for which of them is chosen.
  expect(new Set(radios.map((radio) => radio.name)).size).toBe(2)
  expect(screen.getAllByRole('radio', { checked: true })).toHaveLength(2)
})

test('a reason may be given, changed and taken back', async () => {
  render(
    <Holding<'broken' | 'thawed' | null> first={null}>
      {(why, set) => (
        <Chips
          label="Why?"
          value={why}
          onChange={set}
          options={[
            { value: 'broken', label: 'Broken' },
            { value: 'thawed', label: 'Thawed' },
          ]}
        />
      )}
    </Holding>,
  )
  expect(screen.getByRole('group', { name: 'Why?' })).toBeTruthy()
  await userEvent.click(screen.getByRole('button', { name: 'Broken' }))
  await userEvent.click(screen.getByRole('button', { name: 'Thawed' }))
  expect(screen.getByRole('button', { pressed: true }).textContent).toBe('Thawed')
  await userEvent.click(screen.getByRole('button', { name: 'Thawed' }))
  expect(screen.queryByRole('button', { pressed: true })).toBeNull()
})

test('a waiting button neither acts nor sends its form', async () => {
  const onAct = vi.fn()
  const onSubmit = vi.fn()
  render(
    <form onSubmit={onSubmit}>
      <Button submit waiting onAct={onAct}>
        Write it down
      </Button>
    </form>,
  )
  await userEvent.click(screen.getByRole('button', { name: 'Write it down' }))
  expect(onAct).not.toHaveBeenCalled()
  expect(onSubmit).not.toHaveBeenCalled()
})
