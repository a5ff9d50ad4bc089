/** The kinds that were recognised, by when they were first seen. */
import { type KindKnown, type PhotoGroup, wallDay } from '../../../core/index.ts'
import { Animal } from '../../parts/animals/Animal.tsx'
import { animalDrawing } from '../../parts/animals/keyDrawings.ts'
import { formName } from '../../words/forms.ts'
import { verdictWords } from '../../words/key.ts'
import { seenWords } from '../../words/life.ts'
import { PhotosOf } from '../Photos/PhotosOf.tsx'
import type { Reading } from '../useReading.ts'

type KindsProps = {
  readonly kinds: readonly KindKnown[]
  readonly photos: readonly PhotoGroup[]
  readonly reading: Reading
  /** Not on paper. */
  readonly addTo?: boolean
}

export const Kinds = ({ kinds, photos, reading, addTo = false }: KindsProps) => (
  <ul className="life-kinds">
    {kinds.map(({ form, first, last, entry, times }) => (
      <li key={form} className="life-kind">
        {Object.hasOwn(animalDrawing, form) && <Animal of={animalDrawing[form as keyof typeof animalDrawing]} />}
        <div>
          <p>{formName(form)}</p>
          <p className="life-quiet">{verdictWords[last.says]}</p>
          <p className="life-quiet">
            {seenWords(wallDay(first.at, reading.zone), wallDay(last.at, reading.zone), times)}
            {last.where && ` · ${last.where}`}
          </p>
          {addTo && (
            <PhotosOf
              of={{ entry }}
              photos={photos.find((group) => group.shows === 'kind' && group.form === form)?.photos ?? []}
              about={formName(form)}
              reading={reading}
            />
          )}
        </div>
      </li>
    ))}
  </ul>
)
