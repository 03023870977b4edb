import { PHONE_PX, useMaxWidth } from '../useMaxWidth.ts'
import { CameraControls, DimensionsButton } from './CameraControls.tsx'
import { FrameControls } from './FrameControls.tsx'
import { HeatButton } from './HeatButton.tsx'
import { MotionControls } from './MotionControls.tsx'
import { SectionControls } from './SectionControls.tsx'

/** Everything that changes the view and nothing of the design. On a phone most of it is folded away. */
export const ViewControls = () => {
  const isPhone = useMaxWidth(PHONE_PX)
  return (
    <section className="view-controls" aria-label="View of the hive">
      <div className="camera-row">
        <CameraControls />
        <div className="view-shows">
          {!isPhone && <DimensionsButton />}
          <HeatButton />
        </div>
      </div>
      {!isPhone && (
        <div className="view-sliders">
          <MotionControls />
        </div>
      )}
      <details className="view-more">
        <summary>{isPhone ? 'Take apart, open, lift, cut' : 'Lift a frame, cut it open'}</summary>
        <div className="view-sliders">
          {isPhone && <DimensionsButton />}
          {isPhone && <MotionControls />}
          <FrameControls />
          <SectionControls />
        </div>
      </details>
    </section>
  )
}
