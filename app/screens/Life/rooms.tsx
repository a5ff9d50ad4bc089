/** The diary of the small life of one tank. */
import './life.css'
import { useState } from 'react'
import { Route, Switch, useLocation } from 'wouter'
import { type Entry, type Fact, type TankId, tankKept } from '../../../core/index.ts'
import { ButtonLink } from '../../parts/Actions.tsx'
import { Empty } from '../../parts/Empty.tsx'
import { Page } from '../../parts/Page.tsx'
import type { SaidDone } from '../SaidAndUndo.tsx'
import { useReading } from '../useReading.ts'
import { CountForm } from './CountForm.tsx'
import { KeyWalk } from './KeyWalk.tsx'
import { Life } from './Life.tsx'
import { LifePage } from './LifePage.tsx'
import { LifePhotos } from './LifePhotos.tsx'
import { TorchCount } from './TorchCount.tsx'

/** It is on disk: said on the way back, with one touch that takes it back. */
export type OnKept = (says: string, written: readonly Entry<Fact>[]) => void

export const LifeRoutes = ({ tank: id }: { readonly tank: TankId }) => {
  const { world, now } = useReading()
  const [, navigate] = useLocation()
  const [kept, setKept] = useState<SaidDone>()
  const tank = tankKept(world, id, now)
  if (!tank)
    return (
      <Page title="The small life" answer="This tank is not kept now.">
        <Empty says="What was written down of it stands in the diary.">
          <ButtonLink href="#/water">To the tanks</ButtonLink>
        </Empty>
      </Page>
    )
  const onKept: OnKept = (says, written) => {
    setKept({ says, written })
    navigate(`/water/${id}/life`)
  }
  return (
    <Switch>
      <Route path="/water/:tank/life/torch">
        <TorchCount tank={tank} onKept={onKept} />
      </Route>
      <Route path="/water/:tank/life/pane">
        <CountForm key="pane" how="pane" tank={tank} onKept={onKept} />
      </Route>
      <Route path="/water/:tank/life/jar">
        <CountForm key="jar" how="jar" tank={tank} onKept={onKept} />
      </Route>
      <Route path="/water/:tank/life/key">
        <KeyWalk tank={tank} onKept={onKept} />
      </Route>
      <Route path="/water/:tank/life/photos">
        <LifePhotos tank={tank} />
      </Route>
      <Route path="/water/:tank/life/page">
        <LifePage tank={tank} />
      </Route>
      <Route>
        <Life tank={tank} kept={kept} onUndone={() => setKept(undefined)} />
      </Route>
    </Switch>
  )
}
