/** The evening's other tanks and foods; each can be brought to the front. */
import type { TonightLine } from '../../../core/index.ts'
import { LinkButton } from '../../parts/Actions.tsx'
import { Line, Lines } from '../../parts/Lines.tsx'
import { Section } from '../../parts/Section.tsx'
import { lineWords, type Reader } from '../../words/tonight.ts'
import type { Dosing } from './useDosing.ts'

type Props = { readonly lines: readonly TonightLine[]; readonly reader: Reader; readonly dosing: Dosing }

export const OtherLines = ({ lines, reader, dosing }: Props) =>
  lines.length === 0 ? null : (
    <Section title="Also">
      <Lines>
        {lines.map((line) => (
          <Line
            key={line.plan.plan}
            lead={line.tank.name}
            end={
              <LinkButton onAct={() => dosing.bring(line.plan.plan)}>
                To the front
                <span className="for-ears">
                  {' '}
                  ({line.tank.name}, {line.food.name})
                </span>
              </LinkButton>
            }
          >
            {`${line.food.name}, ${lineWords(line, reader)}`}
          </Line>
        ))}
      </Lines>
    </Section>
  )
