/** The evening's other tanks and foods. */
import type { Moment, TonightLine, World } from '../../../core/index.ts'
import { Line, Lines } from '../../parts/Lines.tsx'
import { Section } from '../../parts/Section.tsx'
import { lineWords } from '../../words/tonight.ts'

type Props = { readonly lines: readonly TonightLine[]; readonly world: World; readonly now: Moment }

export const OtherLines = ({ lines, world, now }: Props) =>
  lines.length === 0 ? null : (
    <Section title="Also">
      <Lines>
        {lines.map((line) => (
          <Line key={line.plan.plan} lead={line.tank.name}>
            {`${line.food.name}, ${lineWords(line, world, now)}`}
          </Line>
        ))}
      </Lines>
    </Section>
  )
